import { join } from 'node:path';
import { EDITIONS, PUBLICATIONS, type SizeToPublish, type WrittenCopy } from '../booklet/index.ts';
import { planTubes } from '../cut/index.ts';
import { picturesExpected, picturesFor, type Drawable, type Format, type Picture } from '../draw/index.ts';
import { buildModel, loadSolids, type Model } from '../model/index.ts';
import { planItem } from '../plan/index.ts';
import type { Item } from '../read/index.ts';
import { editionsAsked, type EditionOptions, type Wanted } from './editions-asked.ts';
import { makeFolder } from './files.ts';
import { newProgress, type Progress } from './progress.ts';
import { chosen, itemsNamed, sizesOf } from './project.ts';
import { publish, type Batch } from './publish.ts';
import { buildRecord, contentMark, type Variant } from './record.ts';
import { checkedSize, soundSize } from './sound.ts';
import { guideCopy } from './variant-guide.ts';

export interface MakeOptions extends EditionOptions {
  readonly size?: readonly string[];
  readonly out: string;
  /** Prints although a check fails; every page is then stamped. */
  readonly despiteFindings?: boolean;
}

/** Makes the booklets asked for, and beside those of each size build.json and the phone guide. What can be refused is refused before anything is written. */
export async function makeCommand(name: string | undefined, options: MakeOptions): Promise<void> {
  const items = itemsNamed(name);
  const wanted = editionsAsked(options);
  const jobs = items.flatMap((item) => chosen(sizesOf(item), options.size, 'size').map((size) => ({ item, size })));
  const drafts: Draft[] = [];
  for (const { item, size } of jobs) drafts.push(await workThrough(item, size, options));
  for (const { folder } of drafts) makeFolder(folder);
  const progress = newProgress(process.stdout.isTTY);
  await publish([...EDITIONS, PUBLICATIONS['phone-guide']], sizes(drafts, wanted, progress), progress);
}

/** A size variant before its pictures are drawn, and the folder its booklets go to. */
interface Draft {
  readonly folder: string;
  readonly variant: Omit<Variant, 'pictures'>;
}

/** Throws when a check fails, unless it is to be printed all the same, or when the order of work is refused. */
export async function workThrough(item: Item, size: string, options: { readonly despiteFindings?: boolean; readonly out: string }): Promise<Draft> {
  const { model, report } = options.despiteFindings === true ? checkedSize(item, size) : soundSize(item, size, ', or print it stamped with --despite-findings');
  // The solid kernel keeps every shape it built: one for the proof of each size, let go after it.
  const plan = planItem(model, item.order, await loadSolids());
  return { folder: join(options.out, item.name, size), variant: { item, model, plan, report, cuts: await planTubes(model) } };
}

/** Size after size: drawn once for all its copies. */
async function* sizes(drafts: readonly Draft[], { copies, binding, languages }: Wanted, progress: Progress): AsyncGenerator<Batch> {
  for (const { folder, variant: draft } of drafts) {
    const { item, model } = draft;
    progress.start(picturesExpected(draft.plan) + copies.length + 1);
    const pictures = await drawnSets(draft, copies.map(({ format }) => format), (id) => { progress.done(`${item.name} ${model.size} ${id}`); });
    const variant = { ...draft, pictures: pictures.page };
    const variants = sizesOf(item).map((each) => buildModel(item, each));
    const size = sizeToPublish(variant, variants, { pictures, languages });
    yield { folder, copies: [recordCopy(variant), guideCopy(variant, variants, languages), ...copies.map((copy) => copy.of(size, binding))] };
    progress.stop();
  }
}

/** Draws what the wanted formats need; one that is not wanted stays empty, but for A4 and Letter's: the size's mark is made from them. */
async function drawnSets(givens: Omit<Drawable, 'solids'>, wanted: readonly Format[], drawn: (id: string) => void): Promise<SizeToPublish['pictures']> {
  const formats = [...new Set<Format>(['page', ...wanted])];
  const made: Partial<Record<Format, readonly Picture[]>> = picturesFor({ ...givens, solids: await loadSolids() }, formats, drawn);
  return { page: made.page ?? [], small: made.small ?? [], thumb: made.thumb ?? [] };
}

/** A variant as the editions take it. */
export function sizeToPublish(variant: Variant, variants: readonly Model[], drawn: Pick<SizeToPublish, 'pictures' | 'languages'>): SizeToPublish {
  const { item, model, plan, report } = variant;
  return { model, plan, report, variants, revision: item.revision, contentMark: contentMark(variant), ...drawn };
}

const recordCopy = (variant: Variant): WrittenCopy => ({ made: 'written', file: 'build.json', text: () => `${JSON.stringify(buildRecord(variant), null, 2)}\n`, isTold: false });
