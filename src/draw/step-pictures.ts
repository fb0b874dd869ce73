import type { TubeCutPlan } from '../cut/index.ts';
import type { Model, Solids } from '../model/index.ts';
import type { Action, Plan, Step } from '../plan/index.ts';
import { closeUpScene, sleeveEnds, stepScene } from '../scene/index.ts';
import { cutBarsPaper, cutBarsPicture, markingPicture, platePicture, sectionSeries, spacingPicture, type Marking } from './flat/index.ts';
import { hardwareOf } from './hardware.ts';
import { composePicture, type LineDrawer, type Paper } from './picture/index.ts';
import type { Picture } from './types.ts';

export interface StepGivens {
  readonly model: Model;
  readonly plan: Plan;
  readonly cuts: TubeCutPlan;
  readonly solids: Solids;
  readonly draw: LineDrawer;
}

/** Width of the page's main column, mm. The heights let two steps stand on an A4 or a Letter page. */
const COLUMN = 165;
const FRAME: Paper = { width: COLUMN, height: 96 };
const DECK: Paper = { width: COLUMN, height: 107 };
const WHOLE: Paper = { width: COLUMN, height: 98 };
const BENCH: Paper = { width: COLUMN, height: 105 };
const CLOSE_UP: Paper = { width: 110, height: 84 };

const BENCH_STAGE: Partial<Record<Action, Exclude<Marking['stage'], 'blank'>>> = {
  'mark-inside': 'inside',
  'mark-creases': 'creases',
  'mark-notches': 'notches',
  'punch-holes': 'holes',
  'cut-notches': 'notches-cut',
  crease: 'crease',
  'half-cut': 'half-cut',
};

/** The picture of a step, and the further ones it needs: sections of the first wrap, close-ups of hidden fasteners. */
export function stepPictures(givens: StepGivens, step: Step): readonly Picture[] {
  const main = { ...(benchPicture(givens, step) ?? scenePicture(givens, step)), id: `step:${step.number}` };
  const more = furtherPictures(givens, step).map((picture, index) => ({ ...picture, id: `${main.id}:${'abc'[index] ?? ''}` }));
  return [main, ...more];
}

function benchPicture({ model, cuts }: StepGivens, step: Step): Picture | null {
  const { kit, pattern } = model;
  if (step.action === 'cut-tubes') return cutBars(cuts);
  if (step.action === 'cut-blank') return markingPicture(pattern, { stage: 'blank', stock: [kit.panel.length, kit.panel.width] }, BENCH);
  if (step.action === 'cut-panel') return plateSheet(model, Math.max(0, 'abcdefgh'.indexOf(step.key.split(':')[1] ?? 'a')));
  if (step.action === 'mark-posts') return postKinds(model).slice(0, 1).map((post) => postMarks(model, post))[0] ?? null;
  const stage = BENCH_STAGE[step.action];
  return stage === undefined ? null : markingPicture(pattern, { stage }, BENCH);
}

/** The stock tubes to saw. The saw runs on the mark: its kerf comes out of the joints' end play, so it is not dimensioned. */
export const cutBars = ({ stock, patterns }: TubeCutPlan): Picture =>
  cutBarsPicture({ stock, kerf: 0, patterns }, { width: COLUMN, height: cutBarsPaper({ stock, kerf: 0, patterns }).height });

/** A flat panel to cut from the stock panel, by its place in the model's list. */
export function plateSheet({ kit, plates }: Model, index: number): Picture {
  const plate = plates[index];
  if (plate === undefined) throw new RangeError(`no flat panel ${index + 1}; there are ${plates.length}`);
  return platePicture(plate, [kit.panel.length, kit.panel.width], plate.partIds.length, BENCH);
}

/** One post of each kind: those of one length with the same marks are marked alike. */
function postKinds(model: Model): readonly { readonly length: number; readonly marks: readonly number[]; readonly count: number }[] {
  const posts = model.parts.flatMap((part) =>
    (part.kind === 'post' && part.shape.form === 'tube' ? [{ length: part.shape.length, marks: sleeveEnds(model, part.id) }] : []));
  const kinds = [...new Set(posts.map((post) => JSON.stringify(post)))];
  return kinds.map((kind) => ({ ...JSON.parse(kind) as (typeof posts)[number], count: posts.filter((post) => JSON.stringify(post) === kind).length }));
}

/** Marks for the lower end of each sleeve, counted from the post's foot. */
function postMarks({ kit }: Model, post: ReturnType<typeof postKinds>[number]): Picture {
  return spacingPicture({
    length: post.length,
    diameter: kit.tube.outsideDiameter,
    marks: post.marks,
    edge: 'lower',
    sleeve: { length: kit.joint.sleeveAbove + kit.joint.sleeveBelow, diameter: kit.joint.sleeveDiameter },
    count: post.count,
  }, { width: COLUMN, height: 80 });
}

function scenePicture({ model, solids, draw }: StepGivens, step: Step): Picture {
  const scene = stepScene(model, step, solids);
  if (scene === null) throw new RangeError(`step ${step.number} (${step.key}) has neither a scene nor a flat drawing`);
  return composePicture(scene, paperFor(step), draw);
}

function paperFor(step: Step): Paper {
  if (step.action === 'push-tubes' || step.action === 'close-frame') return FRAME;
  return step.run === null ? WHOLE : DECK;
}

function furtherPictures({ model, plan, solids, draw }: StepGivens, step: Step): readonly Picture[] {
  const firstWrap = plan.steps.find((other) => other.action === 'wrap-side');
  if (step === firstWrap && step.side !== null) return [sectionSeries(model.pattern, step.side, hardwareOf(model), { width: COLUMN, height: 120 }, 'folded')];
  if (step.action === 'mark-posts') return postKinds(model).slice(1).map((post) => postMarks(model, post));
  const closeUp = closeUpScene(model, step, solids);
  return closeUp === null ? [] : [composePicture(closeUp, CLOSE_UP, draw)];
}
