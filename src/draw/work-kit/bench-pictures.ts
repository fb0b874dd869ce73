import { cordPatterns, ownPanels, type TubeCutPlan } from '../../cut/index.ts';
import { cableEnds, halfCutDepth, type CutPattern, type Model, type Vec2 } from '../../model/index.ts';
import { boundTrialPicture, cutBarsPaper, cutBarsPicture, guidePicture, holePlaces, holesPunched, knifeStopPicture, partsTold, platePicture, practicePicture, pullPicture, punchedFlat, rolledTrial, slitPicture, stockPicture, stringPicture, tracePicture, WASTE, type LeftOver, type Marking, type StockFetched, type Traced, type TraceWay } from '../flat/index.ts';
import type { Plan, Step } from '../../plan/index.ts';
import { hardwareOf } from '../hardware.ts';
import { firstFolded, markedPanel, punching, rootsMarked } from '../folded-panels.ts';
import { FORMATS, type Papers } from '../formats.ts';
import type { Paper } from '../picture/index.ts';
import type { DrawnPicture } from '../types.ts';
import { keptOf } from './kept-off-cuts.ts';
import type { DrawnFlat, FlatGivens } from './work-picture.ts';

/** The panel at a stage of marking and cutting. */
export const markedAt = (stage: Exclude<Marking['stage'], 'blank'>): DrawnFlat =>
  ({ model, papers }, step) => markedPanel(model, patternOf(model, step), { stage }, papers.bench);

/** The corners cut out: creases, the half-cut and the first pin are tried on them, and some are bound to the half-cut's knife. */
export const cornersCut: DrawnFlat = ({ model, plan, papers }, step) => {
  const index = patternOf(model, step);
  const later = plan.steps.filter((each) => (each.action === 'crease' || each.action === 'half-cut') && patternOf(model, each) === index);
  const pinned = index === firstFolded(model) ? plan.steps.filter(({ action }) => action === 'punch-tab').slice(0, 1) : [];
  return markedPanel(model, index, { stage: 'notches-cut', keptFor: [...later, ...pinned].map(({ number }) => number) }, papers.bench);
};

/** Where the panel's holes are, and how each kind is punched. */
export const punchedPanel: DrawnFlat = (givens, step) =>
  [...markedAt('holes')(givens, step), ...punching(givens.model, patternOf(givens.model, step), givens.papers.bench.width)];

/** The blank of the panel on its stock panel. */
export const blankOnStock: DrawnFlat = ({ model, plan, papers }, step) => {
  const index = patternOf(model, step);
  return markedPanel(model, index, { stage: 'blank', stock: [model.kit.panel.length, model.kit.panel.width], ...laidAs(model, index), kept: keptOf(model, plan, 'blank', index) }, papers.bench);
};

/** How a pattern's blank is laid on its stock panel; nothing where none is cut from one. */
function laidAs(model: Model, index: number): { readonly laid?: Vec2 } {
  const blank = ownPanels(model).flat().find((piece) => piece.is === 'blank' && piece.index === index);
  return blank === undefined ? {} : { laid: blank.sides };
}

/** The panel of a step as it is cut out of its blank. */
const cutOutAt = ({ model }: FlatGivens, step: Step): CutPattern => {
  const index = patternOf(model, step);
  const pattern = model.patterns[index];
  if (pattern === undefined) throw new RangeError(`no panel ${index + 1} to fold; there are ${model.patterns.length}`);
  return pattern;
};

/** A half-cut is tried on waste, in this order: how the knife gets its stop, is bound and tried, is led, is pulled, how what it cut is looked at. */
export const halfCutTried: DrawnFlat = (givens, step) => {
  const { model: { kit: { panel } }, papers: { bench } } = givens;
  const [depth, from] = [halfCutDepth(panel), cutOutAt(givens, step)];
  return [
    knifeStopPicture(depth, from, bench), boundTrialPicture(depth, { taped: 5, tried: 6, stop: 2 }, bench), guidePicture({ pads: panel.thickness, number: 7 }, bench),
    pullPicture({ depth, thickness: panel.thickness, skin: panel.skin }, 8, bench), practicePicture(from, { own: 9, stop: 2, held: 7, pulled: 8 }, bench),
  ];
};

/** What is done where the half-cut went through the outer skin. */
export const halfCutMended: DrawnFlat = (givens, step) => {
  const index = patternOf(givens.model, step);
  const blank = givens.plan.steps.find((each) => each.action === 'cut-blank' && patternOf(givens.model, each) === index);
  return blank === undefined ? [] : [slitPicture(cutOutAt(givens, step), { step: blank.number, sheet: [givens.model.kit.panel.length, givens.model.kit.panel.width] }, givens.papers.bench)];
};

/** A crease is tried on waste. */
export const creaseTried: DrawnFlat = (givens, step) => {
  const { thickness, skin } = givens.model.kit.panel;
  return [rolledTrial({ ...cutOutAt(givens, step), thickness, skin }, givens.papers.bench)];
};

/** Beside a drawing of the first piece, how it is a pattern for the others, where there are several alike. */
export const withPattern = (way: TraceWay, first: DrawnFlat, traced: (givens: FlatGivens, step: Step) => Traced | null): DrawnFlat => (givens, step) => {
  const piece = step.times > 1 ? traced(givens, step) : null;
  return [...first(givens, step), ...(piece === null ? [] : [tracePicture(way, piece, step.times - 1, givens.papers.bench)])];
};

