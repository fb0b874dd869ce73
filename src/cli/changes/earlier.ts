import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { keptContent, type Keep } from '../../keep/index.ts';
import { FaultError, faultLine, readItem, type Item, type ReadFiles } from '../../read/index.ts';
import { buildFile, type Variant } from '../record.ts';
import { sizesOf } from '../project.ts';
import { asBuildRecord, earlierRecord, type BuildRecord } from './build-record.ts';
import { filesAt } from './revision.ts';

/** A size as it was. */
export interface EarlierSize {
  readonly record: BuildRecord;
  /** One of its pictures, or null where it had none, or it is kept no more. */
  readonly picture: (id: string) => string | null;
}

/** What an item is compared with; null for a size that there was not. */
export type Earlier = (item: Item, size: string) => Promise<EarlierSize | null>;

/** What a variant's record says, as another build would read it. */
export const recordOf = (variant: Variant): BuildRecord => asBuildRecord(JSON.parse(buildFile(variant)), 'the build');

/** An earlier build in a folder. */
export function earlierBuild(folder: string, keep: Keep): Earlier {
  return (item, size) => {
    if (!existsSync(join(folder, item.name))) throw new Error(`${join(folder, item.name)}: no such folder; would be right: --since with the folder of an earlier build, as make wrote it, or --from with a revision in git`);
    const record = earlierRecord(join(folder, item.name, size, 'build.json'));
    return Promise.resolve(record === null ? null : { record, picture: (id) => keptPicture(record, id, keep) });
  };
}

function keptPicture({ pictures }: BuildRecord, id: string, keep: Keep): string | null {
  const was = pictures.find((picture) => picture.id === id);
  const kept = was === undefined ? null : keptContent(keep, was.sha256);
  return kept === null ? null : Buffer.from(kept).toString('utf8');
}

/** The texts of a revision in git, worked through as today's code does. */
export function earlierRevision(revision: string, workThrough: (item: Item, size: string) => Promise<Variant>): Earlier {
  const files = filesAt(revision);
  return async (item, size) => {
    const was = files.text(item.source.file) === null ? null : itemAt(files, item.source.file, revision);
    if (was === null || !sizesOf(was).includes(size)) return null;
    const variant = await workThrough(was, size);
    return { record: recordOf(variant), picture: (id) => variant.pictures.find((picture) => picture.id === id)?.svg ?? null };
  };
}

/** A fault in it is one of the text as it was, not of the file on the disk. */
function itemAt(files: ReadFiles, path: string, revision: string): Item {
  try {
    return readItem(files, path);
  } catch (error) {
    if (!(error instanceof FaultError)) throw error;
    throw new Error(`${revision}:${error.faults.map(faultLine)[0] ?? path}; would be right: a revision that this version reads`, { cause: error });
  }
}
