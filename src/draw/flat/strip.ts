import type { Flap, FlatPattern, Vec2 } from '../../model/index.ts';

import type { Box } from '../types.ts';
import { runningDimension, runningReach } from '../kit/dimension.ts';
import type { Mark } from '../kit/marks.ts';
import { area, line, outline } from '../kit/marks.ts';
import { holeMark } from './hole-marks.ts';
import { holeLines, onFlap, runsAlongX } from './panel-lines.ts';
import type { Pen } from '../kit/pens.ts';
import { pens, thick } from '../kit/pens.ts';
import type { Fit } from '../kit/fit.ts';
import { fittingScale, onPaper } from '../kit/fit.ts';
import { tell, type Told } from '../../scene/index.ts';
import { boxWindow } from '../kit/clip.ts';
import { clipMarks } from '../kit/clip-marks.ts';
import { boxOf, cornersOf } from '../kit/geometry.ts';

/** Clear paper beyond the tab's edge and the least width of the strip's frame, in mm. */
const beyondEdge = 3;
export const stripWidth = 18;
/** Paper left between the frame and the dimension line. */
const dimensionGap = 5;

/**
 * A narrow strip across one flap, enlarged: lines that lie under 4 mm apart in the whole view stand clear of
 * each other here. Same way up as the whole view: outwards is up on the back flap, down on the front one.
 */
export interface Strip {
  readonly scale: number;
  readonly frame: Box;
  readonly flap: Flap;
  /** Paper place of the inside line. */
  readonly insideLine: number;
  /** Distance from the inside line at which the strip begins; negative is inside. */
  readonly start: number;
}

/** Places a strip of the front or back flap into a box; `start` is where it begins, mm from the inside line. */
export function placeStrip(flap: Flap, box: Box, start: number): Strip {
  if (!runsAlongX(flap.side)) throw new RangeError(`A strip is taken from the front or back flap, not from the ${flap.side} one.`);
  const height = flap.edge - start;
  const scale = fittingScale([0, height], [box.width, box.height - beyondEdge]);
  const frame: Box = { x: box.x, y: box.y + (box.height - height * scale - beyondEdge) / 2, width: stripWidth, height: height * scale + beyondEdge };
  const insideLine = outwardsSign(flap) > 0 ? frame.y - start * scale : frame.y + beyondEdge + flap.edge * scale;
  return { flap, frame, start, scale, insideLine };
}

/** Paper place of a distance from the inside line. */
export function stripY({ insideLine, scale, flap }: Strip, outwards: number): number {
  return insideLine + outwardsSign(flap) * outwards * scale;
}

/** Middle of the strip at a distance from the inside line. */
function stripMiddle(strip: Strip, outwards: number): Vec2 {
  return [strip.frame.x + strip.frame.width / 2, stripY(strip, outwards)];
}

/** +1 where outwards is down the paper. */
const outwardsSign = (flap: Flap): number => (flap.side === 'front' ? 1 : -1);

/** Paper width of a strip with the figures of running dimensions on its right. */
export function stripSpan(figures: readonly Told[], cap: number): number {
  return stripWidth + dimensionGap + runningReach(figures, cap) + 0.5;
}

/** Which pen draws which line of the strip; null leaves it out. */
export interface StripPens {
  readonly edge: Pen;
  readonly inside: Pen;
  readonly crease: Pen | null;
  readonly halfCut: Pen | null;
}

/** The strip's lines in its frame. */
export function stripMarks(strip: Strip, look: StripPens, more: readonly Mark[] = []): readonly Mark[] {
  const { frame, flap, start } = strip;
  const right = frame.x + frame.width;
  const across = (pen: Pen, outwards: number): Mark => line(pen, [frame.x, stripY(strip, outwards)], [right, stripY(strip, outwards)]);
  const [from, to] = [stripY(strip, start), stripY(strip, flap.edge)];
  const { crease, halfCut } = look;
  const drawn = [
    area('panel', [[frame.x, from], [right, from], [right, to], [frame.x, to]]),
    across(look.edge, flap.edge),
    across(look.inside, 0),
    ...(crease ? flap.creases.map((at) => across(crease, at)) : []),
    ...(halfCut ? [across(halfCut, flap.halfCut)] : []),
    ...more,
  ];
  return [
    { mark: 'view', name: 'strip', scale: strip.scale, marks: clipMarks(drawn, boxWindow(frame)) },
    outline(pens.ring, cornersOf(frame)),
  ];
}

/** The pin holes of a flap in the strip's middle, with centre lines: in the tab, and under it in the middle part. */
export function stripHoles(strip: Strip, pattern: FlatPattern): readonly Mark[] {
  return holeLines(pattern).flatMap(({ hole, outwards }) => {
    const radius = (hole.diameter / 2) * strip.scale;
    const [x, y] = stripMiddle(strip, outwards);
    const reach = radius + 2;
    return [
      ...holeMark(hole, [x, y], radius, { ...pens.hole, width: thick }),
      line(pens.edge, [x - reach, y], [x + reach, y]),
      line(pens.edge, [x, y - reach], [x, y + reach]),
    ];
  });
}

/** Running dimensions beside the strip: distances from a datum; places in mm outwards from the inside line. */
export function stripDimensions(strip: Strip, datum: number, places: readonly number[], cap: number, beside: 'left' | 'right' = 'right'): readonly Mark[] {
  const { frame } = strip;
  const feature = beside === 'right' ? frame.x + frame.width : frame.x;
  return runningDimension({
    axis: 'y',
    datum: stripY(strip, datum),
    stations: places.map((at) => ({ at: stripY(strip, at), told: tell.mm(Math.abs(at - datum)) })),
    line: feature + (beside === 'right' ? dimensionGap : -dimensionGap),
    feature,
    cap,
  });
}

/** Where the strip is taken from on the whole view, at a share of the flap's length, and a leader to the frame. */
export function stripSource(pattern: FlatPattern, strip: Strip, whole: Fit, share: number): readonly Mark[] {
  const { flap, frame, start, scale } = strip;
  const middle = flap.from + (flap.to - flap.from) * share;
  const half = Math.max(frame.width / 2 / scale, 1 / whole.scale);
  const past = 1 / whole.scale;
  const points: readonly Vec2[] = [
    [middle - half, start], [middle + half, start], [middle + half, flap.edge + past], [middle - half, flap.edge + past],
  ].map(([along = 0, outwards = 0]) => onPaper(whole, onFlap(pattern, flap.side, along, outwards)));
  return [outline(pens.ring, points), leader(boxOf(points), frame)];
}

/** From the source to a strip beside it on the level of the tab's edge, or straight down to a strip below it. */
function leader(source: Box, frame: Box): Mark {
  const bottom = source.y + source.height;
  if (bottom <= frame.y) return line(pens.ring, [source.x + source.width / 2, bottom], [frame.x + frame.width / 2, frame.y]);
  const level = Math.min(Math.max(source.y, frame.y), frame.y + frame.height);
  return line(pens.ring, [source.x + source.width, source.y], [frame.x, level]);
}
