import { PUBLICATIONS, type Words } from '../booklet/index.ts';
import { buildModel } from '../model/index.ts';
import type { Keep } from '../keep/index.ts';
import type { Item } from '../read/index.ts';
import { languagesAsked } from './asked.ts';
import { openCrew, type Crew } from './crew/index.ts';
import { checkedDraft, drawnSets, newPlanner } from './drafts.ts';
import { makeFolder } from './files.ts';
import { keepAsked, type KeepOptions } from './keeping.ts';
import { newProgress, type Progress } from './progress.ts';
import { chosen, itemsNamed, sizesOf } from './project.ts';
import { publish, type Batch } from './publish.ts';
import { contentMark } from './record.ts';
import { guideCopy } from './size-batches.ts';

export interface GuideOptions extends KeepOptions {
  readonly size?: readonly string[];
  readonly lang?: readonly string[];
  readonly out: string;
  readonly despiteFindings?: boolean;
}

/** Writes the phone guide of each size asked for. What can be refused is refused before the first file is written. */
export async function guideCommand(name: string, options: GuideOptions): Promise<void> {
  const languages = languagesAsked(options.lang);
  const by = { crew: openCrew(), keep: keepAsked(options), told: newProgress(process.stderr.isTTY) };
  try {
    for (const item of itemsNamed(name)) await publish([PUBLICATIONS['phone-guide']], await guides(item, languages, options, by), by.told);
  } finally {
    await by.crew.close();
    by.told.stop();
  }
  by.keep.trim();
}

interface Guiding { readonly crew: Crew; readonly keep: Keep; readonly told: Progress }

/** The guides of an item, each drawn when it is its turn; all are planned before. */
async function guides(item: Item, languages: readonly Words[], options: GuideOptions, { crew, keep, told }: Guiding): Promise<AsyncIterable<Batch>> {
  const drafts = chosen(sizesOf(item), options.size, 'size').map((size) => checkedDraft(item, size, { ...options, copies: 0 }, told));
  const plan = newPlanner(crew, keep);
  const planned = await Promise.all(drafts.map(async (draft, turn) => ({ draft, turn, planned: await plan.of(draft, turn) })));
  const variants = sizesOf(item).map((size) => buildModel(item, size));
  return (async function* () {
    for (const { draft, turn, planned: own } of planned) {
      const { folder, model, report, part } = draft;
      const { page: pictures } = await drawnSets(draft, own, [], { crew, keep, turn, begun: () => undefined, drawn: (ids) => { part.done(ids.at(-1) ?? '', ids.length); } });
      makeFolder(folder);
      const mark = contentMark({ item, model, report, ...own, pictures });
      const guided = { item: { name: item.name, revision: item.revision }, model, report, ...own, pictures, contentMark: mark, variants, langs: languages.map(({ lang }) => lang) };
      yield { folder, copies: [guideCopy(guided, { crew, keep, turn })], end: part.end };
    }
  })();
}
