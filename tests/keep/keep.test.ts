import { mkdtempSync, readdirSync, readFileSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { keepFolder, keepLimit, keptData, nothingKept, openKeep } from '../../src/keep/index.ts';

let folder = '';
beforeEach(() => { folder = mkdtempSync(join(tmpdir(), 'foldwright-keep-')); });
afterEach(() => { rmSync(folder, { recursive: true, force: true }); });

const open = (limit = 1e9, code = 'code'): ReturnType<typeof openKeep> => openKeep({ folder, code, limit });
const files = (): readonly string[] => readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name)).sort();
const file = (): string => files()[0] ?? '';

describe('what is kept', () => {
  it('comes back as it was written, in another build too', () => {
    const key = open().key('plan', { width: 600 });
    open().write(key, Buffer.from('a plan'));
    expect(Buffer.from(open().read(key) ?? []).toString()).toBe('a plan');
  });

  it('has another key when any part, the kind or the code is another', () => {
    const keys = [
      open().key('plan', { width: 600 }), open().key('plan', { width: 600.001 }), open().key('plan', { width: 600 }, 1), open().key('picture', { width: 600 }),
      open(1, 'other').key('plan', { width: 600 }), open().key('plan', { width: -0 }), open().key('plan', { width: 0 }), open().key('plan', { width: Infinity }),
      open().key('plan', { width: null }), open().key('plan', new Map([['a', 1]])), open().key('plan', new Map([['a', 2]])), open().key('plan', new Set(['a'])), open().key('plan', ['a']),
    ];
    expect(new Set(keys).size).toBe(keys.length);
    expect(open().key('plan', { width: 600 })).toBe(keys[0]);
  });

  it('refuses a key from what cannot be compared', () => {
    expect(() => open().key('plan', { evaluate: () => 1 })).toThrow(/only plain data/);
  });

  it.each([
    ['a byte flipped', (bytes: Buffer) => { bytes[bytes.length - 1] = (bytes.at(-1) ?? 0) ^ 1; return bytes; }],
    ['its hash flipped', (bytes: Buffer) => { bytes[0] = (bytes[0] ?? 0) ^ 1; return bytes; }],
    ['cut short', (bytes: Buffer) => bytes.subarray(0, -1)],
    ['emptied', () => Buffer.alloc(0)],
  ])('is made again, never trusted, when it is damaged: %s', (_how, damage) => {
    const keep = open();
    const key = keep.key('plan', 1);
    expect(keptData(keep, key, () => ({ steps: 9 }))).toEqual({ steps: 9 });
    writeFileSync(file(), damage(readFileSync(file())));
    let made = 0;
    const again = (): object => keptData(keep, key, () => { made += 1; return { steps: 9 }; });
    expect([again(), again(), made]).toEqual([{ steps: 9 }, { steps: 9 }, 1]);
  });

  it('leaves no unfinished file, and two builds at once leave one whole result', () => {
    const [one, other] = [open(), open()];
    const key = one.key('pdf', 1);
    for (let turn = 0; turn < 20; turn += 1) {
      one.write(key, Buffer.alloc(50_000, 'a'));
      other.write(key, Buffer.alloc(50_000, 'a'));
      expect(open().read(key)?.length).toBe(50_000);
    }
    expect(files()).toHaveLength(1);
  });

  it('stays under its limit: what was used longest ago goes first', () => {
    const keep = open(10_000);
    const keys = [0, 1, 2, 3].map((each) => keep.key('pdf', each));
    keys.forEach((key, index) => {
      keep.write(key, Buffer.alloc(3000, String(index)));
      utimesSync(join(folder, key.slice(0, 2), key.slice(2)), 1000 + index, 1000 + index);
    });
    expect(keep.read(keys[0] ?? '')).not.toBeNull();
    writeFileSync(join(folder, 'not-ours.txt'), 'x'.repeat(20_000));
    keep.trim();
    expect(keys.map((key) => keep.read(key) !== null)).toEqual([true, false, false, true]);
    expect(files().some((path) => path.endsWith('not-ours.txt'))).toBe(true);
  });

  it('costs nothing where the folder cannot be written', () => {
    const keep = openKeep({ folder: '/proc/nowhere/kept', code: 'code', limit: 1 });
    expect(keptData(keep, keep.key('plan', 1), () => 7)).toBe(7);
    keep.trim();
    expect(keep.read(keep.key('plan', 1))).toBeNull();
  });

  it('is nothing when nothing is to be kept', () => {
    nothingKept.write(nothingKept.key('plan', 1), Buffer.from('x'));
    expect(nothingKept.read(nothingKept.key('plan', 1))).toBeNull();
  });
});

describe('where it is kept', () => {
  it('is what the option says, then the variable, then the user’s cache folder', () => {
    expect(keepFolder('/a', { FOLDWRIGHT_CACHE: '/b' })).toBe('/a');
    expect(keepFolder(true, { FOLDWRIGHT_CACHE: '/b', XDG_CACHE_HOME: '/c' })).toBe('/b');
    expect(keepFolder(undefined, { XDG_CACHE_HOME: '/c' })).toBe('/c/foldwright/kept');
    expect(keepFolder(undefined, {})).toMatch(/\.cache\/foldwright\/kept$/);
  });

  it('is nowhere with --no-cache, or with an empty variable', () => {
    expect(keepFolder(false, { FOLDWRIGHT_CACHE: '/b' })).toBeNull();
    expect(keepFolder(true, { FOLDWRIGHT_CACHE: '' })).toBeNull();
  });

  it('has a limit in megabytes, which must be a number', () => {
    expect(keepLimit({ FOLDWRIGHT_CACHE_LIMIT: '5' })).toBe(5e6);
    expect(() => keepLimit({ FOLDWRIGHT_CACHE_LIMIT: 'much' })).toThrow(/FOLDWRIGHT_CACHE_LIMIT is “much”; would be right: a number of megabytes/);
  });
});
