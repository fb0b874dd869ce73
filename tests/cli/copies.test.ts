import { execFile } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, it } from 'vitest';

const project = fileURLToPath(new URL('../../', import.meta.url));
const home = mkdtempSync(join(tmpdir(), 'foldwright-copies-'));
afterAll(() => { rmSync(home, { recursive: true, force: true }); });

/** A copy of the code, steps and locales, as a second clone would be. */
function copied(name: string): string {
  const folder = join(home, name);
  mkdirSync(folder);
  for (const each of ['src', 'steps', 'locales', 'package.json', 'package-lock.json', 'tsconfig.json']) cpSync(join(project, each), join(folder, each), { recursive: true });
  symlinkSync(join(project, 'node_modules'), join(folder, 'node_modules'));
  return folder;
}

/** The exit code of the command that checks an item, by the copy's own program. */
const checked = (folder: string): Promise<number> => new Promise((resolve) => {
  const env = { ...process.env, NODE_ENV: 'production', XDG_CACHE_HOME: join(home, 'cache') };
  execFile(process.execPath, [join(folder, 'src/cli/foldwright.mjs'), 'draw', 'stool', '--size', 'low', '--step', '3', '--no-cache'], { cwd: folder, env }, (error) => {
    resolve(typeof error?.code === 'number' ? error.code : 0);
  });
});

it('each copy of the code runs by itself: one that is taken away leaves the other working', async () => {
  const [one, other] = [copied('one'), copied('other')];
  expect(await checked(one)).toBe(0);
  rmSync(one, { recursive: true });
  expect(await checked(other)).toBe(0);
});
