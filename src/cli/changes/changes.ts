import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { picturesOnPages } from '../../booklet/index.ts';
import type { Picture } from '../../draw/index.ts';
import { keptContent, type Keep } from '../../keep/index.ts';
import { buildModel } from '../../model/index.ts';
import { openCrew, type Crew } from '../crew/index.ts';
import { checkedDraft, drawnSets, newPlanner, type Draft, type Planner } from '../drafts.ts';
import { editionsAsked, type Wanted } from '../editions-asked.ts';
import { writeTold } from '../files.ts';
import { keepAsked, type KeepOptions } from '../keeping.ts';
import { newProgress } from '../progress.ts';
import { chosen, itemsNamed, sizesOf } from '../project.ts';
import { buildFile, type Variant } from '../record.ts';
import { sizeToPublish } from '../size-batches.ts';
import { asBuildRecord, earlierRecord, type BuildRecord } from './build-record.ts';
import { changesBetween } from './compare.ts';
import { changesPage, type PicturePair } from './page.ts';
import { reportOf, type SizeChanges } from './report.ts';

export interface ChangesOptions extends KeepOptions {
  readonly size?: readonly string[];
  readonly since: string;
  readonly out?: string;
}

interface Compared {
  readonly changes: SizeChanges;
  readonly pairs: readonly PicturePair[];
}

/** Tells what changed of an item since an earlier build, and shows it on a page where one is asked for. Prints nothing. */
export async function changesCommand(name: string, options: ChangesOptions): Promise<void> {
  const keep = keepAsked(options);
  const told = newProgress(process.stderr.isTTY);
  const crew = openCrew();
  try {
    const compared: Compared[] = [];
    for (const item of itemsNamed(name)) {
      if (!existsSync(join(options.since, item.name))) throw new Error(`${join(options.since, item.name)}: no such folder; would be right: --since with the folder of an earlier build, as make wrote it`);
      const drafts = chosen(sizesOf(item), options.size, 'size').map((size) => checkedDraft(item, size, { despiteFindings: true, out: options.since, copies: 0 }, told));
      const plan = newPlanner(crew, keep);
      const wanted = editionsAsked({ lang: ['en'], edition: ['pictures'], paper: ['a4'] });
      for (const [turn, draft] of drafts.entries()) compared.push(await comparedSize(draft, { crew, keep, plan, turn, wanted }));
    }
    told.stop();
    process.stdout.write(`${compared.flatMap(({ changes }) => reportOf(changes)).join('\n')}\n`);
    if (options.out !== undefined) writeTold(options.out, changesPage(compared));
  } finally {
    await crew.close();
    told.stop();
  }
  keep.trim();
}

interface Comparing { readonly crew: Crew; readonly keep: Keep; readonly plan: Planner; readonly turn: number; readonly wanted: Wanted }

async function comparedSize(draft: Draft, { crew, keep, plan, turn, wanted }: Comparing): Promise<Compared> {
  const { item, model, report, folder, part } = draft;
  const before = earlierRecord(join(folder, 'build.json'));
  if (before === null) {
    part.end();
    return { changes: { item: item.name, size: model.size, changes: null, pages: [], pageCount: 0 }, pairs: [] };
  }
  const planned = await plan(draft, turn);
  const pictures = await drawnSets(draft, planned, [], { crew, keep, turn, begun: () => undefined, drawn: (ids) => { part.done(ids.at(-1) ?? '', ids.length); } });
  part.end();
  const variant: Variant = { item, model, report, ...planned, pictures: pictures.page };
  const after = asBuildRecord(JSON.parse(buildFile(variant)), 'the build');
  const changes = changesBetween(before, after);
  const changed = new Set(changes.filter(({ aspect, after: is }) => aspect === 'picture' && is !== null).map(({ name }) => name));
  const pages = picturesOnPages(htmlOf(variant, wanted));
  return {
    changes: { item: item.name, size: model.size, changes, pages: [...new Set([...changed].flatMap((id) => pages.get(id) ?? []))], pageCount: Math.max(0, ...[...pages.values()].flat()) },
    pairs: pairsOf(before, pictures.page, changed, keep),
  };
}

/** The booklet of pictures on A4. */
function htmlOf(variant: Variant, { copies, languages }: Wanted): string {
  const variants = sizesOf(variant.item).map((each) => buildModel(variant.item, each));
  const size = sizeToPublish(variant, variants, { pictures: { page: variant.pictures, small: [], thumb: [] }, languages });
  return copies.map((copy) => copy.of(size, null).document().html).join('');
}

function pairsOf({ pictures: earlier }: BuildRecord, pictures: readonly Picture[], changed: ReadonlySet<string>, keep: Keep): readonly PicturePair[] {
  return pictures.filter(({ id }) => changed.has(id)).map(({ id, svg }) => {
    const was = earlier.find((picture) => picture.id === id);
    const kept = was === undefined ? null : keptContent(keep, was.sha256);
    return { id, before: kept === null ? null : Buffer.from(kept).toString('utf8'), after: svg };
  });
}
