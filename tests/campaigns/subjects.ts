import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { exportWords, importWords, languagesIn, loadWords, readNotes } from '../../src/booklet/index.ts';
import { localeFiles } from '../../src/cli/files.ts';
import { checkModel } from '../../src/check/index.ts';
import { buildModel } from '../../src/model/index.ts';
import { declaredFor, filesInMemory, kitFromText, readItem, stockFromTable, stockFromText, stockTable, type Item } from '../../src/read/index.ts';
import { files } from '../support/items.ts';

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

/** Every size of an item, built and, where there are checks for it, checked: those of pieces ask for decks and posts. */
const worked = (item: Item): unknown => item.sizes.map(({ name }) => {
  const model = buildModel(item, name);
  return { model, report: item.pieces.length === 0 ? null : checkModel(model, declaredFor(item, name)) };
});

const itemSubject = (path: string): Subject => ({ path, text: must(path), read: (text) => worked(readItem(filesInMemory({ [path]: text, [KIT]: must(KIT) }), path)) });

function foldersOf(folder: string): readonly string[] {
  return readdirSync(`${root}${folder}`, { withFileTypes: true }).filter((entry) => entry.isDirectory()).map(({ name }) => `${folder}/${name}`);
}

const itemPaths = (): readonly string[] => [...foldersOf('steps'), ...foldersOf('steps/drafts')].map((folder) => `${folder}/item.yaml`).filter((path) => files.text(path) !== null);

function stockSubjects(): readonly Subject[] {
  const path = 'tern-island.csv';
  return [
    { path: STOCK, text: must(STOCK), read: (text) => stockFromText(text, STOCK) },
    { path, text: stockTable(stockFromText(must(STOCK), STOCK)), read: (text) => stockFromTable(text, path) },
  ];
}

function kitSubject(): Subject {
  const stool = 'steps/stool/item.yaml';
  return { path: KIT, text: must(KIT), read: (text) => (kitFromText(text, KIT), worked(readItem(filesInMemory({ [stool]: must(stool), [KIT]: text }), stool))) };
}

function wordSubjects(): readonly Subject[] {
  const locales = localeFiles(`${root}locales`);
  const names = Object.keys(locales).filter((path) => path.startsWith('en/') || path.startsWith('ar/'));
  return names.map((path) => ({
    path: `locales/${path}`,
    text: locales[path] ?? '',
    read: (text) => {
      const changed = { ...locales, [path]: text };
      return languagesIn(changed).filter((lang) => ['en', 'ar'].includes(lang)).map((lang) => loadWords(changed, lang).lang);
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

export function subjects(): readonly Subject[] {
  return [...itemPaths().map(itemSubject), kitSubject(), ...stockSubjects(), ...wordSubjects(), exchangeSubject(), ...notesSubjects()];
}
