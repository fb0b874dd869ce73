import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { ReadFiles } from './files.ts';

/** Files under a folder of the disk. An absent file is null; any other trouble with the disk is thrown as it comes. */
export function filesOnDisk(root: string): ReadFiles {
  return {
    text: (path) => orWhenAbsent(() => readFileSync(join(root, path), 'utf8'), null),
    list: (folder) => orWhenAbsent(() => readdirSync(join(root, folder)).sort(), []),
  };
}

function orWhenAbsent<T, U>(look: () => T, absent: U): T | U {
  try {
    return look();
  } catch (error) {
    if (error instanceof Error && 'code' in error && (error.code === 'ENOENT' || error.code === 'ENOTDIR')) return absent;
    throw error;
  }
}
