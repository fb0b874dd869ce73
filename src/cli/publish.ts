import { dirname, join } from 'node:path';
import type { Copy, PrintedCopy, Publication, WrittenCopy } from '../booklet/index.ts';
import { nothingKept, type Keep } from '../keep/index.ts';
import { writeWhole } from './files.ts';
import { openPress, type Press } from './kept-press.ts';
import type { Progress } from './progress.ts';

/** Copies that go to one folder. Their pictures are printed before the first of them is written. */
export interface Batch {
  readonly folder: string;
  readonly copies: readonly Copy[];
}

/** Who hears of the files. */
type Told = Pick<Progress, 'done' | 'line'>;

/** What was made before, and who hears of each file with its content; left out, nothing is kept. */
export interface Keeping {
  readonly keep: Keep;
  readonly written: (path: string, content: string | Uint8Array, isTold: boolean) => void;
}

const unkept: Keeping = { keep: nothingKept, written: () => undefined };

/** Publishes batch after batch, each made when it is its turn, and tells each file. What was made before is written as it was. */
export async function publish(publications: readonly Publication[], batches: Iterable<Batch> | AsyncIterable<Batch>, told: Told, keeping = unkept): Promise<void> {
  const press = await openPress(publications, keeping.keep);
  try {
    for await (const { folder, copies } of batches) {
      await press.prepare(copies.filter((copy) => copy.made === 'printed'));
      for (const copy of copies) await publishOne(copy, join(folder, copy.file), { press, told, keeping });
    }
  } finally {
    await press.close();
  }
}

interface Publishing { readonly press: Press; readonly told: Told; readonly keeping: Keeping }

async function publishOne(copy: Copy, path: string, by: Publishing): Promise<void> {
  if (copy.made === 'printed') await publishPrinted(copy, path, by);
  else await publishWritten(copy, path, by);
}

async function publishWritten(copy: WrittenCopy, path: string, { told, keeping }: Publishing): Promise<void> {
  const text = await copy.text();
  writeWhole(path, text);
  keeping.written(path, text, copy.isTold);
  if (!copy.isTold) return;
  told.line(path);
  told.done(path);
}

async function publishPrinted(copy: PrintedCopy, path: string, { press, told, keeping }: Publishing): Promise<void> {
  const printed = await press.print(copy);
  writeWhole(path, printed);
  keeping.written(path, printed, true);
  told.line(path);
  for (const { file, from } of copy.bound) {
    const bound = join(dirname(path), file);
    const sheets = await from(printed);
    writeWhole(bound, sheets);
    keeping.written(bound, sheets, true);
    told.line(bound);
  }
  told.done(path);
}
