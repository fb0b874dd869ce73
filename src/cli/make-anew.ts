import { EDITIONS, PUBLICATIONS } from '../booklet/index.ts';
import type { Keep } from '../keep/index.ts';
import { buildModel } from '../model/index.ts';
import type { Item } from '../read/index.ts';
import type { Crew } from './crew/index.ts';
import { checkedDraft, newPlanner } from './drafts.ts';
import { editionsAsked } from './editions-asked.ts';
import type { Finished, FinishedItem } from './finished.ts';
import type { MakeOptions } from './make-options.ts';
import { keepPrinted } from './prints.ts';
import { newProgress } from './progress.ts';
import { chosen, itemsNamed, sizesOf } from './project.ts';
import { publish, type Batch } from './publish.ts';
import { sizeMaker, type MakeSize } from './size-batches.ts';

/** What `make` has found out before, and the crew that does the work. */
export interface Begun {
  readonly crew: Crew;
  readonly keep: Keep;
  readonly finished: Finished;
  readonly before: readonly FinishedItem[];
  /** Of each item the sizes to make; those asked for unless given. */
  readonly sizes?: (item: Item) => readonly string[];
}

/** A batch to come; what it is made from is let go with it. */
type BatchToCome = () => Promise<Batch>;

/** Printed pages are finished before anything else is planned or drawn. */
const NEXT = -1;

/** Sizes that are planned and drawn while one is printed. */
const AHEAD = 2;

/** Makes the items that are not finished, and restores the others. Every size is checked before anything is written, the first planned meanwhile, and each item planned before its first file is written. */
export async function makeAnew(name: string | undefined, options: MakeOptions, { crew, keep, finished, before, sizes = (item) => chosen(sizesOf(item), options.size, 'size') }: Begun): Promise<void> {
  const told = newProgress(process.stderr.isTTY);
  const wanted = editionsAsked(options);
  try {
    const items = itemsNamed(name).filter((item) => before.some((one) => one.item === item.name && one.files === null));
    const plan = newPlanner(crew, keep);
    const [first] = items.flatMap((item) => sizes(item).map((size) => () => ({ item, model: buildModel(item, size) })));
    if (first !== undefined) plan.begin(first());
    const checked = items.map((item) => ({
      item: item.name,
      drafts: sizes(item).map((size) => checkedDraft(item, size, { ...options, copies: wanted.copies.length }, told)),
    }));
    await publish([...EDITIONS, PUBLICATIONS['phone-guide']], (soon) => {
      const make = sizeMaker(wanted, { crew, keep, plan, soon });
      return inTurn(before.flatMap(({ item, files }) => {
        if (files !== null) return [restored(files, told.line)];
        return itemBatches(checked.find((one) => one.item === item)?.drafts ?? [], make, finished.record(item), keep);
      }));
    }, told, { keep, finish: (given) => crew.run('finish', given, NEXT) });
  } finally {
    told.stop();
  }
}

const restored = (files: NonNullable<FinishedItem['files']>, line: (text: string) => void): BatchToCome =>
  () => Promise.resolve({ folder: '', copies: [], end: () => { files.restore(line); } });

/** One for each size; with the last of them the item is finished. */
function itemBatches(drafts: Parameters<MakeSize>[1], make: MakeSize, record: ReturnType<Finished['record']>, keep: Keep): readonly BatchToCome[] {
  return drafts.map((draft) => async () => {
    const batch = await make(draft, drafts);
    return { ...batch, written: record.written, end: () => {
      batch.end?.();
      keepPrinted(keep, draft.item.name, draft.model.size, batch.mark);
      record.printed(draft.model.size, batch.mark);
      if (draft === drafts.at(-1)) record.done();
    } };
  });
}

/** Batch after batch, those behind begun meanwhile. */
async function* inTurn(all: readonly BatchToCome[]): AsyncGenerator<Batch> {
  const begun: Promise<Batch>[] = [];
  for (const begin of all.slice(0, AHEAD)) begun.push(heard(begin()));
  for (let turn = 0; turn < all.length; turn += 1) {
    const later = all[turn + AHEAD];
    if (later !== undefined) begun.push(heard(later()));
    const batch = begun.shift();
    if (batch !== undefined) yield await batch;
  }
}

/** Its failure is told when it is its turn; until then nobody hears of it. */
function heard<T>(made: Promise<T>): Promise<T> {
  made.catch(() => undefined);
  return made;
}
