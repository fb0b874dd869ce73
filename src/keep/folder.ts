import { homedir } from 'node:os';
import { join } from 'node:path';

/** Names the folder of what is kept; set but empty: nothing is kept. */
export const KEEP_VARIABLE = 'FOLDWRIGHT_CACHE';

/** How much is kept at most, in megabytes. */
export const LIMIT_VARIABLE = 'FOLDWRIGHT_CACHE_LIMIT';

/** Room for the whole catalogue three times over. */
const USUAL_LIMIT_MB = 3000;

type Environment = Readonly<Record<string, string | undefined>>;

/** Where results are kept: the folder asked for, or that of the variable, or the user's own; null where nothing is to be kept. */
export function keepFolder(asked: string | boolean | undefined, env: Environment): string | null {
  if (asked === false) return null;
  if (typeof asked === 'string') return asked;
  const named = env[KEEP_VARIABLE];
  if (named !== undefined) return named === '' ? null : named;
  return join(env['XDG_CACHE_HOME'] || join(homedir(), '.cache'), 'foldwright', 'kept');
}

/** The limit in bytes. @throws when the variable holds no number of megabytes. */
export function keepLimit(env: Environment): number {
  const told = env[LIMIT_VARIABLE];
  const megabytes = told === undefined || told === '' ? USUAL_LIMIT_MB : Number(told);
  if (!(megabytes > 0)) throw new Error(`${LIMIT_VARIABLE} is “${told ?? ''}”; would be right: a number of megabytes, such as ${USUAL_LIMIT_MB}`);
  return megabytes * 1e6;
}
