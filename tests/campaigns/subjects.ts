import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { exportWords, importWords, readNotes } from '../../src/booklet/index.ts';
import { readAbout, readWords, wordFiles } from '../../src/booklet/words/index.ts';
import { localeFiles } from '../../src/cli/files.ts';
import { buildRecord } from '../../src/cli/record.ts';
import { checkModel } from '../../src/check/index.ts';
import { buildModel } from '../../src/model/index.ts';
import { declaredFor, filesInMemory, kitFromText, readItem, stockFromTable, stockFromText, stockTable, type Item } from '../../src/read/index.ts';
import { files } from '../support/items.ts';
import { negativeLength } from './figures.ts';

/** A file of the demo that can be damaged, and what reads it. */
export interface Subject {
  readonly path: string;
  readonly text: string;
  /** Reads the text in the file's place, and does with it what can be done at once. Throws where it is refused; gives what was made of it. */
  readonly read: (text: string) => unknown;
}

const root = fileURLToPath(new URL('../../', import.meta.url));
const KIT = 'steps/kits/stall-kit.yaml';
const STOCK = 'steps/stock/tern-island.yaml';
const must = (path: string): string => files.text(path) ?? '';

/** How much is done with an item that is let through: all its sizes are built, or one, so that it takes a third of the time. */
export type Thorough = 'every size' | 'one size';

/** What a size comes to, and what its build.json would tell of it. Order and cuts are left out: they take seconds. */
function workedSize(item: Item, size: string): unknown {
  const model = buildModel(item, size);
  const report = checkModel(model, declaredFor(item, size));
  const record = buildRecord({ item, model, report, plan: NO_PLAN, cuts: NO_CUTS });
  // Where a check fails it may still be made, --despite-findings.
  const negative = negativeLength(record);
  if (negative !== null) throw new Error(`a negative length: ${negative}`);
  return { model, report, record };
}

const NO_PLAN = { steps: [], batches: [], reasons: [] } as const;
const NO_CUTS = { stock: 0, kerf: 0, tubesUsed: 0, fewest: 0, shortest: 0, patterns: [] } as const;

function worked(item: Item, thorough: Thorough): unknown {
  const sizes = thorough === 'every size' ? item.sizes : item.sizes.slice(-1);
  return sizes.map(({ name }) => workedSize(item, name));
}

const itemFrom = (path: string, text: string): Item => readItem(filesInMemory({ [path]: text, [KIT]: must(KIT) }), path);

const itemSubject = (path: string, thorough: Thorough): Subject => ({ path, text: must(path), read: (text) => worked(itemFrom(path, text), thorough) });

function foldersOf(folder: string): readonly string[] {
  return readdirSync(`${root}${folder}`, { withFileTypes: true }).filter((entry) => entry.isDirectory()).map(({ name }) => `${folder}/${name}`);
}

const itemPaths = (): readonly string[] => foldersOf('steps').map((folder) => `${folder}/item.yaml`).filter((path) => files.text(path) !== null);

function stockSubjects(): readonly Subject[] {
  const path = 'tern-island.csv';
  return [
    { path: STOCK, text: must(STOCK), read: (text) => stockFromText(text, STOCK) },
    { path, text: stockTable(stockFromText(must(STOCK), STOCK)), read: (text) => stockFromTable(text, path) },
  ];
}

function kitSubject(thorough: Thorough): Subject {
  const stool = 'steps/stool/item.yaml';
  return { path: KIT, text: must(KIT), read: (text) => (kitFromText(text, KIT), worked(readItem(filesInMemory({ [stool]: must(stool), [KIT]: text }), stool), thorough)) };
}

function wordSubjects(): readonly Subject[] {
  const locales = localeFiles(`${root}locales`);
  const names = Object.keys(locales).filter((path) => path.startsWith('en/') || path.startsWith('ar/'));
  return names.map((path) => ({
    path: `locales/${path}`,
    text: locales[path] ?? '',
    read: (text) => {
      const changed = { ...locales, [path]: text };
      const [lang = '', file = ''] = path.replace('.json', '').split('/');
      const name = wordFiles.find((each) => each === file);
      return name === undefined ? readAbout(changed, lang) : [...readWords(changed, lang, [name])];
    },
  }));
}

function exchangeSubject(): Subject {
  const locales = localeFiles(`${root}locales`);
  const { xliff: text } = exportWords(locales, 'fr', [], 'pictures');
  return { path: 'words-fr.xlf', text, read: (changed) => importWords(Buffer.from(changed), 'words-fr.xlf', locales) };
}

function notesSubjects(): readonly Subject[] {
  const path = 'steps/stool/notes/en.md';
  const text = must(path);
  const keys = new Set([...text.matchAll(/^## (.*)$/gm)].map(([, key]) => key ?? ''));
  return [{ path, text, read: (changed) => readNotes(path, changed, keys) }];
}

export function subjects(thorough: Thorough = 'every size'): readonly Subject[] {
  return [...itemPaths().map((path) => itemSubject(path, thorough)), kitSubject(thorough), ...stockSubjects(), ...wordSubjects(), exchangeSubject(), ...notesSubjects()];
}

/** An item file that can be damaged, and the item that it then is. */
export interface ItemSubject {
  readonly path: string;
  readonly text: string;
  /** @throws FaultError where the text is refused. */
  readonly item: (text: string) => Item;
}

export const damagedItems = (): readonly ItemSubject[] => itemPaths().map((path) => ({ path, text: must(path), item: (text) => itemFrom(path, text) }));
