import { join } from 'node:path';
import { COPIES, PUBLICATIONS } from '../booklet/index.ts';
import { papersAsked } from './asked.ts';
import { makeFolder } from './files.ts';
import { keepAsked, type KeepOptions } from './keeping.ts';
import { plainProgress } from './progress.ts';
import { chosen, itemsNamed, sizesOf } from './project.ts';
import { publish } from './publish.ts';
import { soundSize } from './sound.ts';

export interface SheetsOptions extends KeepOptions {
  readonly size?: readonly string[];
  readonly paper?: readonly string[];
  readonly out: string;
}

/** Prints the marking sheets of an item, a file for each size and paper. What can be refused is refused before anything is written. */
export async function sheetsCommand(name: string, options: SheetsOptions): Promise<void> {
  const batches = itemsNamed(name).flatMap((item) => {
    const papers = papersAsked(PUBLICATIONS['marking-sheets'], options.paper);
    return chosen(sizesOf(item), options.size, 'size').map((size) => {
      // Nobody shall cut by the sheets of an item that is not proven.
      const { model } = soundSize(item, size);
      return { folder: join(options.out, item.name, size), copies: COPIES['marking-sheets']({ model, revision: item.revision }, papers) };
    });
  });
  const keep = keepAsked(options);
  for (const { folder } of batches) makeFolder(folder);
  await publish([PUBLICATIONS['marking-sheets']], batches, plainProgress, { keep });
  keep.trim();
}
