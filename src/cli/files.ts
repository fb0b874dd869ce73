import { mkdirSync, readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { wordFiles, type LocaleFiles } from '../booklet/index.ts';

/** Writes a file whole or not at all: to a temporary name beside it, then renamed. */
export function writeWhole(path: string, content: string | Uint8Array): void {
  mkdirSync(dirname(path), { recursive: true });
  const unfinished = `${path}.${process.pid}.unfinished`;
  writeFileSync(unfinished, content);
  renameSync(unfinished, path);
}

/** Every locale file under a folder, by its path there. */
export function localeFiles(root: string): LocaleFiles {
  const names = ['about', ...wordFiles].map((name) => `${name}.json`);
  return Object.fromEntries(readdirSync(root).sort().flatMap((lang) => names.flatMap((name) => {
    try {
      return [[`${lang}/${name}`, readFileSync(join(root, lang, name), 'utf8')]];
    } catch {
      return []; // a missing file is told by the reader of the words, which knows what should be there
    }
  })));
}
