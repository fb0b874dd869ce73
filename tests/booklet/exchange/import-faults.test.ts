import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exportWords, importWords } from '../../../src/booklet/exchange/index.ts';
import { FaultError } from '../../../src/read/index.ts';
import { smallLocales } from './small-locales.ts';

const sent = exportWords(smallLocales, 'ar', [], 'pictures').xliff;

/** What the user is told of a file that came back so. */
function told(returned: string | Uint8Array, locales = smallLocales): readonly string[] {
  try {
    importWords(typeof returned === 'string' ? new TextEncoder().encode(returned) : returned, 'ar.xlf', locales);
    return [];
  } catch (error) {
    if (!(error instanceof FaultError)) throw error;
    return error.message.split('\n');
  }
}

/** The file with one change; what is changed must stand there once. */
function changed(was: string | RegExp, now: string): string {
  const [, ...more] = typeof was === 'string' ? sent.split(was) : sent.split(new RegExp(was, 'u'));
  if (more.length !== 1) throw new Error(`${String(was)} stands ${more.length} times in the file`);
  return sent.replace(was, now);
}

/** Line and column of a piece of the file, `line:column`, both from 1, counted here by hand. */
function at(piece: string, after = ''): string {
  const index = sent.indexOf(piece, sent.indexOf(after));
  const lines = sent.slice(0, index).split('\n');
  return `${lines.length}:${(lines.at(-1) ?? '').length + 1}`;
}
const unitAt = (id: string): string => at(`<unit id="${id}"`);
const targetAt = (id: string): string => at('<target>', `<unit id="${id}"`);

interface Case {
  readonly name: string;
  readonly returned: string | Uint8Array;
  readonly told: readonly string[];
}
const one = (name: string, returned: string | Uint8Array, ...lines: readonly string[]): Case => ({ name, returned, told: lines });

const wrap = 'actions.wrap-side';
const anUnit = (id: string): RegExp => new RegExp(` *<unit id="${id}"(?:(?!</unit>)[^])*</unit>\\n`, 'u');
const long = 'ا'.repeat(80);

