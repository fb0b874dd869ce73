import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/**
 * One folder for what commands keep, new for each run of the tests: what one test has had made, the next takes from it.
 * That what is kept equals what is made anew, tests/cli/kept.test.ts and tests/security/sameness.test.ts hold, which keep
 * folders of their own.
 */
export default function oneKept(): () => void {
  const folder = mkdtempSync(join(tmpdir(), 'foldwright-kept-'));
  process.env['FOLDWRIGHT_CACHE'] = folder;
  return () => { rmSync(folder, { recursive: true, force: true }); };
}
