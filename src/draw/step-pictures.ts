import type { TubeCutPlan } from '../cut/index.ts';
import type { Model, Solids } from '../model/index.ts';
import type { Action, Plan, Step } from '../plan/index.ts';
import { closeUpScene, stepScene, type Scene } from '../scene/index.ts';
import { cutBarsPaper, cutBarsPicture, markingPicture, platePicture, sectionSeries, spacingPicture, type Marking } from './flat/index.ts';
import { FORMATS, THUMB, type PageFormat, type Papers } from './formats.ts';
import { hardwareOf } from './hardware.ts';
import { composePicture, type LineDrawer, type Paper } from './picture/index.ts';
import { pictureAs } from './picture-of.ts';
import { markedAlike, postKinds, type PostKind } from './post-kinds.ts';
import type { DrawnPicture, Picture } from './types.ts';

export interface StepGivens {
  readonly model: Model;
  readonly plan: Plan;
  readonly cuts: TubeCutPlan;
  readonly solids: Solids;
  readonly draw: LineDrawer;
  /** For which pages; `page` unless given. */
  readonly format?: PageFormat;
}

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
  const main = benchPicture(givens, step) ?? scenePicture(givens, step);
  return [main, ...furtherPictures(givens, step)].map((drawn, piece) => pictureAs({ what: 'step', step: step.number, piece }, drawn));
}

const papersOf = ({ format = 'page' }: StepGivens): Papers => FORMATS[format];

function benchPicture(givens: StepGivens, step: Step): DrawnPicture | null {
  const { model, cuts } = givens;
  const { kit, pattern } = model;
  const { bench } = papersOf(givens);
  if (step.action === 'cut-tubes') return cutBarsInPieces(cuts, papersOf(givens))[0] ?? null;
  if (step.action === 'cut-blank') return markingPicture(pattern, { stage: 'blank', stock: [kit.panel.length, kit.panel.width] }, bench);
  if (step.detail.on === 'plates') return plateSheet(model, step.detail.index, bench, false);
  if (step.action === 'mark-posts') return postKinds(model, markedAlike).slice(0, 1).map((post) => postMarks(model, post, papersOf(givens).posts))[0] ?? null;
  const stage = BENCH_STAGE[step.action];
  return stage === undefined ? null : markingPicture(pattern, { stage }, bench);
}

/** The stock tubes to saw, in as many pictures as they need. */
export function cutBarsInPieces(cuts: TubeCutPlan, { bench, bars }: Papers): readonly DrawnPicture[] {
  const count = Math.max(1, Math.ceil(cuts.patterns.length / bars));
  const each = Math.ceil(cuts.patterns.length / count);
  return Array.from({ length: count }, (_, index) => cutBars({ ...cuts, patterns: cuts.patterns.slice(index * each, (index + 1) * each) }, bench.width));
}

/** The stock tubes to saw. The saw runs on the mark: its kerf comes out of the joints' end play, so it is not dimensioned. */
export const cutBars = ({ stock, patterns }: TubeCutPlan, width = FORMATS.page.bench.width): DrawnPicture =>
  cutBarsPicture({ stock, kerf: 0, patterns }, { width, height: cutBarsPaper({ stock, kerf: 0, patterns }).height });

/** A flat panel to cut from the stock panel, by its place in the model's list, and how many there are, where its step does not tell. */
export function plateSheet({ kit, plates }: Model, index: number, paper: Paper = FORMATS.page.bench, isCounted = true): DrawnPicture {
  const plate = plates[index];
  if (plate === undefined) throw new RangeError(`no flat panel ${index + 1}; there are ${plates.length}`);
  return platePicture(plate, [kit.panel.length, kit.panel.width], isCounted ? plate.partIds.length : null, paper);
}

/** Marks for the lower end of each sleeve, counted from the post's foot. */
function postMarks({ kit }: Model, post: PostKind, paper: Paper): DrawnPicture {
  return spacingPicture({
    length: post.length,
    diameter: kit.tube.outsideDiameter,
    marks: post.marks,
    edge: 'lower',
    sleeve: { length: kit.joint.sleeveAbove + kit.joint.sleeveBelow, diameter: kit.joint.sleeveDiameter },
    count: post.count,
  }, paper);
}

function scenePicture(givens: StepGivens, step: Step): DrawnPicture {
  const { model, solids, draw } = givens;
  const scene = stepScene(model, step, solids);
  if (scene === null) throw new RangeError(`step ${step.number} (${step.key}) has neither a scene nor a flat drawing`);
  const { frame, deck, whole, over } = papersOf(givens);
  if (step.action === 'push-tubes' || step.action === 'close-frame') return composePicture(scene, frame, draw);
  if (step.run !== null) return composePicture(scene, deck, draw);
  return composePicture(scene, closeUpScene(model, step, solids) === null ? whole : over, draw);
}

function furtherPictures(givens: StepGivens, step: Step): readonly DrawnPicture[] {
  const { model, plan, solids, draw } = givens;
  const { wrap, posts, closeUp: paper } = papersOf(givens);
  const firstWrap = plan.steps.find((other) => other.action === 'wrap-side');
  if (step === firstWrap && step.side !== null) return [sectionSeries(model.pattern, step.side, hardwareOf(model), wrap, 'folded')];
  if (step.action === 'cut-tubes') return cutBarsInPieces(givens.cuts, papersOf(givens)).slice(1);
  if (step.action === 'mark-posts') return postKinds(model, markedAlike).slice(1).map((post) => postMarks(model, post, posts));
  const closeUp = closeUpScene(model, step, solids);
  return closeUp === null ? [] : [composePicture(closeUp, paper, draw)];
}

/** A step's thumbnail: its scene with the arrows alone; null for work on the bench, which has no scene. */
export function stepThumb({ model, solids, draw }: Omit<StepGivens, 'format'>, step: Step): Picture | null {
  const scene = stepScene(model, step, solids);
  return scene === null ? null : pictureAs({ what: 'step-thumb', step: step.number }, composePicture(arrowsOnly(scene), THUMB, draw));
}

/** A scene without what would be too small to read on a thumbnail. */
export const arrowsOnly = (scene: Scene): Scene => ({ ...scene, marks: scene.marks.filter(({ mark }) => mark === 'arrow') });
