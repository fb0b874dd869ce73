import { flatPattern, type CutPattern, type FlatPattern, type Model } from '../model/index.ts';
import { insidePlaces, firstPlaces, type Coordinates, foldedPatternPicture, foldedPictures, foldSeries, markingPicture, patternPicture, punchPicture, sectionSeries, type Marking } from './flat/index.ts';
import { sidesInOrder } from './flat/panel-lines.ts';
import { hardwareOf } from './hardware.ts';
import type { Paper } from './picture/index.ts';
import type { DrawnPicture } from './types.ts';

/** A pattern of an item that is folded, by its place in the model's list. */
export interface FoldedPanel {
  readonly index: number;
  readonly pattern: CutPattern;
  /** The same where it is folded round one bar on each of its four sides: its drawings say all of a side at once. */
  readonly full: FlatPattern | null;
}

/** All of an item's patterns that are folded. */
export const foldedPanels = (model: Model): readonly FoldedPanel[] =>
  model.patterns.flatMap((pattern, index) => (pattern.form === 'flat' ? [] : [{ index, pattern, full: fullOf(model, pattern) }]));

/** Lengths closer than this are cut alike, mm. */
const ALIKE = 0.01;

/** The pattern as one that is folded round all four sides; null where it is not. */
function fullOf({ kit, pattern: first }: Model, { form, min, max, flaps, holes }: CutPattern): FlatPattern | null {
  const root = (side: string): number => flaps.find((flap) => flap.side === side)?.root ?? NaN;
  if (form !== 'wrapped' || flaps.length !== 4 || !(near(root('left'), root('right')) && near(root('front'), root('back')))) return null;
  const isOf = (full: FlatPattern): boolean => near(full.blank[0], max[0] - min[0]) && near(full.blank[1], max[1] - min[1]) && full.holes.length === holes.length;
  if (isOf(first)) return first;
  const full = flatPattern(kit, [root('right'), root('back')]);
  return isOf(full) ? full : null;
}

const near = (one: number, other: number): boolean => Math.abs(one - other) < ALIKE;

/** A folded panel by its place in the model's list. Throws a RangeError where none is there. */
function foldedPanel(model: Model, index: number): FoldedPanel {
  const found = foldedPanels(model).find((panel) => panel.index === index);
  if (found === undefined) throw new RangeError(`pattern ${index + 1} of ${model.patterns.length} is none that is folded`);
  return found;
}

/** The first of an item's folded panels; its place, or nought where it has none. */
export const firstFolded = (model: Model): number => foldedPanels(model)[0]?.index ?? 0;

/** The whole flat pattern. */
export function patternSheet(model: Model, index: number, paper?: Paper): DrawnPicture {
  const { full, pattern } = foldedPanel(model, index);
  return full === null ? foldedPatternPicture(pattern, paper) : patternPicture(full, paper);
}

/** A step of marking or cutting it: the marked face and, where something is done on the other, that. */
export function markedPanel(model: Model, index: number, marking: Marking, paper?: Paper): readonly DrawnPicture[] {
  const { full, pattern } = foldedPanel(model, index);
  return full === null ? foldedPictures(pattern, marking, paper) : [markingPicture(full, marking, paper)];
}

/** Where the lines lie that are marked on its blank first, from the left and the lower edge, mm. */
export function rootsMarked(model: Model, index: number): Coordinates {
  const { full, pattern } = foldedPanel(model, index);
  return full === null ? firstPlaces(pattern) : insidePlaces(full);
}

/** How its holes are punched, at a large scale, where its drawing does not tell it beside itself. */
export function punching(model: Model, index: number, width: number): readonly DrawnPicture[] {
  const { full } = foldedPanel(model, index);
  return full === null ? [] : [punchPicture(full, width)];
}

/** How a flap of it is folded, one bend after the other. */
export function foldingOf(model: Model, index: number, paper?: Paper): DrawnPicture {
  const { full, pattern } = foldedPanel(model, index);
  // Flaps that are wrapped are folded alike, whichever sides have one.
  const wrapped = full ?? (pattern.form === 'wrapped' ? model.pattern : null);
  if (wrapped !== null) return sectionSeries(wrapped, sidesInOrder(wrapped)[1] ?? 'right', hardwareOf(model), paper);
  const flap = pattern.flaps.reduce((most, each) => (each.bends.length > most.bends.length ? each : most));
  return foldSeries(pattern, flap, hardwareOf(model), paper);
}
