import { execFileSync } from 'node:child_process';
import { basename, dirname } from 'node:path';
import type { ChosenBrowser } from './types.ts';

/**
 * Tells browsers apart that may print differently: the packaged one by its version, which its folder bears, others by
 * what they say of themselves. @throws when it cannot be run.
 */
export function browserMark({ how, path, env, args }: ChosenBrowser): string {
  if (how === 'packaged') return basename(dirname(path));
  const told = execFileSync(path, [...args, '--version'], { encoding: 'utf8', env, stdio: ['ignore', 'pipe', 'ignore'] });
  return `${path} ${told.trim()}`;
}
