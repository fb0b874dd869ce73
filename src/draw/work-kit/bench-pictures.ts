import type { TubeCutPlan } from '../../cut/index.ts';
import type { Model } from '../../model/index.ts';
import { cutBarsPaper, cutBarsPicture, platePicture, type Marking } from '../flat/index.ts';
import type { Step } from '../../plan/index.ts';
import { firstFolded, markedPanel } from '../folded-panels.ts';
import { FORMATS, type Papers } from '../formats.ts';
import type { Paper } from '../picture/index.ts';
import type { DrawnPicture } from '../types.ts';
import type { DrawnFlat } from './work-picture.ts';

/** The panel at a stage of marking and cutting. */
export const markedAt = (stage: Exclude<Marking['stage'], 'blank'>): DrawnFlat =>
  ({ model, papers }, step) => [markedPanel(model, patternOf(model, step), { stage }, papers.bench)];

/** The blank of the panel on its stock panel. */
export const blankOnStock: DrawnFlat = ({ model, papers }, step) =>
  [markedPanel(model, patternOf(model, step), { stage: 'blank', stock: [model.kit.panel.length, model.kit.panel.width] }, papers.bench)];

/** The pattern that a step works on: the first where it does not tell. */
const patternOf = (model: Model, { detail }: Step): number => (detail.on === 'pattern' ? detail.index : firstFolded(model));

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