/** A folded panel's blank, with nothing on it, with the lines that its flaps are measured from, or with all that is punched in it flat. */
export const blankTraced = (marks: 'none' | 'roots' | 'holes') => (givens: FlatGivens, step: Step): Traced => {
  const pattern = cutOutAt(givens, step);
  const own: Vec2 = [pattern.max[0] - pattern.min[0], pattern.max[1] - pattern.min[1]];
  const sides = marks === 'none' ? laidAs(givens.model, patternOf(givens.model, step)).laid ?? own : own;
  const holes = marks === 'holes' ? punchedFlat(pattern).map(({ at: [x, y] }): Vec2 => [x - pattern.min[0], y - pattern.min[1]]) : [];
  return { sides, places: marks === 'none' ? [[], []] : marks === 'roots' ? rootsMarked(givens.model, patternOf(givens.model, step)) : holePlaces(pattern), holes };
};

/** A flat panel with those of its holes that go through, for a pencil. */
export const plateTraced = ({ model }: FlatGivens, { detail }: Step): Traced | null => {
  if (detail.on !== 'plates') return null;
  const plate = model.plates[detail.index];
  if (plate === undefined) return null;
  const [, second] = ownPanels(model).flat().filter((piece) => piece.is === 'plate' && piece.index === detail.index);
  const isFromStrip = second !== undefined && Math.abs(second.from.sides[0] - plate.width) < ALIKE;
  return { sides: [plate.width, plate.height], places: [[], []], holes: plate.holes.flatMap(({ at: [x, y], depth }): Vec2[] => (depth === undefined ? [[x, y]] : [])), ...(isFromStrip ? { isFromStrip } : {}) };
};

/** Sides closer than this are alike, mm. */
const ALIKE = 0.5;

/** The pattern that a step works on: the first where it does not tell. */
const patternOf = (model: Model, { detail }: Step): number => (detail.on === 'pattern' ? detail.index : firstFolded(model));

/** The whole tubes, panels and cables that an item is made from. */
export const stockSheet = ({ model, plan, cuts: { stock, tubesUsed } }: Pick<FlatGivens, 'model' | 'plan' | 'cuts'>, width: number): DrawnPicture => stockPicture({
  tube: { length: stock, ...hardwareOf(model).tube, count: tubesUsed },
  panel: { sides: [model.kit.panel.length, model.kit.panel.width], thickness: model.kit.panel.thickness, skin: model.kit.panel.skin, count: ownPanels(model).length },
  cable: { length: model.kit.cable.length, diameter: model.kit.cable.diameter, patterns: cablePatterns({ model, plan }) },
}, width);

/** How whole cables are cut, and in which steps: each is cut by the step that hangs it. */
function cablePatterns({ model, plan }: Pick<FlatGivens, 'model' | 'plan'>): StockFetched['cable']['patterns'] {
  const cut = model.parts.flatMap(({ id, shape }) => (shape.form === 'cable' ? [{ long: cableEnds(shape.length).cut, step: plan.steps.find(({ newParts }) => newParts.some(({ ids }) => ids.includes(id)))?.number }] : []));
  return cordPatterns(cut.map(({ long }) => long), model.kit.cable.length).map((pattern) => {
    const steps = cut.flatMap(({ long, step }) => (step !== undefined && pattern.pieces.includes(long) ? [step] : []));
    return { ...pattern, steps: [...new Set(steps)].sort((a, b) => a - b) };
  });
}

/** The stock tubes to saw, in as many pictures as they need; the last of these shows the saw. Where plain shares of a tube are told, one more shows how they are found. */
export function cutBarsInPieces(cuts: TubeCutPlan, { bench, bars }: Papers): readonly DrawnPicture[] {
  const count = Math.max(1, Math.ceil(cuts.patterns.length / bars));
  const each = Math.ceil(cuts.patterns.length / count);
  const drawn = Array.from({ length: count }, (_, index) => barsDrawn(cuts, cuts.patterns.slice(index * each, (index + 1) * each), bench.width, index === count - 1));
  const parts = partsTold({ ...cuts, kerf: 0 });
  return parts.length === 0 ? drawn : [...drawn, stringPicture(cuts.stock, parts, bench)];
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

/** The off-cut that a flat panel is cut from; null where that is a whole stock panel. */
function leftFor(model: Model, index: number): LeftOver | null {
  const sheet = ownPanels(model).find((pieces) => pieces.some((piece) => piece.is === 'plate' && piece.index === index)) ?? [];
  const place = sheet.findIndex((piece) => piece.is === 'plate' && piece.index === index);
  const piece = sheet[place];
  return piece === undefined || place === 0 ? null : { area: piece.from, taken: sheet.slice(0, place) };
}

/** How the holes of a flat panel are punched, where some are blind. */
export function platePunched({ plates }: Model, index: number, width: number): readonly DrawnPicture[] {
  const plate = plates[index];
  if (plate === undefined || !plate.holes.some(({ depth }) => depth !== undefined)) return [];
  const holes = plate.holes.map(({ diameter, depth = null }) => ({ diameter, depth, face: 'drawn' as const }));
  return [holesPunched({ holes, thickness: plate.thickness, skin: plate.skin }, width)];
}

/** A flat panel to cut from the stock panel, by its place in the model's list, and how many there are, where its step does not tell; where a plan is given, what of the rest its later steps use. */
export function plateSheet(model: Model, index: number, paper: Paper = FORMATS.page.bench, isCounted = true, plan: Plan | null = null): DrawnPicture {
  const { kit, plates } = model;
  const plate = plates[index];
  if (plate === undefined) throw new RangeError(`no flat panel ${index + 1}; there are ${plates.length}`);
  return platePicture(plate, [kit.panel.length, kit.panel.width], isCounted ? plate.partIds.length : null, paper, leftFor(model, index), plan === null ? WASTE : keptOf(model, plan, 'plate', index));
}
