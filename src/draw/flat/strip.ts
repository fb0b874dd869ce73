import type { Flap, FlatPattern, Vec2 } from '../../model/index.ts';

import type { Box } from '../types.ts';
import { boxWindow, clipMarks } from './clip.ts';
import { runningDimension, runningReach } from './dimension.ts';
import { lengthText } from './lettering.ts';
import type { Mark } from './marks.ts';
import { area, line, outline } from './marks.ts';
import { onFlap, runsAlongX } from './panel-lines.ts';
import type { Pen } from './pens.ts';
import { panelTint, pens } from './pens.ts';
import type { View } from './view.ts';
import { allOnPaper, fittingScale, onPaper } from './view.ts';

/** Clear paper beyond the tab's edge and the least width of the strip's frame, in mm. */
const beyondEdge = 3;
export const stripWidth = 18;
/** Paper left between the frame and the dimension line. */
const dimensionGap = 5;

/**
 * A narrow strip across one flap, enlarged: lines that lie under 4 mm apart in the whole view stand clear of
 * each other here. Its view takes x along the side (0 in the strip's middle) and y outwards from the inside line.
 */
export interface Strip {
  readonly view: View;
  readonly frame: Box;
  readonly flap: Flap;
  /** Distance from the inside line at which the strip begins; negative is inside. */
  readonly start: number;
}

/** Places a strip into a box with its right-hand figures; `start` is where it begins, mm from the inside line. */
export function placeStrip(flap: Flap, box: Box, start: number): Strip {
  const height = flap.edge - start;
  const scale = fittingScale([0, height], [box.width, box.height - beyondEdge]);
  const frame: Box = { x: box.x, y: box.y + (box.height - height * scale - beyondEdge) / 2, width: stripWidth, height: height * scale + beyondEdge };
  return { flap, frame, start, view: { scale, origin: [frame.x + frame.width / 2, frame.y + beyondEdge + flap.edge * scale] } };
}

/** Paper width of a strip with the figures of running dimensions on its right. */
export function stripSpan(texts: readonly string[], cap: number): number {
  return stripWidth + dimensionGap + runningReach(texts, cap) + 0.5;
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
  const { view, frame, flap, start } = strip;
  const across = (pen: Pen, outwards: number): Mark => {
    const y = onPaper(view, [0, outwards])[1];
    return line(pen, [frame.x, y], [frame.x + frame.width, y]);
  };
  const half = frame.width / 2 / view.scale;
  const panel = allOnPaper(view, [[-half, start], [half, start], [half, flap.edge], [-half, flap.edge]]);
  const { crease, halfCut } = look;
  const drawn = [
    area(panelTint, panel),
    across(look.edge, flap.edge),
    across(look.inside, 0),
    ...(crease ? flap.creases.map((at) => across(crease, at)) : []),
    ...(halfCut ? [across(halfCut, flap.halfCut)] : []),
    ...more,
  ];
  return [
    { mark: 'view', name: 'strip', scale: view.scale, marks: clipMarks(drawn, boxWindow(frame)) },
    outline(pens.ring, boxWindow(frame)),
  ];
}

/** Running dimensions on the strip's right: distances outwards from a datum, in mm from the inside line. */
export function stripDimensions(strip: Strip, datum: number, places: readonly number[], cap: number): readonly Mark[] {
  const { view, frame } = strip;
  const y = (outwards: number) => onPaper(view, [0, outwards])[1];
  return runningDimension({
    axis: 'y',
    datum: y(datum),
    stations: places.map((at) => ({ at: y(at), text: lengthText(Math.abs(at - datum)) })),
    line: frame.x + frame.width + dimensionGap,
    feature: frame.x + frame.width,
    cap,
  });
}

/** Where the strip is taken from on the whole view, at a share of the flap's length, and a leader to the frame. */
export function stripSource(pattern: FlatPattern, strip: Strip, whole: View, share: number): readonly Mark[] {
  const { flap, frame, start, view } = strip;
  if (!runsAlongX(flap.side)) throw new RangeError(`A strip is taken from the front or back flap, not from the ${flap.side} one.`);
  const middle = flap.from + (flap.to - flap.from) * share;
  const half = Math.max(frame.width / 2 / view.scale, 1 / whole.scale);
  const past = 1 / whole.scale;
  const points: readonly Vec2[] = [
    [middle - half, start], [middle + half, start], [middle + half, flap.edge + past], [middle - half, flap.edge + past],
  ].map(([along = 0, outwards = 0]) => onPaper(whole, onFlap(pattern, flap.side, along, outwards)));
  const right = Math.max(...points.map(([x]) => x));
  const top = Math.min(...points.map(([, y]) => y));
  const level = Math.min(Math.max(top, frame.y), frame.y + frame.height);
  return [outline(pens.ring, points), line(pens.ring, [right, top], [frame.x, level])];
}
