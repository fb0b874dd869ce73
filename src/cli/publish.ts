import { dirname, join } from 'node:path';
import type { Copy, Finisher, PrintedCopy, Publication } from '../booklet/index.ts';
import { nothingKept, type Keep } from '../keep/index.ts';
import { writeWhole } from './files.ts';
import { openPress, type Press } from './kept-press.ts';
import type { Progress } from './progress.ts';

/** Copies that go to one folder. Their pictures are printed before the first of them is written. */
export interface Batch {
  readonly folder: string;
  readonly copies: readonly Copy[];
  /** Hears of each file with its content. */
  readonly written?: (path: string, content: string | Uint8Array, isTold: boolean) => void;
  /** Hears of each copy that is told, when it is written. */
  readonly done?: (path: string) => void;
  /** Hears that all are written. */
  readonly end?: () => void;
}

/** Batches, each made when it is its turn; or what gives them, which may tell of pictures that will have to be printed soon. */
export type Batches = Iterable<Batch> | AsyncIterable<Batch> | ((printsSoon: Press['soon']) => AsyncIterable<Batch>);

/** Where printed files are kept; nowhere unless told. And who finishes printed pages; this thread unless told. */
export interface By {
  readonly keep?: Keep;
  readonly finish?: Finisher;
}

/** Who hears of the files. */
type Told = Pick<Progress, 'line'>;

/** Copies begun before the first of them is written: two lots that share their pages are finished while a third is printed. */
const AT_ONCE = 6;

/** Publishes batch after batch and tells each file, in order. What was made before is written as it was. */
export async function publish(publications: readonly Publication[], batches: Batches, told: Told, { keep = nothingKept, finish }: By = {}): Promise<void> {
  // The first start unpacks a browser; what is printed is planned and drawn meanwhile.
  const opened = openPress(publications, keep, finish);
  opened.catch(() => undefined);
  const soon: Press['soon'] = (first) => { opened.then((press) => { press.soon(first); }, () => undefined); };
  const queue = inOrder();
  try {
    for await (const batch of typeof batches === 'function' ? batches(soon) : batches) {
      const press = await opened;
      for (const begin of tasksOf(batch, press, told)) await queue.add(begin);
    }
    await queue.end();
  } finally {
    await opened.then((press) => press.close(), () => undefined);
  }
}

/** Makes something, and gives what is to be done with it when all before it is done. */
type Task = () => Promise<() => void>;

function tasksOf({ folder, copies, written, done, end }: Batch, press: Press, told: Told): readonly Task[] {
  const printed = copies.filter((copy) => copy.made === 'printed');
  return [
    async () => { await press.prepare(printed); return () => undefined; },
    ...copies.map((copy): Task => async () => {
      const files = await filesOf(copy, join(folder, copy.file), press);
      return () => {
        for (const { path, content, isTold } of files) {
          writeWhole(path, content);
          written?.(path, content, isTold);
          if (isTold) told.line(path);
        }
        if (copy.made === 'printed' || copy.isTold) done?.(copy.file);
      };
    }),
    () => Promise.resolve(() => { end?.(); }),
  ];
}

/** A few tasks at once, what they give done in the order in which they were added. */
function inOrder(): { readonly add: (begin: Task) => Promise<void>; readonly end: () => Promise<void> } {
  const begun: Promise<() => void>[] = [];
  const finishFirst = async (): Promise<void> => { (await begun.shift())?.(); };
  return {
    add: async (begin) => {
      const made = begin();
      // Whoever waits for it hears of its failure; before that it is not to be taken for one that nobody hears of.
      made.catch(() => undefined);
      begun.push(made);
      if (begun.length >= AT_ONCE) await finishFirst();
    },
    end: async () => { while (begun.length > 0) await finishFirst(); },
  };
}

interface MadeFile { readonly path: string; readonly content: string | Uint8Array; readonly isTold: boolean }

async function filesOf(copy: Copy, path: string, press: Press): Promise<readonly MadeFile[]> {
  if (copy.made === 'written') return [{ path, content: await copy.text(), isTold: copy.isTold }];
  const printed = await press.print(copy);
  return [{ path, content: printed, isTold: true }, ...await boundOf(copy, path, printed)];
}

const boundOf = ({ bound }: PrintedCopy, path: string, printed: Uint8Array): Promise<readonly MadeFile[]> =>
  Promise.all(bound.map(async ({ file, from }) => ({ path: join(dirname(path), file), content: await from(printed), isTold: true })));
