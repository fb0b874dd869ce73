import { execFileSync } from 'node:child_process';
import { readTar } from '../../booklet/index.ts';
import { filesInMemory, type ReadFiles } from '../../read/index.ts';

/** Git's own names of revisions; none begins with a dash, so that none is taken for an option. */
const REVISION = /^[\p{L}\p{N}_@][\p{L}\p{N}_@./~^{}+-]*$/u;

/** More than all texts of a catalogue take, bytes. */
const MOST_BYTES = 256e6;

/** The texts under steps/ as they were at a revision in git. Throws where git knows no such revision of this folder. */
export function filesAt(revision: string): ReadFiles {
  if (!REVISION.test(revision)) throw new Error(`--from ${revision}: no name of a revision; would be right: such as HEAD~1`);
  const files = readTar(archive(revision)).filter(({ name }) => name.endsWith('.yaml'));
  return filesInMemory(Object.fromEntries(files.map(({ name, bytes }) => [name, Buffer.from(bytes).toString('utf8')])));
}

function archive(revision: string): Uint8Array {
  try {
    return execFileSync('git', ['archive', '--format=tar', revision, 'steps'], { maxBuffer: MOST_BYTES, stdio: ['ignore', 'pipe', 'pipe'] });
  } catch (error) {
    const told = error instanceof Error && 'stderr' in error ? String(error.stderr).trim().split('\n')[0] ?? '' : '';
    if (told === '') throw error;
    throw new Error(`--from ${revision}: git has no such revision of steps/ here (${told}); would be right: one such as HEAD~1, or --since with the folder of an earlier build`, { cause: error });
  }
}
