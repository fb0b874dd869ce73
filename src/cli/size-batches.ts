import type { SizeToPublish, WrittenCopy } from '../booklet/index.ts';
import { PUBLICATIONS } from '../booklet/index.ts';
import type { Picture } from '../draw/index.ts';
import { keepContent, keptLater, nothingKept, type Keep } from '../keep/index.ts';
import { buildModel } from '../model/index.ts';
import type { Crew, Guided } from './crew/index.ts';
import { COST } from './costs.ts';
import { drawnSets, type Draft, type Planner } from './drafts.ts';
import type { Wanted } from './editions-asked.ts';
import { localeFiles, makeFolder } from './files.ts';
import { sizesOf } from './project.ts';
import { replacedBy } from './prints.ts';
import type { Batch } from './publish.ts';
import { buildFile, contentMark, type Variant } from './record.ts';

/** Makes what is printed of a size, when all sizes of its item are planned: an order of work that is refused is told before the item's first file is written. */
export type MakeSize = (draft: Draft, all: readonly Draft[]) => Promise<SizeBatch>;

/** The copies of a size, and the mark that they bear. */
export interface SizeBatch extends Batch {
  readonly mark: string;
}

export interface SizeWorks {
  readonly crew: Crew;
  readonly keep: Keep;
  readonly plan: Planner;
  /** Called when something is drawn that will have to be printed, with the first pictures of its format that there are. */
  readonly soon: (first: readonly Picture[]) => void;
}

/** Sizes come first that were asked for first. */
export function sizeMaker({ copies, binding, languages }: Wanted, { crew, keep, plan, soon }: SizeWorks): MakeSize {
  let turns = 0;
  return async (draft, all) => {
    const { item, model, report, folder, part } = draft;
    const turn = turns++;
    const own = plan.of(draft, turn);
    const [planned] = await Promise.all([own, ...all.map((other) => plan.of(other, turn))]);
    makeFolder(folder);
    part.expect(COST.plan + planned.plan.steps.length + 26 + COST.guide + copies.length * COST.copy);
    const pictures = await drawnSets(draft, planned, copies.map(({ format }) => format), {
      crew, keep, turn, begun: soon, drawn: (ids) => { part.done(ids.at(-1) ?? '', ids.length); },
    });
    const variant = { item, model, report, ...planned, pictures: pictures.page };
    const variants = sizesOf(item).map((each) => buildModel(item, each));
    const size = sizeToPublish(variant, variants, { pictures, languages }, keep);
    const guide = guideCopy({ item: { name: item.name, revision: item.revision }, model, report, ...planned, pictures: pictures.page, contentMark: size.contentMark, variants, langs: languages.map(({ lang }) => lang) }, { crew, keep, turn });
    return {
      folder, mark: size.contentMark, copies: [recordCopy(variant, keep), guide, ...copies.map((copy) => copy.of(size, binding))],
      done: (file) => { part.done(file, file === guide.file ? COST.guide : COST.copy); },
      end: part.end,
    };
  };
}

/** The phone guide as a copy to publish. It shows nothing of the item but what its model, plan and findings say, and its revision. */
export function guideCopy(guided: Guided, { crew, keep, turn }: { readonly crew: Crew; readonly keep: Keep; readonly turn: number }): WrittenCopy {
  const { item, model, langs } = guided;
  return {
    made: 'written',
    file: `${item.name}-${model.size}${PUBLICATIONS['phone-guide'].ending}`,
    text: () => keptLater(keep, keep.key('guide', guided, localeFiles('locales'), langs), () => crew.run('guide', guided, turn)),
    isTold: true,
  };
}

/** A variant as the editions take it; what it replaces is as far as it is kept. */
export function sizeToPublish(variant: Variant, variants: SizeToPublish['variants'], drawn: { readonly pictures: SizeToPublish['pictures']; readonly languages: SizeToPublish['languages'] }, keep: Keep = nothingKept): SizeToPublish {
  const { item, model, plan, report } = variant;
  const mark = contentMark(variant);
  return { model, plan, report, variants, revision: item.revision, contentMark: mark, replaces: replacedBy(keep, item.name, model.size, mark), ...drawn };
}

/** The pictures are kept by their content, so that a later change can be shown beside them. */
const recordCopy = (variant: Variant, keep: Keep): WrittenCopy => ({
  made: 'written', file: 'build.json', isTold: false,
  text: () => {
    for (const { svg } of variant.pictures) keepContent(keep, svg);
    return buildFile(variant);
  },
});
