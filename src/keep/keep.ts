import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { canonical } from './canonical.ts';
import type { Keep } from './types.ts';

export interface KeepSettings {
  readonly folder: string;
  /** A hash of the code that makes the results: other code, other keys. */
  readonly code: string;
  /** Bytes kept at most. */
  readonly limit: number;
}

const HASH_BYTES = 32;

/** Trimmed to this share of the limit, so that not every build has to trim. */
const TRIMMED = 0.9;

/**
 * Results in a folder, one file each: the SHA-256 of the result, then the result. A file is written under a name of its
 * own and renamed, so that two builds at once see it whole or not at all. Times of files say only what was used last;
 * what a result is made from is in its key.
 */
export function openKeep({ folder, code, limit }: KeepSettings): Keep {
  const pathOf = (key: string): string => join(folder, key.slice(0, 2), key.slice(2));
  let written = 0;
  return {
    key: keyMaker(code),
    read: (key) => readWhole(pathOf(key)),
    holds: (key) => existsSync(pathOf(key)),
    write(key, bytes) {
      written += 1;
      writeRenamed(pathOf(key), bytes, `${process.pid}-${written}`);
    },
    trim() { if (written > 0) trimFolder(folder, limit); },
  };
}

/** Keeps nothing. */
export const nothingKept: Keep = { key: keyMaker(''), read: () => null, holds: () => false, write: () => undefined, trim: () => undefined };

function keyMaker(code: string): Keep['key'] {
  return (kind, ...parts) => createHash('sha256').update(canonical([code, kind, ...parts])).digest('hex');
}

const hashOf = (bytes: Uint8Array): Buffer => createHash('sha256').update(bytes).digest();

/** A damaged file is removed. */
function readWhole(path: string): Uint8Array | null {
  const file = orNull(() => readFileSync(path));
  if (file === null) return null;
  const content = file.subarray(HASH_BYTES);
  if (!hashOf(content).equals(file.subarray(0, HASH_BYTES))) {
    orNull(() => { rmSync(path, { force: true }); });
    return null;
  }
  const now = new Date();
  orNull(() => { utimesSync(path, now, now); });
  return content;
}

function writeRenamed(path: string, bytes: Uint8Array, mark: string): void {
  const unfinished = `${path}.${mark}.unfinished`;
  const done = orNull(() => {
    makeFolder(dirname(path));
    writeFileSync(unfinished, Buffer.concat([hashOf(bytes), bytes]));
    renameSync(unfinished, path);
    return true;
  });
  if (done === null) orNull(() => { rmSync(unfinished, { force: true }); });
}

/** Step by step, because mkdir's own recursion never ends where a system says for ever that a folder above is missing, as under /proc. */
function makeFolder(path: string): void {
  if (existsSync(path)) return;
  if (dirname(path) !== path) makeFolder(dirname(path));
  if (!existsSync(path)) makeOne(path);
}

/** Another build may have just made it. */
function makeOne(path: string): void {
  try {
    mkdirSync(path, { mode: 0o700 });
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) throw error;
  }
}

interface Kept { readonly path: string; readonly size: number; readonly used: number }

function trimFolder(folder: string, limit: number): void {
  const all = keptIn(folder);
  let size = all.reduce((sum, one) => sum + one.size, 0);
  if (size <= limit) return;
  for (const one of all.sort((a, b) => a.used - b.used || (a.path < b.path ? -1 : 1))) {
    if (size <= limit * TRIMMED) return;
    orNull(() => { rmSync(one.path, { force: true }); });
    size -= one.size;
  }
}

/** Only files of the form that is written here: where the folder holds something else, that is left alone. */
function keptIn(folder: string): Kept[] {
  const shelves = (orNull(() => readdirSync(folder)) ?? []).filter((name) => /^[0-9a-f]{2}$/.test(name));
  return shelves.flatMap((shelf) => (orNull(() => readdirSync(join(folder, shelf))) ?? [])
    .filter((name) => /^[0-9a-f]{62}(\.[\d-]+\.unfinished)?$/.test(name))
    .flatMap((name) => {
      const path = join(folder, shelf, name);
      const stat = orNull(() => statSync(path));
      return stat === null ? [] : [{ path, size: stat.size, used: stat.mtimeMs }];
    }));
}

/** Trouble with the disk, or a file that another build has just removed, costs only the time to make a result again. */
function orNull<T>(act: () => T): T | null {
  try {
    return act();
  } catch (error) {
    if (error instanceof Error && 'code' in error) return null;
    throw error;
  }
}
