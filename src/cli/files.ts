import { accessSync, constants, existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { isAlive } from '../booklet/print/processes.ts';
import { wordFiles, type LocaleFiles } from '../booklet/words/word-files.ts';
import { MachineFault } from '../read/machine-fault.ts';

/** Writes a file whole or not at all: to a temporary name beside it, then renamed. What a write that was killed has left is taken away. */
export function writeWhole(path: string, content: string | Uint8Array): void {
  makeFolder(dirname(path));
  sweepUnfinished(path);
  const unfinished = `${unfinishedOf(path)}${process.pid}${UNFINISHED}`;
  try {
    writeFileSync(unfinished, content);
    renameSync(unfinished, path);
  } catch (error) {
    rmSync(unfinished, { force: true });
    throw notWritable(path, error, 'a file that can be written, on a disk with room');
  }
}

/** Takes away what processes that are gone have left of this file. */
function sweepUnfinished(path: string): void {
  const start = basename(unfinishedOf(path));
  for (const name of readdirSync(dirname(path))) {
    if (!name.startsWith(start) || !name.endsWith(UNFINISHED)) continue;
    if (!isAlive(Number(name.slice(start.length, -UNFINISHED.length)))) rmSync(join(dirname(path), name), { force: true });
  }
}

const UNFINISHED = '.unfinished';

/** With the computer's name: of another's processes, on a shared disk, nobody knows whether they live. */
const unfinishedOf = (path: string): string => `${path}.${hostname()}.`;

/** Writes a file whole and tells its path. */
export function writeTold(path: string, content: string | Uint8Array): void {
  writeWhole(path, content);
  process.stdout.write(`${path}\n`);
}

/**
 * Makes a folder and those above it. Step by step, because mkdir's own recursion never ends where
 * the system answers for ever that a folder above is missing, as under /proc.
 */
export function makeFolder(path: string): void {
  try {
    if (!existsSync(path)) {
      if (dirname(path) !== path) makeFolder(dirname(path));
      mkdirSync(path);
    }
    if (!statSync(path).isDirectory()) throw new Error('a file stands in its place');
    accessSync(path, constants.W_OK);
  } catch (error) {
    throw notWritable(path, error, 'a folder that can be written');
  }
}

/** The innermost folder or file that could not be made is the one that is told. */
class NotWritable extends MachineFault {}

function notWritable(path: string, error: unknown, remedy: string): NotWritable {
  if (error instanceof NotWritable) return error;
  const told = error instanceof Error && 'code' in error ? String(error.code) : error instanceof Error ? error.message : String(error);
  return new NotWritable(`${path}: cannot be written (${told}); would be right: ${remedy}`);
}

/** Every locale file under a folder, by its path there. Throws when there is no such folder. */
export function localeFiles(root: string): LocaleFiles {
  if (!existsSync(root)) throw new Error(`${root}/: no such folder; would be right: a folder for each language, such as ${root}/en, and the command run from the folder that holds ${root}/`);
  const names = ['about', ...wordFiles].map((name) => `${name}.json`);
  return Object.fromEntries(readdirSync(root).sort().flatMap((lang) => names.flatMap((name) => {
    try {
      return [[`${lang}/${name}`, readFileSync(join(root, lang, name), 'utf8')]];
    } catch {
      return []; // a missing file is told by the reader of the words, which knows what should be there
    }
  })));
}
