import { describe, expect, it } from 'vitest';
import { FaultError } from '../../src/read/index.ts';
import { subjects, type Subject } from '../campaigns/subjects.ts';
import { expectOneComplaint, newWorkshop } from '../cli/workshop.ts';
import { everything } from '../support/samples.ts';
import { catalogueTime, timed } from '../support/yardstick.ts';
import { notesFaults, tableFaults, wordsFaults } from './broken/other-faults.ts';
import { yamlFaults, type Broken } from './broken/yaml-faults.ts';

/** Of each file so many faults at most, drawn evenly from all. */
const MOST = everything ? Infinity : 60;
/** Locale files are many and alike. */
const MOST_OF_WORDS = everything ? Infinity : 12;
/** Longest reading of one file, ms of processor time, and the most memory, bytes. */
const LONGEST = 20 * catalogueTime;
const MOST_MEMORY = 500 * 2 ** 20;

function faultsOf({ path, text }: Subject): readonly Broken[] {
  if (path.endsWith('.csv')) return tableFaults(text);
  if (path.endsWith('.md')) return notesFaults(text);
  if (path.endsWith('.xlf')) return wordsFaults(text);
  return evenly(yamlFaults(text).filter(({ what }) => !(path.endsWith('.json') && isNoFaultOfJson(what))), path.startsWith('locales/') ? MOST_OF_WORDS : MOST);
}

/** Locale files hold names of any kind, and sections within sections. */
const isNoFaultOfJson = (what: string): boolean => /a section$|nobody knows|without a name|the file: (too long|nothing|a comment alone|a key of the language)/.test(what);

function evenly<T>(all: readonly T[], most: number): readonly T[] {
  return all.length <= most ? all : Array.from({ length: most }, (_, index) => all[Math.floor((index * all.length) / most)] as T);
}

/** One line for each thing told: where, and what. */
type Told = readonly { readonly line: number; readonly told: string }[];

/** What a reader says of a file; null where it takes it. Whatever is no plain complaint goes through. */
function complaints(read: () => unknown): Told | null {
  try {
    read();
    return null;
  } catch (error) {
    if (error instanceof FaultError) return error.faults.map(({ position: { line, column }, found, remedy }) => ({ line: column >= 1 ? line : 0, told: found === '' || remedy === '' ? '' : `found ${found}, ${remedy}` }));
    const place = error instanceof Error && error.constructor === Error ? /^locales\/\S+:(\d+):\d+ (.*found .+; .+)$/.exec(error.message) : null;
    if (place === null) throw error;
    return [{ line: Number(place[1]), told: place[2] ?? '' }];
  }
}

/** What is wrong with how a broken file is taken; null where all is as it should be. */
function wrong({ path, read }: Subject, { what, text, line }: Broken): string | null {
  const before = process.memoryUsage.rss();
  const { answer: told, time } = timed(() => complaints(() => read(text)));
  const name = `${path}, ${what}`;
  if (told === null) return `${name}: is taken`;
  if (time > LONGEST) return `${name}: took ${Math.round(time)} ms`;
  if (process.memoryUsage.rss() - before > MOST_MEMORY) return `${name}: took ${Math.round((process.memoryUsage.rss() - before) / 2 ** 20)} MB`;
  if (told.some((one) => one.line < 1 || one.told === '' || /[\n\r]/.test(one.told))) return `${name}: ${JSON.stringify(told)}`;
  // A key that stands twice is told at its second place, a text of a translator at its unit.
  const isNear = line === 0 || told.some((one) => one.line >= line - (path.endsWith('.xlf') ? 10 : 0) && one.line <= line + (path.endsWith('.xlf') ? 3 : 2));
  return isNear ? null : `${name} in line ${line}: told in ${told.map((one) => `${one.line} (${one.told})`).slice(0, 3).join(', ')}`;
}

describe('a broken file', () => {
  const all = subjects().map((subject) => ({ subject, broken: faultsOf(subject) }));

  it('is one of more than 300', () => {
    expect(all.reduce((sum, { broken }) => sum + broken.length, 0)).toBeGreaterThan(900);
  });

  it.each(all.map(({ subject, broken }) => ({ path: subject.path, count: broken.length, subject, broken })))('is refused with its place and what would be right, in time and memory: $path, $count times', ({ subject, broken }) => {
    expect(broken.flatMap((each) => wrong(subject, each) ?? [])).toEqual([]);
  });
});

describe('the command, given a broken file', () => {
  it('complains in one line and leaves nothing behind, neither whole nor half', async () => {
    const shop = newWorkshop();
    try {
      const [item = '', kit = '', stock = '', page = ''] = ['steps/stool/item.yaml', 'steps/kits/stall-kit.yaml', 'steps/stock/tern-island.yaml', 'locales/en/page.json'].map((path) => shop.read(path).toString());
      const table = subjects().find(({ path }) => path.endsWith('.csv'))?.text ?? '';
      const broken = async (path: string, was: string, text: string, args: readonly string[], told: RegExp): Promise<void> => {
        shop.write(path, text);
        await expectOneComplaint(shop, args, told);
        shop.write(path, was);
      };
      await broken('steps/stool/item.yaml', item, item.replace('side: 445 mm', 'side: 1e308 mm'), ['make', 'stool', '--out', 'out'], /^steps\/stool\/item\.yaml:\d+:\d+ sizes\.low\.side: found "1e308 mm", would be right: /);
      await broken('steps/stool/item.yaml', item, `${item}x: [`, ['guide', 'stool', '--out', 'out'], /^steps\/stool\/item\.yaml:\d+:\d+/);
      await broken('steps/kits/stall-kit.yaml', kit, kit.replace('2000 mm', '2000 kg'), ['draw', 'stool', '--step', '1', '--out', 'x.svg'], /^steps\/kits\/stall-kit\.yaml:\d+:\d+/);
      await broken('steps/stock/tern-island.yaml', stock, stock.replace('count: 92', 'count: 1e9'), ['cut', 'stool=1', '--stock', 'steps/stock/tern-island.yaml', '--out', 'out'], /tern-island\.yaml:\d+:\d+/);
      await broken('locales/en/page.json', page, page.replace('"busy": "', '"busy": ["'), ['make', 'stool', '--size', 'low', '--out', 'out'], /locales\/en\/page\.json:\d+:\d+/);
      await broken('words.xlf', '', '<xliff', ['words', 'import', 'words.xlf'], /words\.xlf:1:\d+/);
      await broken('table.csv', '', table.replace('tube,whole,92', 'tube,whole,1e9'), ['stock', 'import', 'table.csv'], /table\.csv:\d+:\d+/);
    } finally {
      shop.close();
    }
  });
});