const cases: readonly Case[] = [
  one('no XML', 'words', 'ar.xlf:1:6: found text data outside of root node, would be right: an XLIFF 2.1 document, well-formed'),
  one('nothing', '', 'ar.xlf:1:1: found document must contain a root element, would be right: an XLIFF 2.1 document, well-formed'),
  one('bytes that are no text', new Uint8Array([0x3c, 0xff, 0x3e]), 'ar.xlf:1:1: found bytes that are no text in UTF-8, would be right: an XLIFF 2.1 document, well-formed'),
  one('a tag that is not closed', '<a>\n  <b>\n</a>', 'ar.xlf:3:4: found unexpected close tag, would be right: an XLIFF 2.1 document, well-formed'),
  one('an ampersand alone', changed('>الشد', '>& '), `ar.xlf:${at('الشد')}: found disallowed character in entity name, would be right: an XLIFF 2.1 document, well-formed`),
  one('an entity of its own', changed('?>\n', '?>\n<!DOCTYPE xliff [<!ENTITY a "b">]>\n'), 'ar.xlf:2:1: found a document type, would be right: an XLIFF 2.1 document, well-formed'),
  one('elements within elements without end', '<a>'.repeat(2000), 'ar.xlf:1:301: found elements more than 100 deep, would be right: an XLIFF 2.1 document, well-formed'),
  one('another document', '<?xml version="1.0"?>\n<html/>', 'ar.xlf:2:1 html: found the element html, would be right: xliff of urn:oasis:names:tc:xliff:document:2.0'),
  one('an older XLIFF', '<xliff xmlns="urn:oasis:names:tc:xliff:document:1.2" version="1.2"/>',
    'ar.xlf:1:1 xliff: found the element xliff of urn:oasis:names:tc:xliff:document:1.2, would be right: xliff of urn:oasis:names:tc:xliff:document:2.0'),
  one('another version', changed(' version="2.1"', ' version="2.0"'), 'ar.xlf:2:1 version: found "2.0", would be right: version="2.1"'),
  one('no target language', changed(' trgLang="ar"', ''), 'ar.xlf:2:1 trgLang: found nothing, would be right: the language of the translations'),
  one('another source language', changed(' srcLang="en"', ' srcLang="fr"'), 'ar.xlf:2:1 srcLang: found "fr", would be right: srcLang="en"'),
  one('the source language as target', changed(' trgLang="ar"', ' trgLang="en"'), 'ar.xlf:2:1 trgLang: found "en", the language the texts are written in first, would be right: a language to translate into'),
  one('a language that would leave the folder', changed(' trgLang="ar"', ' trgLang="../ar"'), 'ar.xlf:2:1 trgLang: found "../ar", would be right: a language tag (BCP 47), such as "fr", "ckb" or "pt-BR"'),
  one('the made-up language', changed(' trgLang="ar"', ' trgLang="en-x-long"'), 'ar.xlf:2:1 trgLang: found "en-x-long", which is made from en, would be right: a language that people speak'),
  one('an unknown file', changed('<file id="items"', '<file id="itmes"'),
    `ar.xlf:${at('<file id="items"')} file: found id "itmes", would be right: an id of booklet, actions, parts, cautions, checks, dimensions, findings, items, parameters, guide, cutting, pack, changes, page`,
    `ar.xlf:${unitAt('items.one')} items.one: found it in the file "itmes", would be right: it in the file "items"`),
  one('a file twice', changed('<file id="items"', '<file id="findings"'),
    `ar.xlf:${at('<file id="items"')} file: found id "findings" a second time, would be right: each file once`,
    `ar.xlf:${unitAt('items.one')} items.one: found it in the file "findings", would be right: it in the file "items"`),
  one('an unknown unit', changed('<unit id="items.one"', '<unit id="items.two"'),
    `ar.xlf:${at('<file id="items"')} items.one: found no such unit, would be right: every text of the file, as exported`,
    `ar.xlf:${unitAt('items.one')} items.two: found an id that no text has, would be right: the units as exported`),
  one('a unit without an id', changed('<unit id="items.one"', '<unit'),
    `ar.xlf:${at('<file id="items"')} items.one: found no such unit, would be right: every text of the file, as exported`,
    `ar.xlf:${unitAt('items.one')} unit: found no id, would be right: the id with which the text was exported`),
  one('a unit twice', changed('<unit id="actions.names.brace"', '<unit id="actions.sides.left"'),
    `ar.xlf:${at('<file id="actions"')} actions.names.brace: found no such unit, would be right: every text of the file, as exported`,
    `ar.xlf:${unitAt('actions.names.brace')} actions.sides.left: found the same id a second time, would be right: each text once`),
  one('a plural form missing', changed(anUnit('actions.brace_two'), ''),
    `ar.xlf:${at('<file id="actions"')} actions.brace_two: found no such unit, would be right: all plural forms of the language: zero, one, two, few, many, other`),
  one('a plural form too many', changed('<unit id="actions.brace_two"', '<unit id="actions.brace_dual"'),
    `ar.xlf:${at('<file id="actions"')} actions.brace_two: found no such unit, would be right: all plural forms of the language: zero, one, two, few, many, other`,
    `ar.xlf:${unitAt('actions.brace_two')} actions.brace_dual: found an id that no text has, would be right: the plural forms of the language: zero, one, two, few, many, other`),
  one('a source text that was changed', changed('>left side<', '>right side<'),
    `ar.xlf:${unitAt('actions.sides.left')} actions.sides.left: found the source text "right side", would be right: "left side"; if the text has changed, export again`),
  one('no translation', changed('<target>الشد بالحبال</target>', ''), `ar.xlf:${unitAt('actions.names.brace')} actions.names.brace: found no translation, would be right: a target with text`),
  one('an empty translation', changed('الشد بالحبال', ' '), `ar.xlf:${unitAt('actions.names.brace')} actions.names.brace: found an empty translation, would be right: a target with text`),
  one('an unknown state', changed(/(?<=<unit id="actions.names.brace"[^]{1,400})state="translated"(?=>\n *<source>Brace<)/u, 'state="done"'),
    `ar.xlf:${unitAt('actions.names.brace')} actions.names.brace: found state "done", would be right: one of initial, translated, reviewed, final`),
  one('a state that says it is not translated', changed(/ state="translated"(?=>\n *<source>Brace<)/u, ''),
    `ar.xlf:${targetAt('actions.names.brace')} actions.names.brace: found state "initial", would be right: translated, reviewed or final`),
  one('a placeholder missing', changed(/<ph [^>]*\/>(?= حول)/u, 'الجانب'), `ar.xlf:${targetAt(wrap)} ${wrap}: found no {{side}}, would be right: the placeholder {{side}} in the translation`),
  one('a count missing where several numbers take the form', changed(/<ph id="p1"[^>]*\/>(?= حبال على )/u, 'ثلاثة'),
    `ar.xlf:${targetAt('actions.brace_few')} actions.brace_few: found no {{count}}, would be right: the placeholder {{count}} in the translation`),
  one('a placeholder too many', changed('>الشد بالحبال<', '>{{what}}<'), `ar.xlf:${targetAt('actions.names.brace')} actions.names.brace: found {{what}}, would be right: no placeholder`),
  one('an unknown placeholder', changed('حول أنبوبه', 'حول {{tube}}'), `ar.xlf:${targetAt(wrap)} ${wrap}: found {{tube}}, would be right: only {{side}}`),
  one('a placeholder that refers to nothing', changed(/dataRef="d1"(?=[^>]*\/> حول)/u, 'dataRef="d9"'),
    `ar.xlf:${at('<ph', '>لفّ ')} ${wrap}: found the placeholder {{side}} without its original data, would be right: a placeholder as exported, with its dataRef`),
  one('a code that the texts do not have', changed('>الشد بالحبال<', '><pc id="b">الشد</pc><'),
    `ar.xlf:${at('الشد')} actions.names.brace: found <pc>, would be right: text and the placeholders as exported`),
  one('a code point that is none', changed('>الشد بالحبال<', '>ا<cp hex="110000"/><'),
    `ar.xlf:${at('الشد').replace(/\d+$/, (column) => String(Number(column) + 1))} actions.names.brace: found <cp hex="110000">, would be right: a code point from 0000 to 10FFFF`),
  // UAX #9 (from memory): U+202E turns all that follows in its paragraph.
  one('a mark that turns the text that follows', changed('>الشد بالحبال<', '>الشد\u202e بالحبال<'),
    `ar.xlf:${targetAt('actions.names.brace')} actions.names.brace: found \\u202e, would be right: a text without controls and marks that turn the text that follows`),
  one('two segments', changed('>الشد بالحبال</target>\n      </segment>', '>الشد بالحبال</target>\n      </segment><segment><source>Brace</source></segment>'),
    `ar.xlf:${unitAt('actions.names.brace')} actions.names.brace: found 2 segments, would be right: one segment, as exported`),
  one('another language on a translation', changed('<target>الشد', '<target xml:lang="fa">الشد'), `ar.xlf:${targetAt('actions.names.brace')} actions.names.brace: found xml:lang="fa", would be right: xml:lang="ar", as trgLang says`),
  // {{side}} counts as 14 characters: 80 + 14 are too many, 76 + 14 are not.
  one('a caption that is too long', changed('لفّ ', long), `ar.xlf:${targetAt(wrap)} ${wrap}: found ${80 + 14 + ' حول أنبوبه.'.length} characters, would be right: at most 90`),
  one('no fault where the limit is just kept', changed('لفّ ', long.slice(' حول أنبوبه.'.length + 4))),
];

