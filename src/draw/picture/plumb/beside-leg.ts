import { tell, type Plumb, type PlumbSide, type Told } from '../../../scene/index.ts';
import type { Vec2 } from '../../../model/index.ts';
import type { Box } from '../../types.ts';
import { handDown, HAND_HIGH } from '../../flat/hands.ts';
import { BOB, OVER, plumbLine, STRAIGHTEDGE, straightedge } from '../../flat/plumb-line.ts';
import { halfPlaneWindow } from '../../kit/clip.ts';
import { onPaper, type Fit } from '../../kit/fit.ts';
import { capHeights } from '../../kit/lettering.ts';
import { arrowhead, figure, line, ringedNumeral, toldWidth, type Mark } from '../../kit/marks.ts';
import { pens } from '../../kit/pens.ts';
import { ticked } from '../../kit/right-wrong.ts';
import type { LineDrawer } from '../line-drawer.ts';
import { clippedTo, cropped, elevationMarks, elevationOf, onPlane } from '../elevation.ts';

const cap = capHeights.step;
/** Over the leg there is room for the straightedge and a hand, under the floor for a sign, mm of paper. */
const HEAD = STRAIGHTEDGE.high + HAND_HIGH + 1.5;
const FOOT = 9;
/** The string hangs so far from the leg at least on paper; from it to the figures, mm of paper. */
const APART = 6;
const GAP = 3.2;
/** The item is drawn so wide from the leg inwards at least, mm of paper. */
const INWARD = 14;
/** White between the weight and where the string is measured, mm of paper. */
const CLEAR = 1.4;
/** White at the picture's rim, mm of paper. */
const RIM = 2;

/** The leg from one side: straightedge, string and weight, how far the string is from the leg above and how far it may be below; with a number, ticked. */
export function besideLeg(plumb: Plumb, side: PlumbSide, number: number, box: Box, draw: LineDrawer): readonly Mark[] {
  // What is higher than the leg stands behind the hand.
  const whole = clippedTo(elevationOf(plumb.bodies, side.view, draw), halfPlaneWindow({ normal: [0, 1], offset: plumb.top }));
  const axis = onPlane(whole, plumb.leg.at)[0];
  const way = Math.sign(onPlane(whole, side.out)[0]);
  const [off, least, most] = [side.off, ...side.range].map((each) => tell.mm(each)) as [Told, Told, Told];
  const figures = toldWidth(least, cap, 700) + 5.6 + toldWidth(most, cap, 700);
  const scale = (box.height - HEAD - FOOT) / (plumb.top - plumb.floor);
  const apart = Math.max(APART, side.off * scale);
  const face = side.face * scale;
  const room = Math.max(INWARD, box.width - figures - GAP - apart - face - RIM);
  const inside = whole.drawing.bounds;
  const reach = way > 0 ? axis - inside.min[0] : inside.max[0] - axis;
  const isCropped = reach * scale > room;
  const inwards = Math.min(reach, room / scale);
  const from = way > 0 ? box.x + RIM : box.x + box.width - RIM;
  const fit: Fit = { scale, origin: [from + way * Math.min(room, inwards * scale) - axis * scale, box.y + box.height - FOOT + plumb.floor * scale] };
  const [x, top] = onPaper(fit, [axis, plumb.top]);
  const at = (height: number): number => onPaper(fit, [0, height])[1];
  const [floor, tip] = [at(plumb.floor), at(side.low) - 0.8];
  const [faceX, string] = [x + way * face, x + way * (face + apart)];
  const [upper, lower] = [at(side.upper), at(side.lower)];
  const edge = axis - way * inwards;
  return [
    ...elevationMarks(isCropped ? cropped(whole, edge, -way) : whole, fit),
    ...(isCropped ? breakLine(onPaper(fit, [edge, 0])[0], top, floor) : []),
    line({ ...pens.cut, width: 0.5 }, [x - way * inwards * scale, floor], [string + way * 5, floor]),
    ...straightedge([x - way * Math.min(14, inwards * scale), string + way * OVER], top), ...plumbLine(string, top, tip, { high: STRAIGHTEDGE.high, size: Math.min(1, (tip - lower - CLEAR) / BOB), colour: 'ink' }), ...handDown([x - way * 1.5, top - STRAIGHTEDGE.high]),
    ...between([faceX, string], upper), ...between([faceX, string], lower),
    ...beyond([off], [string + way * GAP, upper], way), ...beyond([least, most], [string + way * GAP, lower], way),
    ringedNumeral(tell.number(number), [way > 0 ? box.x + 4.6 : box.x + box.width - 4.6, box.y + 4.6], capHeights.order), ...ticked([x, floor + 4.8]),
  ];
}

/** Where a drawing is broken off. */
function breakLine(x: number, top: number, floor: number): readonly Mark[] {
  const middle = (top + floor) / 2;
  return [line(pens.edge, [x, top - 1], [x, middle - 2], [x - 1.4, middle - 0.8], [x + 1.4, middle + 0.8], [x, middle + 2], [x, floor + 1])];
}

/** From the leg to the string. */
export const between = ([from, to]: Vec2, y: number): readonly Mark[] => {
  const way = Math.sign(to - from);
  return [line(pens.dimension, [from, y], [to, y]), arrowhead([from, y], [-way, 0], 2), arrowhead([to, y], [way, 0], 2)];
};

/** A figure, or from one to another, beyond a place. */
function beyond(told: readonly Told[], [x, y]: Vec2, way: number): readonly Mark[] {
  const widths = told.map((each) => toldWidth(each, cap, 700));
  const whole = widths.reduce((sum, each) => sum + each, 0) + 5.6 * (told.length - 1);
  const left = way > 0 ? x : x - whole;
  return told.flatMap((each, index): readonly Mark[] => {
    const at = left + widths.slice(0, index).reduce((sum, width) => sum + width + 5.6, 0);
    const wide = widths[index] ?? 0;
    return [figure(each, [at + wide / 2, y], cap, 700), ...(index === 0 ? [] : [line(pens.motion, [at - 4.2, y], [at - 1.4, y])])];
  });
}
