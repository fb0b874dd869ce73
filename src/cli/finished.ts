import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { browserMark } from '../booklet/print/browserMark.ts';
import { chooseBrowser } from '../booklet/print/chooseBrowser.ts';
import { contentHash, keepContent, keptContent, nothingKept, readData, writeData, type Keep, type KeyPart } from '../keep/index.ts';
import { localeFiles, writeWhole } from './files.ts';
import type { MakeOptions } from './make-options.ts';
import { keepPrinted } from './prints.ts';

/** One file of a build: its place under the folder of output, and its content's hash, under which it is kept. */
interface FinishedFile {
  readonly path: string;
  readonly sha256: string;
  readonly isTold: boolean;
}

/** What was made of an item: its files, and the mark of each size. */
interface FinishedData {
  readonly files: readonly FinishedFile[];
  readonly marks: readonly (readonly [size: string, mark: string])[];
}

/** The files of an item that was made before from the same texts, by the same code and browser. */
export interface FinishedFiles {
  /** Writes those that are not there, or not as they were made, and tells all as if they had been made. */
  readonly restore: (line: (path: string) => void) => void;
}

/** An item, and its files where it need not be made. */
export interface FinishedItem {
  readonly item: string;
  readonly files: FinishedFiles | null;
}

/** What earlier builds have finished. */
export interface Finished {
  /** Of each item its files, or null where it has to be made. */
  readonly of: (items: readonly string[]) => readonly FinishedItem[];
  /** Writes down the files of an item that is being made. */
  readonly record: (item: string) => { readonly written: (path: string, content: string | Uint8Array, isTold: boolean) => void; readonly printed: (size: string, mark: string) => void; readonly done: () => void };
}

/** Nothing is finished without a keep: all is made. */
export async function openFinished(keep: Keep, options: MakeOptions): Promise<Finished> {
  if (keep === nothingKept) return { of: (items) => items.map((item) => ({ item, files: null })), record: () => ({ written: () => undefined, printed: () => undefined, done: () => undefined }) };
  const { out } = options;
  const same: readonly KeyPart[] = [{ ...options, out: '', cache: '' }, browserMark(await chooseBrowser()), localeFiles('locales')];
  const keyOf = (item: string): string => keep.key('finished', item, same, textsOf(item));
  return {
    of: (items) => items.map((item) => ({ item, files: filesOf(keep, { item, out }, readData(keep, keyOf(item))) })),
    record: (item) => {
      const key = keyOf(item);
      const files: FinishedFile[] = [];
      const marks: (readonly [string, string])[] = [];
      return {
        written: (path, content, isTold) => {
          files.push({ path: relative(out, path), sha256: keepContent(keep, content), isTold });
        },
        printed: (size, mark) => { marks.push([size, mark]); },
        done: () => { writeData(keep, key, { files, marks } satisfies FinishedData); },
      };
    },
  };
}

/** All texts an item may be read from: its own folder, and every folder that holds no item. */
export function textsOf(item: string): readonly (readonly string[])[] {
  const folders = readdirSync('steps', { withFileTypes: true }).filter((entry) => entry.isDirectory()).map(({ name }) => name).sort().filter((folder) => folder === item || !existsSync(join('steps', folder, 'item.yaml')));
  return folders.flatMap((folder) => yamlIn(join('steps', folder)).map((path) => [path, readFileSync(path, 'utf8')]));
}

const yamlIn = (folder: string): readonly string[] => readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.yaml'))
  .map((path) => join(folder, path)).sort();

/** Null where one of the files is neither in its place nor kept: then the item is made again. */
function filesOf(keep: Keep, { item, out }: { readonly item: string; readonly out: string }, made: FinishedData | null): FinishedFiles | null {
  if (made === null) return null;
  const { files, marks } = made;
  const missing = files.filter(({ path, sha256 }) => !isThere(join(out, path), sha256));
  if (missing.some(({ sha256 }) => keptContent(keep, sha256) === null)) return null;
  return {
    restore: (line) => {
      for (const { path, sha256 } of missing) writeWhole(join(out, path), stillKept(keep, path, sha256));
      for (const { path, isTold } of files) if (isTold) line(join(out, path));
      for (const [size, mark] of marks) keepPrinted(keep, item, size, mark);
    },
  };
}

/** A large catalogue is read once to see that all is whole, and again file by file to write it: all at once would not fit in memory. */
function stillKept(keep: Keep, path: string, sha256: string): Uint8Array {
  const content = keptContent(keep, sha256);
  if (content === null) throw new Error(`${path}: what was kept of it is gone while it was being written; would be right: the same command again`);
  return content;
}

function isThere(path: string, sha256: string): boolean {
  try {
    return contentHash(readFileSync(path)) === sha256;
  } catch {
    return false;
  }
}
