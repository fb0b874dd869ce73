import type { Broken } from './yaml-faults.ts';

const lineOf = (text: string, offset: number): number => text.slice(0, offset).split('\n').length;

/** Puts something in the place of the one passage that stands there, the `nth` of them. */
function changed(text: string, what: string, was: string | RegExp, now: string, nth = 0): Broken {
  const found = [...text.matchAll(typeof was === 'string' ? new RegExp(was.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&'), 'g') : was)][nth];
  if (found === undefined) throw new Error(`${what}: nothing there to change`);
  return { what, text: text.slice(0, found.index) + now + text.slice(found.index + found[0].length), line: lineOf(text, found.index) };
}

const whole = (what: string, text: string): Broken => ({ what: `the file: ${what}`, text, line: 0 });

/** What has no end shows where something else ends. */
const whereItShows = (broken: Broken): Broken => ({ ...broken, line: 0 });

const CELLS = ['-1', '1e308', 'x', '1,5', '<script>', '=1+1', '1.5', '.nan', '99999999999'];

/** Faults of a table of stock: every kind of figure in every line's count or length, and what tables suffer on their way. */
export function tableFaults(text: string): readonly Broken[] {
  const rows = text.split('\r\n');
  const inRow = (row: number, cell: number, now: string): Broken => {
    const cells = (rows[row] ?? '').split(',');
    return { what: `line ${row + 1}, cell ${cell + 1}: ${JSON.stringify(now)}`, text: rows.with(row, cells.with(cell, now).join(',')).join('\r\n'), line: row + 1 };
  };
  const counted = rows.flatMap((row, index) => (/^(tube|panel|cable|joint|panel-pin|joint-pin|wing-nut),/.test(row) ? [index] : []));
  const long = rows.flatMap((row, index) => (/^(tube|panel|cable|not-to-use),/.test(row) ? [index] : []));
  return [
    ...counted.flatMap((row) => CELLS.map((now) => inRow(row, 2, now.includes(',') ? `"${now}"` : now))),
    ...long.flatMap((row) => CELLS.filter((now) => !['1.5', '1,5'].includes(now)).map((now) => inRow(row, 3, now))),
    ...long.map((row) => inRow(row, 0, 'quux')),
    ...long.map((row) => inRow(row, 1, '<script>')),
    whole('nothing', ''), whole('heads alone', `${rows[0] ?? ''}\r\n`), whole('a word', 'word'), whole('an open quote', text.replace('tube,whole', 'tube,"whole')),
    whole('a head twice', text.replace('count', 'name')), whole('a head that nobody knows', text.replace('cracked', 'quux')), whole('units left out', text.replace('length [mm]', 'length')),
    whole('too long', text + 'note,,,,,,,,,,,,long\r\n'.repeat(6000)), whole('a cell too many', text.replace('tube,whole,92,2000', 'tube,whole,92,2000,,,,,,,,,,,7')),
  ];
}

/** Faults of a trainer's notes. */
export const notesFaults = (text: string): readonly Broken[] => [
  changed(text, 'a step that is none', '## cut-tubes', '## cut-moon'), changed(text, 'a step twice', '## cut-blank', '## cut-tubes'), changed(text, 'a title', '## cut-tubes', '# cut-tubes'),
  changed(text, 'a heading below', '## cut-tubes', '### cut-tubes'), changed(text, 'a step without a name', '## cut-tubes', '## '), changed(text, 'a heading in markup', '## cut-tubes', '## <b>cut-tubes</b>'),
  changed(text, 'a heading with stress', '## cut-tubes', '## **cut-tubes**'), changed(text, 'a key of the language', '## cut-tubes', '## __proto__'),
];

/** Faults of words that come back from a translator. */
export const wordsFaults = (text: string): readonly Broken[] => [
  ...[0, 5, 50].flatMap((nth) => [
    whereItShows(changed(text, `an end left out, ${nth}`, '</unit>', '', nth)), changed(text, `an element that nobody closes, ${nth}`, '<segment', '<segment><mrk', nth), changed(text, `a lone &, ${nth}`, '<target>', '<target>& ', nth),
    changed(text, `an entity that nobody knows, ${nth}`, '<target>', '<target>&quux;', nth), changed(text, `a key that is none, ${nth}`, /<unit id="/g, '<unit id="quux.', nth),
    changed(text, `markup in a text, ${nth}`, '<target>', '<target><b>x</b>', nth), changed(text, `an attribute without quotes, ${nth}`, /state="translated"/g, 'state=translated', nth),
    changed(text, `a state that is none, ${nth}`, /state="translated"/g, 'state="quux"', nth), changed(text, `an empty text, ${nth}`, /<target>[^<]*<\/target>/g, '<target></target>', nth),
    changed(text, `a placeholder of its own, ${nth}`, '<target>', '<target>{{quux}} ', nth),
  ]),
  changed(text, 'another version', 'version="2.1"', 'version="1.2"'), whereItShows(changed(text, 'another document', '<xliff', '<quux')), changed(text, 'another language', 'trgLang="fr"', 'trgLang="<script>"'),
  changed(text, 'no language', ' trgLang="fr"', ''), changed(text, 'another source', 'srcLang="en"', 'srcLang="xx"'), changed(text, 'a file that is none', '<file id="booklet"', '<file id="quux"'),
  changed(text, 'a document type', '<xliff', '<!DOCTYPE x [<!ENTITY a "aaaa">]>\n<xliff'), changed(text, 'a file from the disk', '<xliff', '<!DOCTYPE x [<!ENTITY a SYSTEM "file:///etc/passwd">]>\n<xliff'),
  whole('nothing', ''), whole('a word', 'word'), whole('cut off', text.slice(0, text.length / 2)), whole('too deep', `${'<a>'.repeat(5000)}${'</a>'.repeat(5000)}`), whole('a byte of nothing', text.replace('<target>', '<target>\u0000')),
  whole('much out of little', `<?xml version="1.0"?><!DOCTYPE l [<!ENTITY a "ha"><!ENTITY b "${'&a;'.repeat(20)}"><!ENTITY c "${'&b;'.repeat(20)}">]><xliff>&c;</xliff>`),
];
