import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { keepPrinted, replacedBy } from '../../src/cli/prints.ts';
import { nothingKept, openKeep } from '../../src/keep/index.ts';

let folder = '';
beforeEach(() => { folder = mkdtempSync(join(tmpdir(), 'foldwright-prints-')); });
afterEach(() => { rmSync(folder, { recursive: true, force: true }); });

it('a print replaces the one before it, and says so whenever it is made again, by other code too', () => {
  const keep = openKeep({ folder, code: 'one', limit: 1e9 });
  expect(replacedBy(keep, 'rack', 'tall', 'aaaaaaaa')).toBeNull();
  keepPrinted(keep, 'rack', 'tall', 'aaaaaaaa');
  expect(replacedBy(keep, 'rack', 'tall', 'aaaaaaaa')).toBeNull();
  const later = openKeep({ folder, code: 'another', limit: 1e9 });
  expect(replacedBy(later, 'rack', 'tall', 'bbbbbbbb')).toBe('aaaaaaaa');
  expect(replacedBy(later, 'rack', 'low', 'bbbbbbbb')).toBeNull();
  for (const mark of ['bbbbbbbb', 'bbbbbbbb']) keepPrinted(later, 'rack', 'tall', mark);
  expect(replacedBy(later, 'rack', 'tall', 'bbbbbbbb')).toBe('aaaaaaaa');
  // Made back: the first print is the first again, and what comes then replaces that one.
  keepPrinted(later, 'rack', 'tall', 'aaaaaaaa');
  expect(replacedBy(later, 'rack', 'tall', 'aaaaaaaa')).toBeNull();
  expect(replacedBy(later, 'rack', 'tall', 'cccccccc')).toBe('aaaaaaaa');
  expect(replacedBy(later, 'rack', 'tall', 'bbbbbbbb')).toBe('aaaaaaaa');
});

it('nothing is known where nothing is kept', () => {
  keepPrinted(nothingKept, 'rack', 'tall', 'aaaaaaaa');
  expect(replacedBy(nothingKept, 'rack', 'tall', 'bbbbbbbb')).toBeNull();
});
