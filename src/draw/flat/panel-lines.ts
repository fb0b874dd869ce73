import type { Flap, FlatPattern, Side, Vec2 } from '../../model/index.ts';
import { flatHoles, onSide } from '../../model/index.ts';
import type { Mark } from '../kit/marks.ts';
import { holeMark } from './hole-marks.ts';
import { line, outline } from '../kit/marks.ts';
import type { Pen } from '../kit/pens.ts';
import type { Fit } from '../kit/fit.ts';
import { allOnPaper, onPaper } from '../kit/fit.ts';

/** A straight line on the flat panel, in panel coordinates (mm). */
export type PanelLine = readonly [Vec2, Vec2];

/** Shorter sides before longer ones, a side before its opposite: the order of work. */
export function sidesInOrder({ inside: [x, y] }: FlatPattern): readonly Side[] {
  return y <= x ? ['left', 'right', 'front', 'back'] : ['front', 'back', 'left', 'right'];
}

export const runsAlongX = (side: Side): boolean => side === 'front' || side === 'back';

/** A pattern's flap on a side. Throws a RangeError when the pattern has none there. */
export function flapOn(pattern: FlatPattern, side: Side): Flap {
  const flap = pattern.flaps.find((one) => one.side === side);
  if (!flap) throw new RangeError(`The pattern has no flap on its ${side} side; a wrapped panel has one on each of left, right, front, back.`);
  return flap;
}

/** The point `outwards` mm from the inside line of a side and `along` mm along it. */
export function onFlap(pattern: FlatPattern, side: Side, along: number, outwards: number): Vec2 {
  return onSide(pattern.inside, side, along, outwards);
}

/** A line across a flap at a distance from its inside line, between the flap's ends. */
export function acrossFlap(pattern: FlatPattern, flap: Flap, outwards: number): PanelLine {
  return [onFlap(pattern, flap.side, flap.from, outwards), onFlap(pattern, flap.side, flap.to, outwards)];
}

/** A line across a flap before the notches are cut: as long as the inside line it is measured from. */
export function acrossBlank(pattern: FlatPattern, flap: Flap, outwards: number): PanelLine {
  const half = pattern.inside[runsAlongX(flap.side) ? 0 : 1];
  return [onFlap(pattern, flap.side, -half, outwards), onFlap(pattern, flap.side, half, outwards)];
}

export function rectangle([x, y]: Vec2): readonly Vec2[] {
  return [[-x, -y], [x, -y], [x, y], [-x, y]];
}

/** The uncut blank. */
export function blankMarks(pattern: FlatPattern, view: Fit, pen: Pen): readonly Mark[] {
  return [outline(pen, allOnPaper(view, rectangle([pattern.blank[0] / 2, pattern.blank[1] / 2])))];
}

/** The whole inside rectangle, as it is marked on the blank. */
export function insideMarks(pattern: FlatPattern, view: Fit, pen: Pen): readonly Mark[] {
  return [outline(pen, allOnPaper(view, rectangle(pattern.inside)))];
}

/** What is left of the inside lines once the notches are cut. */
export function insideLineMarks(pattern: FlatPattern, view: Fit, pen: Pen): readonly Mark[] {
  return pattern.flaps.map((flap) => panelLine(view, pen, acrossFlap(pattern, flap, 0)));
}

/** How far the lines across a flap reach: over the whole side of the blank, or over the finished flap. */
export type Reach = typeof acrossFlap;

export function creaseMarks(pattern: FlatPattern, view: Fit, pen: Pen, reach: Reach): readonly Mark[] {
  return pattern.flaps.flatMap((flap) => flap.creases.map((at) => panelLine(view, pen, reach(pattern, flap, at))));
}

export function halfCutMarks(pattern: FlatPattern, view: Fit, pen: Pen, reach: Reach): readonly Mark[] {
  return pattern.flaps.map((flap) => panelLine(view, pen, reach(pattern, flap, flap.halfCut)));
}

/** The panel after notching and snipping. */
export function outlineMarks(pattern: FlatPattern, view: Fit, pen: Pen): readonly Mark[] {
  return [outline(pen, allOnPaper(view, pattern.outline))];
}

