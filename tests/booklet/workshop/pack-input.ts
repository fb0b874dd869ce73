import * as drawn from '../../../src/draw/pictograms/index.ts';
import { buildModel } from '../../../src/model/index.ts';
import { preparingPairs, timetableOf, toolsAtOnce, type Step } from '../../../src/plan/index.ts';
import { filesOnDisk, readItem } from '../../../src/read/index.ts';
import { glyphsFrom } from '../../../src/booklet/pages/index.ts';
import { readNotes, type PackInput, type PackItem } from '../../../src/booklet/workshop/index.ts';
import { loadWords, type LocaleFiles } from '../../../src/booklet/words/index.ts';
import type { Paper } from '../../../src/booklet/print/index.ts';
import { localesOnDisk, rackPlan, standInPlace } from '../pages/rack-booklet.ts';

const root = new URL('../../../', import.meta.url).pathname;
const files = filesOnDisk(root);

export interface WantedPack {
  readonly lang?: string;
  readonly paper?: Paper;
  readonly learners?: number;
  /** Items with their counts; the rack's steps stand in for those of all. */
  readonly order?: readonly (readonly ['rack' | 'chair' | 'stool', number])[];
  /** Notes instead of those in the item's folder; null for none. */
  readonly notes?: PackItem['notes'];
  readonly steps?: readonly Step[];
  readonly locales?: LocaleFiles;
  readonly onAsk?: (key: string) => void;
}

/** All headings that the stored rack's notes may have. */
export const rackKeys: ReadonlySet<string> = new Set(rackPlan.steps.flatMap(({ key, action }) => [key, action]));

/** What a pack's pages need, made quickly: real models and notes, the rack's stored steps, pictures as stand-ins. */
export function packInput({ lang = 'en', paper = 'a4', learners = 12, order = [['rack', 6]], notes, steps = rackPlan.steps, locales = localesOnDisk(), onAsk }: WantedPack = {}): PackInput {
  const items = order.map(([name, count]): PackItem => {
    const item = readItem(files, `steps/${name}/item.yaml`);
    const model = buildModel(item, item.sizes[1]?.name ?? '');
    return { model, count, plan: { steps, batches: [], reasons: [] }, revision: item.revision, notes: notes === undefined ? notesOnDisk(lang) : notes };
  });
  const works = items.map(({ model, plan, count }) => ({ item: model.item, size: model.size, count, steps: plan.steps }));
  const timetable = timetableOf(works, learners, 510);
  return {
    items, timetable, paper,
    tools: toolsAtOnce(works, timetable),
    preparingPairs: preparingPairs(timetable.prepared),
    stock: [{
      kit: 'stall-kit',
      rows: [{ kind: 'tube', count: 60, size: [2000], pile: null }, { kind: 'panel-stock', count: 24, size: [1500, 1000], pile: { from: 'stock', name: 'wall' } }, { kind: 'joint', count: 96, size: [], pile: { from: 'kit' } }],
      thrift: [{ kind: 'tube', leftOver: 0.003, aboveLeast: 0 }, { kind: 'panel-stock', leftOver: 0.261, aboveLeast: 0.028 }],
    }],
    contentMark: '3f9c1a7e',
    words: loadWords(locales, lang, onAsk),
    glyphs: glyphsFrom(drawn),
    pictures: items.map((_, place) => ({ of: { what: 'ordered', place }, width: 96, height: 100 })),
    placePicture: standInPlace,
  };
}

/** The rack's notes in a language, in English where there are none. */
function notesOnDisk(lang: string): PackItem['notes'] {
  const found = [lang, 'en'].flatMap((each) => {
    const text = files.text(`steps/rack/notes/${each}.md`);
    return text === null ? [] : [{ lang: each, notes: readNotes(`steps/rack/notes/${each}.md`, text, rackKeys) }];
  });
  return found[0] ?? null;
}
