import { picturesOnPages } from '../../booklet/index.ts';
import { buildModel } from '../../model/index.ts';
import type { Keep } from '../../keep/index.ts';
import type { Item } from '../../read/index.ts';
import { openCrew, type Crew } from '../crew/index.ts';
import { checkedDraft, drawnSets, newPlanner, type Planner } from '../drafts.ts';
import { editionsAsked, type Wanted } from '../editions-asked.ts';
import { writeTold } from '../files.ts';
import { keepAsked, type KeepOptions } from '../keeping.ts';
import { newProgress, type Progress } from '../progress.ts';
import { chosen, itemsNamed, sizesOf } from '../project.ts';
import type { Variant } from '../record.ts';
import { sizeToPublish } from '../size-batches.ts';
import type { BuildRecord } from './build-record.ts';
import { changesBetween } from './compare.ts';
import { earlierBuild, earlierRevision, recordOf, type Earlier, type EarlierSize } from './earlier.ts';
import { changesPage, type PicturePair } from './page.ts';
import { reportOf, type SizeChanges } from './report.ts';
import { reprints } from './reprints.ts';
import { stillServing, type Sawn } from './still-serve.ts';

export interface ChangesOptions extends KeepOptions {
  readonly size?: readonly string[];
  readonly since: string;
  /** A revision in git, in place of the folder. */
  readonly from?: string;
  readonly out?: string;
}

interface Compared {
  readonly changes: SizeChanges;
  readonly pairs: readonly PicturePair[];
}

interface Working { readonly crew: Crew; readonly keep: Keep; readonly plan: Planner; readonly told: Progress }

/** Tells what changed of an item since an earlier build or revision, and shows it on a page where one is asked for. Prints nothing. */
export async function changesCommand(name: string, options: ChangesOptions): Promise<void> {
  const keep = keepAsked(options);
  const told = newProgress(process.stderr.isTTY);
  const crew = openCrew();
  const by: Working = { crew, keep, plan: newPlanner(crew, keep), told };
  try {
    const earlier = options.from === undefined ? earlierBuild(options.since, keep) : earlierRevision(options.from, (item, size) => workedThrough(item, size, by));
    const wanted = editionsAsked({ edition: ['pictures', 'words'], paper: ['a4', 'letter'] });
    const compared: Compared[] = [];
    for (const item of itemsNamed(name)) for (const size of chosen(sizesOf(item), options.size, 'size')) compared.push(await comparedSize(item, size, { earlier, wanted, by }));
    told.stop();
    process.stdout.write(`${compared.flatMap(({ changes }) => reportOf(changes)).join('\n')}\n`);
    if (options.out !== undefined) writeTold(options.out, changesPage(compared));
  } finally {
    await crew.close();
    told.stop();
  }
  keep.trim();
}

async function comparedSize(item: Item, size: string, { earlier, wanted, by }: { readonly earlier: Earlier; readonly wanted: Wanted; readonly by: Working }): Promise<Compared> {
  const before = await earlier(item, size);
  if (before === null) return { changes: { item: item.name, size, changes: null, reprints: [], serving: null }, pairs: [] };
  const variant = await workedThrough(item, size, by);
  const after = recordOf(variant);
  const changes = changesBetween(before.record, after);
  const changed = new Set(changes.filter(({ aspect, after: is }) => aspect === 'picture' && is !== null).map(({ name }) => name));
  return {
    changes: { item: item.name, size, changes, reprints: changed.size === 0 ? [] : reprints(pagesOf(variant, wanted), changed), serving: changes.some(({ aspect }) => aspect === 'cut') ? stillServing(sawnOf(before.record), after.cutLengths) : null },
    pairs: pairsOf(before, variant, changed),
  };
}

const sawnOf = ({ cutLengths, cutPlan: { kerf, patterns } }: BuildRecord): Sawn =>
  ({ pieces: cutLengths, kerf, offCuts: patterns.flatMap(({ count, offCut }) => Array.from({ length: count }, () => offCut)) });

/** A size planned and drawn, whatever its checks say. */
async function workedThrough(item: Item, size: string, { crew, keep, plan, told }: Working): Promise<Variant> {
  const draft = checkedDraft(item, size, { despiteFindings: true, out: '', copies: 0 }, told);
  const { model, report, part } = draft;
  const planned = await plan(draft, 0);
  const pictures = await drawnSets(draft, planned, [], { crew, keep, turn: 0, begun: () => undefined, drawn: (ids) => { part.done(ids.at(-1) ?? '', ids.length); } });
  part.end();
  return { item, model, report, ...planned, pictures: pictures.page };
}

/** Of each booklet on full papers the pages of each picture. */
function pagesOf(variant: Variant, { copies, languages }: Wanted): Parameters<typeof reprints>[0] {
  const variants = sizesOf(variant.item).map((each) => buildModel(variant.item, each));
  const size = sizeToPublish(variant, variants, { pictures: { page: variant.pictures, small: [], thumb: [] }, languages });
  return copies.map((copy) => {
    const { lang, html } = copy.of(size, null).document();
    return { edition: copy.edition, paper: copy.laidFor === 'common' ? null : copy.paper, lang: copy.edition === 'words' ? lang : null, pages: picturesOnPages(html) };
  });
}

const pairsOf = ({ picture }: EarlierSize, { pictures }: Variant, changed: ReadonlySet<string>): readonly PicturePair[] =>
  pictures.filter(({ id }) => changed.has(id)).map(({ id, svg }) => ({ id, before: picture(id), after: svg }));
