import { mkdirSync, mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { chooseBrowser } from '../../src/booklet/print/chooseBrowser.ts';

/**
 * One folder for what commands keep, new for each run of the tests: what one test has had made, the next takes from it.
 * That what is kept equals what is made anew, tests/cli/kept.test.ts and tests/security/sameness.test.ts hold, which keep
 * folders of their own. The bundled programs lie there too, so that nobody else's builds tidy them away; of the user's own
 * cache folder only the unpacked browser is taken.
 */
export default async function oneKept(): Promise<() => void> {
  const folder = mkdtempSync(join(tmpdir(), 'foldwright-kept-'));
  const { path, how } = await chooseBrowser();
  const cache = join(folder, 'cache', 'foldwright');
  mkdirSync(cache, { recursive: true });
  if (how === 'packaged') symlinkSync(dirname(path), join(cache, basename(dirname(path))), 'dir');
  process.env['XDG_CACHE_HOME'] = join(folder, 'cache');
  process.env['FOLDWRIGHT_CACHE'] = join(folder, 'kept');
  return () => { rmSync(folder, { recursive: true, force: true }); };
}
