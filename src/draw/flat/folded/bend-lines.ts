import { onSide, type Bend, type Lug, type PanelHole, type Pattern, type PatternFlap, type Vec2 } from '../../../model/index.ts';
import type { Mark } from '../../kit/marks.ts';
import { outline } from '../../kit/marks.ts';
import { holeMark } from '../hole-marks.ts';
import type { Pen } from '../../kit/pens.ts';
import { allOnPaper, onPaper, type Fit } from '../../kit/fit.ts';
import { panelLine, type PanelLine } from '../panel-lines.ts';

/** A straight line on the flat panel that it bends along. */
export interface BendLine {
  readonly is: Bend['is'];
  readonly ends: PanelLine;
}

/** Nearer than this is the same place, mm. */
const NEAR = 1e-3;

const middle: Vec2 = [0, 0];

/** A point of a flap: `along` its side, `out` from its root line. */
export const onPatternFlap = ({ side, root }: PatternFlap, along: number, out: number): Vec2 => onSide(middle, side, along, root + out);

/** From where to where a flap reaches along its side at a distance from its root line. */
export function reachAt({ strips }: PatternFlap, out: number): Vec2 {
  const strip = strips.find(({ from, to }) => out >= from - NEAR && out <= to + NEAR) ?? strips[0];
  return strip === undefined ? middle : [strip.start, strip.end];
}

/** Across a flap at a distance from its root line. */
export function acrossPatternFlap(flap: PatternFlap, out: number): PanelLine {
  const [start, end] = reachAt(flap, out);
  return [onPatternFlap(flap, start, out), onPatternFlap(flap, end, out)];
}

/** The middle of the wall that a lug stands out from. */
export function wallMiddle(flap: PatternFlap, lug: Lug): number {
  const [start, end] = reachAt(flap, lug.from);
  return (start + end) / 2;
}

/** Across a lug, `away` from the middle of its wall. */
export function acrossLug(flap: PatternFlap, lug: Lug, away: number): PanelLine {
  const along = wallMiddle(flap, lug) + lug.end * away;
  return [onPatternFlap(flap, along, lug.from), onPatternFlap(flap, along, lug.to)];
}

/** The lines that flaps are measured from: inside their bars, or where their walls begin. */
export const firstLines = ({ flaps }: Pattern): readonly PanelLine[] => flaps.map((flap) => acrossPatternFlap(flap, flap.line));

/** All lines that a panel bends along, of its flaps and of their lugs. */
export function bendLines({ flaps }: Pattern): readonly BendLine[] {
  return flaps.flatMap((flap) => [
    ...flap.bends.map(({ is, at }): BendLine => ({ is, ends: acrossPatternFlap(flap, at) })),
    ...flap.lugs.flatMap((lug) => lug.bends.map(({ is, at }): BendLine => ({ is, ends: acrossLug(flap, lug, at) }))),
  ]);
}

/** The lines of creases, or of half-cuts, by a pen. */
export const bendMarks = (pattern: Pattern, is: Bend['is'], view: Fit, pen: Pen): readonly Mark[] =>
  bendLines(pattern).filter((bend) => bend.is === is).map(({ ends }) => panelLine(view, pen, ends));

export const firstMarks = (pattern: Pattern, view: Fit, pen: Pen): readonly Mark[] => firstLines(pattern).map((ends) => panelLine(view, pen, ends));

/** Every hole, at least 1 mm wide on paper so that it is seen. */
export const patternHoles = (holes: readonly PanelHole[], view: Fit, pen: Pen): readonly Mark[] =>
  holes.flatMap((hole) => holeMark(hole, onPaper(view, hole.at), Math.max(0.5, (hole.diameter / 2) * view.scale), pen));

export const patternOutline = (pattern: Pattern, view: Fit, pen: Pen): Mark => outline(pen, allOnPaper(view, pattern.outline));

/** The blank before anything is notched out of it. */
export const blankRing = ({ min, max }: Pattern): readonly Vec2[] => [min, [max[0], min[1]], max, [min[0], max[1]]];

export const blankSides = ({ min, max }: Pattern): Vec2 => [max[0] - min[0], max[1] - min[1]];
