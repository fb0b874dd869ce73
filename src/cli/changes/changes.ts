import { COPIES, picturesOnPages, PUBLICATIONS, type Change, type ChangedPicture, type PrintedCopy, type SizeChange } from '../../booklet/index.ts';
import { buildModel } from '../../model/index.ts';
import type { Keep } from '../../keep/index.ts';
import type { Item } from '../../read/index.ts';
import { languagesAsked, papersAsked } from '../asked.ts';
import { openCrew, type Crew } from '../crew/index.ts';
import { checkedDraft, drawnSets, newPlanner, type Planner } from '../drafts.ts';
import { editionsAsked, type Wanted } from '../editions-asked.ts';
import { makeFolder, writeTold } from '../files.ts';
import { keepAsked, type KeepOptions } from '../keeping.ts';
import { newProgress, type Progress } from '../progress.ts';
import { chosen, itemsNamed, sizesOf } from '../project.ts';
import { publish } from '../publish.ts';
import { contentMark, type Variant } from '../record.ts';
import { sizeToPublish } from '../size-batches.ts';
import type { BuildRecord } from './build-record.ts';
import { changesBetween } from './compare.ts';
import { earlierBuild, earlierRevision, recordOf, type Earlier, type EarlierSize } from './earlier.ts';
import { changesPage } from './page.ts';
import { svgSize } from './svg-size.ts';
import { reportOf, type SizeChanges } from './report.ts';
import { reprints } from './reprints.ts';
import { stillServing, type Sawn } from './still-serve.ts';

export interface ChangesOptions extends KeepOptions {
  readonly size?: readonly string[];
  readonly since: string;
  /** A revision in git, in place of the folder. */
  readonly from?: string;
  readonly out?: string;
  /** Folder for what is printed of it. */
  readonly print?: string;
  readonly lang: readonly string[];
  readonly paper?: readonly string[];
}

interface Compared {
  readonly changes: SizeChanges;
  /** What is printed of it; null where there is nothing to tell. */
  readonly printed: SizeChange | null;
}

interface Working { readonly crew: Crew; readonly keep: Keep; readonly plan: Planner; readonly told: Progress }

/** Tells what changed of an item since an earlier build or revision; shows it on a page and prints it where these are asked for. Makes no booklet. */
export async function changesCommand(name: string, options: ChangesOptions): Promise<void> {
  const [languages, papers] = [languagesAsked(options.lang), papersAsked(PUBLICATIONS['change-sheets'], options.paper)];
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
    if (options.out !== undefined) writeTold(options.out, changesPage(compared.map(({ changes, printed }) => ({ changes, pairs: printed?.pictures ?? [] }))));
    if (options.print !== undefined) await print(options.print, compared.flatMap(({ printed }) => (printed === null ? [] : COPIES['change-sheets'](printed, papers, languages))), { keep, told });
  } finally {
    await crew.close();
    told.stop();
  }
  keep.trim();
}

async function print(folder: string, copies: readonly PrintedCopy[], { keep, told }: { readonly keep: Keep; readonly told: Progress }): Promise<void> {
  makeFolder(folder);
  if (copies.length > 0) await publish([PUBLICATIONS['change-sheets']], [{ folder, copies }], told, { keep });
}

async function comparedSize(item: Item, size: string, { earlier, wanted, by }: { readonly earlier: Earlier; readonly wanted: Wanted; readonly by: Working }): Promise<Compared> {
  const before = await earlier(item, size);
  const same = { item: item.name, size };
  if (before === null) return { changes: { ...same, changes: null, reprints: [], serving: null }, printed: null };
  const variant = await workedThrough(item, size, by);
  const after = recordOf(variant);
  const changes = changesBetween(before.record, after);
  const pictures = changedPictures(before, variant, changes);
  const changed = new Set(pictures.flatMap(({ after: is }) => is?.id ?? []));
  const told = {
    ...same, changes,
    reprints: changed.size === 0 ? [] : reprints(pagesOf(variant, wanted, by.keep), changed),
    serving: changes.some(({ aspect }) => aspect === 'cut') ? stillServing(sawnOf(before.record), after.cutLengths) : null,
  };
  return { changes: told, printed: changes.length === 0 ? null : { ...told, plan: variant.plan, pictures, contentMark: contentMark(variant), earlierMark: before.record.mark } };
}

const sawnOf = ({ cutLengths, cutPlan: { kerf, patterns } }: BuildRecord): Sawn =>
  ({ pieces: cutLengths, kerf, offCuts: patterns.flatMap(({ count, offCut }) => Array.from({ length: count }, () => offCut)) });

/** A size planned and drawn, whatever its checks say. */
async function workedThrough(item: Item, size: string, { crew, keep, plan, told }: Working): Promise<Variant> {
  const draft = checkedDraft(item, size, { despiteFindings: true, out: '', copies: 0 }, told);
  const { model, report, part } = draft;
  const planned = await plan.of(draft, 0);
  const pictures = await drawnSets(draft, planned, [], { crew, keep, turn: 0, begun: () => undefined, drawn: (ids) => { part.done(ids.at(-1) ?? '', ids.length); } });
  part.end();
  return { item, model, report, ...planned, pictures: pictures.page };
}

/** Of each booklet on full papers the pages of each picture. */
function pagesOf(variant: Variant, { copies, languages }: Wanted, keep: Keep): Parameters<typeof reprints>[0] {
  const variants = sizesOf(variant.item).map((each) => buildModel(variant.item, each));
  const size = sizeToPublish(variant, variants, { pictures: { page: variant.pictures, small: [], thumb: [] }, languages }, keep);
  return copies.map((copy) => {
    const { lang, html } = copy.of(size, null).document();
    return { edition: copy.edition, paper: copy.laidFor === 'common' ? null : copy.paper, lang: copy.edition === 'words' ? lang : null, pages: picturesOnPages(html) };
  });
}

/** Pictures that are another now, each beside what it was; those that are gone are told, not shown. */
function changedPictures({ picture }: EarlierSize, { pictures }: Variant, changes: readonly Change[]): readonly ChangedPicture[] {
  const changed = new Set(changes.filter(({ aspect, after }) => aspect === 'picture' && after !== null).map(({ name }) => name));
  return pictures.filter(({ id }) => changed.has(id)).map(({ of, id, svg, width, height }) => {
    const was = picture(id);
    const size = was === null ? null : svgSize(was);
    return { of, before: was === null || size === null ? null : { id, svg: was, ...size }, after: { id, svg, width, height } };
  });
}
