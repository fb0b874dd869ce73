import type { Vec2 } from '../../model/index.ts';
import { area, line, outline, type Mark } from '../kit/marks.ts';
import { pens, type Pen } from '../kit/pens.ts';
import { pencil } from './pencil.ts';

/**
 * The sign of the marked face: a mast with a pennant, which the worker draws on that face and finds again. It is like neither
 * its mirror image nor itself turned, so that it tells the face and which way round the panel lies. Along the mast, and
 * from the mast to the right, mm.
 */
export const pennant = { mast: 7, from: 3.6, to: 7, tip: 5.3, out: 4.6 } as const;

/** How the sign is seen: it is drawn now, it is there, or it is on the far face and seen as if through the panel. */
export type SignSeen = 'new' | 'there' | 'behind';

/** Places of the sign from its foot: `up` along its mast, `out` where its pennant flies. */
type Placed = (up: number, out: number) => Vec2;

const flag = (at: Placed): readonly [Vec2, Vec2, Vec2] => [at(pennant.from, 0), at(pennant.tip, pennant.out), at(pennant.to, 0)];

/** The sign on a panel that is seen from one of its faces, the foot of its mast on a place of the paper. From behind it is mirrored and dashed. */
export function faceSign([x, y]: Vec2, seen: SignSeen, size = 1): readonly Mark[] {
  const way = seen === 'behind' ? -1 : 1;
  const at: Placed = (up, out) => [x + way * out * size, y - up * size];
  const mast: readonly [Vec2, Vec2] = [at(0, 0), at(pennant.mast, 0)];
  switch (seen) {
    case 'new': return [line(pens.motion, ...mast), area('ink', flag(at)), ...pencil(flag(at)[1])];
    case 'there': return [line(pens.edge, ...mast), area('ink', flag(at))];
    case 'behind': return [...dashed(pens.edge, ...mast), ...dashed(pens.edge, ...flag(at))];
  }
}

/** Length of a dash and of the gap after it, mm of paper: shorter than those of any line on a panel. */
const dash = { long: 1, gap: 0.6 } as const;

/** Short dashes from place to place. */
const dashed = (pen: Pen, ...places: readonly Vec2[]): readonly Mark[] => places.slice(1).flatMap((to, index) => {
  const from = places[index] ?? to;
  const far = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const count = Math.max(1, Math.round((far + dash.gap) / (dash.long + dash.gap)));
  const at = (along: number): Vec2 => [from[0] + ((to[0] - from[0]) * along) / far, from[1] + ((to[1] - from[1]) * along) / far];
  return Array.from({ length: count }, (_, each) => {
    const start = (each * (far + dash.gap)) / count;
    return line(pen, at(start), at(Math.min(far, start + far / count - (dash.gap * (count - 1)) / count)));
  });
});

/** Which way a face of a section looks on paper. */
export type Facing = 'up' | 'down' | 'left' | 'right';

/** From a face to the nearest of the sign that stands beside it, mm. */
const beside = 2.5;

/** By a section of the panel: the sign belongs to the face that bears the marks. It always stands upright, as it is drawn: on an upper face, under a lower one, beside an upright one, that the foot of its mast leads to. */
export function markedFace([x, y]: Vec2, facing: Facing = 'up'): readonly Mark[] {
  const foot = feet[facing]([x, y]);
  const at: Placed = (up, out) => [foot[0] + out, foot[1] - up];
  return [line(pens.motion, [x, y], foot, at(pennant.mast, 0)), area('ink', flag(at))];
}

/** Where its mast stands, by the way that the face looks: from the place where it begins on the face. */
const feet: Readonly<Record<Facing, (at: Vec2) => Vec2>> = {
  up: (at) => at, down: ([x, y]) => [x, y + pennant.mast + 1],
  left: ([x, y]) => [x - beside - pennant.out, y], right: ([x, y]) => [x + beside, y],
};

/** Room that the sign takes over or under the face, or beside it, mm. */
export const signRoom = pennant.mast + 1;

/** A panel seen from one face, and turned over to be seen from the other: an arrow goes round the upright between them. */
export const turnSign = { width: 42, height: 15 } as const;

/** Turn the panel over, left to right, so that the marked face comes to lie as `after` tells: below, or up again. mm of paper from the upper left corner. */
export function turnedOver([x, y]: Vec2, after: 'below' | 'up'): readonly Mark[] {
  const [wide, high] = [14, 9];
  const top = y + turnSign.height - high;
  const right = x + turnSign.width - wide;
  const sheet = (left: number): readonly Vec2[] => [[left, top], [left + wide, top], [left + wide, top + high], [left, top + high]];
  const shown = (left: number, isUp: boolean): readonly Mark[] => [
    area('panel', sheet(left)), outline(pens.motion, sheet(left)),
    ...faceSign(isUp ? [left + 3, top + high - 1.5] : [left + wide - 3, top + high - 1.5], isUp ? 'there' : 'behind', 0.85),
  ];
  const middle = x + turnSign.width / 2;
  return [...shown(x, after === 'below'), ...arc([middle, top + 3], 9.5, 6), ...shown(right, after === 'up')];
}

/** An arrow over the gap, as the edge of the panel goes: up on the left, down on the right. */
function arc([x, y]: Vec2, across: number, up: number): readonly Mark[] {
  const steps = 16;
  const at = (share: number): Vec2 => [x - across * Math.cos(Math.PI * share), y - up * Math.sin(Math.PI * share)];
  const path = Array.from({ length: steps + 1 }, (_, step) => at(0.08 + (0.72 * step) / steps));
  const [tip, before] = [at(0.92), at(0.8)];
  const [dx, dy] = [tip[0] - before[0], tip[1] - before[1]];
  const far = Math.hypot(dx, dy);
  const side: Vec2 = [(-dy / far) * 1.5, (dx / far) * 1.5];
  return [
    line({ ...pens.motion, width: 0.9 }, ...path),
    area('ink', [tip, [before[0] + side[0], before[1] + side[1]], [before[0] - side[0], before[1] - side[1]]]),
  ];
}
