import { join } from 'node:path';
import { EDITIONS, PUBLICATIONS, type SizeToPublish, type Words, type WrittenCopy } from '../booklet/index.ts';
import { planTubes } from '../cut/index.ts';
import { picturesExpected, picturesFor, type Drawable, type Format, type Picture } from '../draw/index.ts';
import { buildModel, loadSolids, type Model } from '../model/index.ts';
import { planItem } from '../plan/index.ts';
import { keptLater, nothingKept, type Keep } from '../keep/index.ts';
import type { Item } from '../read/index.ts';
import { editionsAsked, type Wanted } from './editions-asked.ts';
import { localeFiles, makeFolder } from './files.ts';
import { openFinished, type Finished } from './finished.ts';
import { keepAsked } from './keeping.ts';
import { newProgress, type Progress } from './progress.ts';
import type { MakeOptions } from './make-options.ts';
import { chosen, isFileOfItem, itemNames, itemsNamed, sizesOf } from './project.ts';
import { publish, type Batch } from './publish.ts';
import { buildRecord, contentMark, type Variant } from './record.ts';
import { checkedSize, soundSize } from './sound.ts';
import { guideCopy } from './variant-guide.ts';


/**
 * Makes the booklets asked for, and beside those of each size build.json and the phone guide. What can be refused is
 * refused before anything is written; what nothing changed of is not made again.
 */
export async function makeCommand(name: string | undefined, options: MakeOptions): Promise<void> {
  const keep = keepAsked(options);
  // What a file given by its path makes is not kept by its name.
  const finished = await openFinished(isFileOfItem(name) ? nothingKept : keep, options);
  const told = newProgress(process.stdout.isTTY);
  const before = finished.of(itemNames(name));
  const items = before.some(({ files }) => files === null) ? itemsNamed(name) : [];
  const wanted = items.length > 0 ? editionsAsked(options) : null;
  const drafts: Draft[] = [];
  for (const item of items.filter(({ name: each }) => !before.some((one) => one.item === each && one.files !== null))) {
    for (const size of chosen(sizesOf(item), options.size, 'size')) drafts.push(await workThrough(item, size, options, keep));
  }
  for (const { folder } of drafts) makeFolder(folder);
  for (const { item, files } of before) {
    if (files !== null) files.restore(told);
    else if (wanted !== null) await makeItem(drafts.filter(({ variant }) => variant.item.name === item), wanted, { told, finished, keep });
  }
  keep.trim();
}

interface Making { readonly told: Progress; readonly finished: Finished; readonly keep: Keep }

async function makeItem(drafts: readonly Draft[], wanted: Wanted, { told, finished, keep }: Making): Promise<void> {
  const [item] = drafts.map(({ variant }) => variant.item.name);
  if (item === undefined) return;
  const record = finished.record(item);
  await publish([...EDITIONS, PUBLICATIONS['phone-guide']], sizes(drafts, wanted, told, keep), told, { keep, written: record.written });
  record.done();
}

/** A size variant before its pictures are drawn, and the folder its booklets go to. */
interface Draft {
  readonly folder: string;
  readonly variant: Omit<Variant, 'pictures'>;
}

/** Throws when a check fails, unless it is to be printed all the same, or when the order of work is refused. */
export async function workThrough(item: Item, size: string, options: { readonly despiteFindings?: boolean; readonly out: string }, keep = nothingKept): Promise<Draft> {
  const { model, report } = options.despiteFindings === true ? checkedSize(item, size) : soundSize(item, size, ', or print it stamped with --despite-findings');
  // The solid kernel keeps every shape it built: one for the proof of each size, let go after it.
  const plan = await keptLater(keep, keep.key('plan', model, item.order), async () => planItem(model, item.order, await loadSolids()));
  const cuts = await keptLater(keep, keep.key('cuts', model), () => planTubes(model));
  return { folder: join(options.out, item.name, size), variant: { item, model, plan, report, cuts } };
}

/** Size after size: drawn once for all its copies. */
async function* sizes(drafts: readonly Draft[], { copies, binding, languages }: Wanted, progress: Progress, keep: Keep): AsyncGenerator<Batch> {
  for (const { folder, variant: draft } of drafts) {
    const { item, model } = draft;
    progress.start(picturesExpected(draft.plan) + copies.length + 1);
    const pictures = await drawnSets(draft, copies.map(({ format }) => format), (id) => { progress.done(`${item.name} ${model.size} ${id}`); }, keep);
    const variant = { ...draft, pictures: pictures.page };
    const variants = sizesOf(item).map((each) => buildModel(item, each));
    const size = sizeToPublish(variant, variants, { pictures, languages });
    yield { folder, copies: [recordCopy(variant), keptGuide(variant, variants, languages, keep), ...copies.map((copy) => copy.of(size, binding))] };
    progress.stop();
  }
}

/** Draws what the wanted formats need; one that is not wanted stays empty, but for A4 and Letter's: the size's mark is made from them. */
async function drawnSets(givens: Omit<Drawable, 'solids'>, wanted: readonly Format[], drawn: (id: string) => void, keep: Keep): Promise<SizeToPublish['pictures']> {
  const formats = [...new Set<Format>(['page', ...wanted])];
  const { model, plan, cuts } = givens;
  const made: Partial<Record<Format, readonly Picture[]>> = await keptLater(keep, keep.key('pictures', model, plan, cuts, formats),
    async () => picturesFor({ model, plan, cuts, solids: await loadSolids() }, formats, drawn));
  return { page: made.page ?? [], small: made.small ?? [], thumb: made.thumb ?? [] };
}

/** The guide shows nothing of the item but what its model, plan and findings say, and its revision. */
function keptGuide(variant: Variant, variants: readonly Model[], languages: readonly Words[], keep: Keep): WrittenCopy {
  const copy = guideCopy(variant, variants, languages);
  if (keep === nothingKept) return copy;
  const { item: { name, revision }, pictures, ...rest } = variant;
  const words = languages.map(({ lang }) => lang);
  const key = keep.key('guide', name, revision, contentMark(variant), rest, pictures, variants, words, localeFiles('locales'));
  return { ...copy, text: () => keptLater(keep, key, () => Promise.resolve(copy.text())) };
}

/** A variant as the editions take it. */
export function sizeToPublish(variant: Variant, variants: readonly Model[], drawn: Pick<SizeToPublish, 'pictures' | 'languages'>): SizeToPublish {
  const { item, model, plan, report } = variant;
  return { model, plan, report, variants, revision: item.revision, contentMark: contentMark(variant), ...drawn };
}

const recordCopy = (variant: Variant): WrittenCopy => ({ made: 'written', file: 'build.json', text: () => `${JSON.stringify(buildRecord(variant), null, 2)}\n`, isTold: false });
