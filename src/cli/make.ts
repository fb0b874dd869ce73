import { nothingKept } from '../keep/index.ts';
import { withCrew } from './crew/index.ts';
import { openFinished } from './finished.ts';
import { keepAsked } from './keeping.ts';
import type { MakeOptions } from './make-options.ts';
import { isFileOfItem, itemNames } from './project-names.ts';

/**
 * Makes the booklets asked for, and beside those of each size build.json and the phone guide. What nothing changed of is
 * not made again: then nothing is loaded that draws or prints.
 */
export async function makeCommand(name: string | undefined, options: MakeOptions): Promise<void> {
  const { share } = options;
  if (share !== undefined) return (await import('./shares/make-share.ts')).makeShare(name, share, options);
  const keep = keepAsked(options);
  // What a file given by its path makes is not kept by its name.
  const finished = await openFinished(isFileOfItem(name) ? nothingKept : keep, options);
  const before = finished.of(itemNames(name));
  if (before.some(({ files }) => files === null)) {
    await withCrew(async (crew) => (await import('./make-anew.ts')).makeAnew(name, options, { crew, keep, finished, before }));
  }
  else for (const { files } of before) files?.restore((text) => { process.stdout.write(`${text}\n`); });
  keep.trim();
}
