import { readFileSync, readdirSync } from 'node:fs';

/** The browsers that run with a profile under a folder (Linux): the first process of each, which names its profile. */
export function browsersIn(folder: string): readonly number[] {
  return processesNaming(`--user-data-dir=${folder}/`);
}

/** Processes whose command names something. Those that have ended and are only not yet fetched name nothing. */
export function processesNaming(something: string): readonly number[] {
  return readdirSync('/proc').map(Number).filter((id) => Number.isInteger(id) && readOf(id, 'cmdline').includes(something));
}

/** Processes whose temporary files go to a folder or below it (Linux). */
export function processesUnder(folder: string): readonly number[] {
  return readdirSync('/proc').map(Number).filter((id) => Number.isInteger(id) && readOf(id, 'environ').split('\0').some((line) => line === `TMPDIR=${folder}` || line.startsWith(`TMPDIR=${folder}/`)));
}

function readOf(id: number, what: 'cmdline' | 'environ'): string {
  try {
    return readFileSync(`/proc/${id}/${what}`, 'utf8');
  } catch {
    return '';
  }
}