describe('a file that came back with a mistake', () => {
  it.each(cases)('is refused, and told where, what and what would be right: $name', ({ returned, told: lines }) => {
    expect([...told(returned)].sort()).toEqual([...lines].sort());
  });

  it('is told of all its mistakes at once, in the order of the file', () => {
    const returned = changed('>left side<', '>right side<').replace('الشد بالحبال', ' ').replace(/<ph [^>]*\/>(?= حول)/u, '');
    expect(told(returned).map((line) => line.split(/[ :]+/)[3])).toEqual(['actions.sides.left', 'actions.names.brace', wrap]);
  });

  it('is refused when it leaves out a file of a language that has no texts yet', () => {
    const returned = changed(/<file id="items"[^]*<\/file>/u, '');
    expect(told(returned)).toEqual([]);
    const fresh = Object.fromEntries(Object.entries(smallLocales).filter(([path]) => path.startsWith('en/')));
    expect(told(returned, fresh)).toEqual(expect.arrayContaining(['ar.xlf:2:1 file: found no file "items", would be right: every file, as exported']));
  });
});

describe('a file that was damaged on its way', () => {
  it('is taken over or refused in plain lines, wherever the damage is', () => {
    const pieces = fc.constantFrom('', '<', '>', '&', '"', '</unit>', '<unit id="x">', '<target/>', '<ph id="p1"/>', '<group id="g">', '\u0000', ' state="final"', ' id="booklet"', '{{side}}', '<?x?>', '<!-- -->', '\ud800');
    fc.assert(fc.property(fc.array(fc.tuple(fc.nat(sent.length), fc.nat(30), pieces), { minLength: 1, maxLength: 4 }), (damages) => {
      const returned = damages.reduce((text, [from, length, piece]) => text.slice(0, from) + piece + text.slice(from + length), sent);
      for (const line of told(returned)) expect(line).toMatch(/^ar\.xlf:[1-9]\d*:[1-9]\d*[^:]*: found .+, would be right: .+$/s);
    }), { numRuns: 500 });
  });
});

describe('export refuses', () => {
  it.each([
    ['en', /found "en", the language the texts are written in first/],
    ['../fr', /found "..\/fr", would be right: a language tag \(BCP 47\)/],
    ['FR', /found "FR", would be right: a language tag/],
    ['en-x-long', /which is made from en/],
    ['qaa', /of whose numbers and plurals nothing is known here, would be right: a file locales\/qaa\/about.json whose "numbers" names a language that counts alike/],
  ])('the language %s', (lang, message) => {
    expect(() => exportWords(smallLocales, lang, [], 'pictures')).toThrow(message);
  });
});
