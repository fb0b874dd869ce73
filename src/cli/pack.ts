import { join } from 'node:path';
import { COPIES, languagesIn, loadWords, PUBLICATIONS, shortMark, type PackContent, type PackItem } from '../booklet/index.ts';
import type { Keep } from '../keep/index.ts';
import { loadSolids } from '../model/index.ts';
import { preparingPairs, timetableOf, toolsAtOnce, type OrderedWork } from '../plan/index.ts';
import { papersAsked } from './asked.ts';
import { COST } from './costs.ts';
import { newHand } from './crew/hand.ts';
import { keptPlan } from './drafts.ts';
import { localeFiles, makeFolder } from './files.ts';
import { keepAsked, type KeepOptions } from './keeping.ts';
import { stockFor } from './order-stock.ts';
import { readOrder, type OrderLine } from './order.ts';
import { notesFor } from './pack-notes.ts';
import { readLearners, readStart } from './pack-options.ts';
import { newProgress } from './progress.ts';
import { chosen } from './project.ts';
import { publish } from './publish.ts';
import { soundSize } from './sound.ts';
import { cutPlanner, type CutPlanner } from './supply.ts';

export interface PackOptions extends KeepOptions {
  readonly learners: string;
  readonly lang: string;
  readonly paper?: readonly string[];
  readonly start: string;
  /** Stock file of what was counted; whole kits unless given. */
  readonly stock?: string;
  readonly out: string;
}

/** A workshop longer than this is a mistake in the order. */
const MOST_DAYS = 40;

/** Prints the workshop pack of an order, a file for each paper. What can be refused is refused before anything is written. */
export async function packCommand(words: readonly string[], options: PackOptions): Promise<void> {
  const order = readOrder(words);
  const [learners, start] = [readLearners(options.learners), readStart(options.start)];
  const papers = papersAsked(PUBLICATIONS['workshop-pack'], options.paper);
  const locales = localeFiles('locales');
  const [lang = ''] = chosen(languagesIn(locales), [options.lang], 'lang');
  const language = loadWords(locales, lang);
  const keep = keepAsked(options);
  const planner = await cutPlanner(options.stock);
  const content = packContent(await workedThrough(order, lang, keep), learners, start, planner);
  const folder = join(options.out, 'packs');
  makeFolder(folder);
  const copies = COPIES['workshop-pack']({ content, solids: await loadSolids() }, papers, language);
  const progress = newProgress(process.stderr.isTTY);
  const part = progress.part('pack', (copies.length + 1) * COST.copy);
  part.done('its pictures', COST.copy);
  try {
    await publish([PUBLICATIONS['workshop-pack']], [{ folder, copies, done: (file) => { part.done(file, COST.copy); }, end: part.end }], progress, { keep });
  } finally {
    progress.stop();
  }
  keep.trim();
}

/** Each line of the order with its model, plan and notes. Throws when a check fails or a note names no step. */
async function workedThrough(order: readonly OrderLine[], lang: string, keep: Keep): Promise<readonly PackItem[]> {
  const drafts = order.map(({ item, size, count }) => ({ item, ...soundSize(item, size), count, revision: item.revision }));
  const items: PackItem[] = [];
  // The solid kernel keeps every shape it built: one for each line's notes, let go after it.
  for (const { item, report, ...draft } of drafts) {
    const { plan } = await keptPlan(keep, { item, model: draft.model, report }, (given) => newHand()('plan', given));
    items.push({ ...draft, plan, notes: notesFor(item, plan, lang, await loadSolids()) });
  }
  return items;
}

/** What the pack tells: who does what when, with which tools, from which stock. */
function packContent(items: readonly PackItem[], learners: number, start: number, plan: CutPlanner): PackContent {
  const works = items.map(({ model, plan, count }): OrderedWork => ({ item: model.item, size: model.size, count, steps: plan.steps }));
  const timetable = timetableOf(works, learners, start);
  if (timetable.days.length > MOST_DAYS) {
    throw new Error(`the order takes ${timetable.days.length} days with --learners ${learners}; would be right: fewer pieces or more learners, for at most ${MOST_DAYS} days`);
  }
  const stock = stockFor(items, plan);
  const notes = items.map((item) => item.notes && [item.notes.lang, item.notes.notes.general, [...item.notes.notes.bySteps]]);
  return {
    items, timetable, stock,
    tools: toolsAtOnce(works, timetable),
    preparingPairs: preparingPairs(timetable.prepared),
    contentMark: shortMark(JSON.stringify({ works, timetable, stock, notes })),
  };
}
