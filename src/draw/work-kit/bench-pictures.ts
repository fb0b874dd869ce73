import type { TubeCutPlan } from '../../cut/index.ts';
import type { Model } from '../../model/index.ts';
import { cutBarsPaper, cutBarsPicture, platePicture, type Marking } from '../flat/index.ts';
import type { Step } from '../../plan/index.ts';
import { firstFolded, markedPanel, punching } from '../folded-panels.ts';
import { FORMATS, type Papers } from '../formats.ts';
import type { Paper } from '../picture/index.ts';
import type { DrawnPicture } from '../types.ts';
import type { DrawnFlat } from './work-picture.ts';

/** The panel at a stage of marking and cutting. */
export const markedAt = (stage: Exclude<Marking['stage'], 'blank'>): DrawnFlat =>
  ({ model, papers }, step) => [markedPanel(model, patternOf(model, step), { stage }, papers.bench)];

/** Where the panel's holes are, and how each kind is punched. */
export const punchedPanel: DrawnFlat = (givens, step) =>
  [...markedAt('holes')(givens, step), ...punching(givens.model, patternOf(givens.model, step), givens.papers.bench.width)];

/** The blank of the panel on its stock panel. */
export const blankOnStock: DrawnFlat = ({ model, papers }, step) =>
  [markedPanel(model, patternOf(model, step), { stage: 'blank', stock: [model.kit.panel.length, model.kit.panel.width] }, papers.bench)];

/** The pattern that a step works on: the first where it does not tell. */
const patternOf = (model: Model, { detail }: Step): number => (detail.on === 'pattern' ? detail.index : firstFolded(model));

/** The stock tubes to saw, in as many pictures as they need; the last one shows the saw. */
export function cutBarsInPieces(cuts: TubeCutPlan, { bench, bars }: Papers): readonly DrawnPicture[] {
  const count = Math.max(1, Math.ceil(cuts.patterns.length / bars));
  const each = Math.ceil(cuts.patterns.length / count);
  return Array.from({ length: count }, (_, index) => barsDrawn(cuts, cuts.patterns.slice(index * each, (index + 1) * each), bench.width, index === count - 1));
}

/** The stock tubes to saw. */
export const cutBars = (cuts: TubeCutPlan, width = FORMATS.page.bench.width): DrawnPicture => barsDrawn(cuts, cuts.patterns, width, true);

/** The marks are as far apart as the pieces are long: the blade runs on their middle, and what it takes comes out of the joints' end play. */
function barsDrawn({ stock, kerf, patterns: all }: TubeCutPlan, patterns: TubeCutPlan['patterns'], width: number, isSawShown: boolean): DrawnPicture {
  const pieces = all.flatMap((pattern) => pattern.pieces);
  const different = pieces.filter(({ letter }, index) => pieces.findIndex((other) => other.letter === letter) === index).sort((a, b) => b.length - a.length);
  const drawn = { stock, kerf: 0, patterns, ...(isSawShown ? { saw: { kerf, pieces: different } } : {}) };
  return cutBarsPicture(drawn, { width, height: cutBarsPaper(drawn).height });
}

/** A flat panel to cut from the stock panel, by its place in the model's list, and how many there are, where its step does not tell. */
export function plateSheet({ kit, plates }: Model, index: number, paper: Paper = FORMATS.page.bench, isCounted = true): DrawnPicture {
  const plate = plates[index];
  if (plate === undefined) throw new RangeError(`no flat panel ${index + 1}; there are ${plates.length}`);
  return platePicture(plate, [kit.panel.length, kit.panel.width], isCounted ? plate.partIds.length : null, paper);
}