/** Every pin hole that is punched in the flat panel, at least 1 mm wide on paper so that it is seen. */
export function holeMarks(pattern: FlatPattern, view: Fit, pen: Pen): readonly Mark[] {
  return flatHoles(pattern).flatMap((hole) => holeMark(hole, onPaper(view, hole.at), Math.max(0.5, (hole.diameter / 2) * view.scale), pen));
}

export function panelLine(view: Fit, pen: Pen, ends: PanelLine): Mark {
  return line(pen, ...allOnPaper(view, ends));
}

/** The corners of the blank as signs of x and y. */
export const corners: readonly Vec2[] = [[-1, -1], [1, -1], [1, 1], [-1, 1]];

/** Upper right corner of the blank, where details are taken from. */
export const detailCorner: Vec2 = [1, 1];

/** Inner corner of the notch in a corner of the blank. */
export function notchInner(pattern: FlatPattern, [sx, sy]: Vec2): Vec2 {
  return [sx * (pattern.blank[0] / 2 - pattern.notch[0]), sy * (pattern.blank[1] / 2 - pattern.notch[1])];
}

/** Middle of the round hole that is punched in the inner corner of a notch. */
export function notchHole(pattern: FlatPattern, corner: Vec2): Vec2 {
  const [x, y] = notchInner(pattern, corner);
  return [x + corner[0] * pattern.notchRadius, y + corner[1] * pattern.notchRadius];
}

/** The two marked sides of a notch, each from the inner corner to the blank's edge: first along x, then along y. */
export function notchSides(pattern: FlatPattern, corner: Vec2): readonly [PanelLine, PanelLine] {
  const inner = notchInner(pattern, corner);
  return [
    [inner, [corner[0] * (pattern.blank[0] / 2), inner[1]]],
    [inner, [inner[0], corner[1] * (pattern.blank[1] / 2)]],
  ];
}

/** The two snips beside a notch: off the tab of the left or right flap, then off the front or back one. */
export function snips(pattern: FlatPattern, corner: Vec2): readonly [PanelLine, PanelLine] {
  const [sx, sy] = corner;
  const inner = notchInner(pattern, corner);
  const half: Vec2 = [pattern.blank[0] / 2, pattern.blank[1] / 2];
  const onX = flapOn(pattern, sx < 0 ? 'left' : 'right').corner;
  const onY = flapOn(pattern, sy < 0 ? 'front' : 'back').corner;
  return [
    [[sx * (half[0] - onX), inner[1]], [sx * half[0], inner[1] - sy * onX]],
    [[inner[0], sy * (half[1] - onY)], [inner[0] - sx * onY, sy * half[1]]],
  ];
}

/**
 * The square that falls out of a corner: edge point along x, the round corner, edge point along y, the blank's
 * corner. `steps` straights make the quarter circle.
 */
export function notchRing(pattern: FlatPattern, corner: Vec2, steps: number): readonly Vec2[] {
  const [sx, sy] = corner;
  const inner = notchInner(pattern, corner);
  const outer: Vec2 = [sx * (pattern.blank[0] / 2), sy * (pattern.blank[1] / 2)];
  const radius = pattern.notchRadius;
  const [hx, hy] = notchHole(pattern, corner);
  const round = Array.from({ length: steps + 1 }, (_, index): Vec2 => {
    const angle = (index / steps) * (Math.PI / 2);
    return [hx - sx * radius * Math.sin(angle), hy - sy * radius * Math.cos(angle)];
  });
  return [[outer[0], inner[1]], ...round, [inner[0], outer[1]], outer];
}

/** A hole on its line across a flap, and how far that is outwards from the inside line (below nought in the middle part), mm. */
export interface HoleLine {
  readonly hole: FlatPattern['holes'][number];
  readonly outwards: number;
}

/** Where pin holes are punched in the flat panel, of the back flap: in its tab, then under that in the middle part. None where they are punched after wrapping. */
export const holeLines = (pattern: FlatPattern): readonly HoleLine[] => (['tab', 'base'] as const).flatMap((place) => {
  const hole = flatHoles(pattern).find((one) => one.side === 'back' && one.in === place);
  return hole === undefined ? [] : [{ hole, outwards: hole.at[1] - pattern.inside[1] }];
});
