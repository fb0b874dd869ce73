import type { Vec2 } from '../../model/index.ts';
import { discWindow } from '../kit/clip.ts';
import { onPaper, type Fit } from '../kit/fit.ts';
import { minus, plus, unit } from '../kit/geometry.ts';
import { area, arrowhead, circle, line, outline, type Mark } from '../kit/marks.ts';
import { band, pens } from '../kit/pens.ts';
import { clippedTo, elevationMarks, type Elevation } from './elevation.ts';

/** What of the work is enlarged round the corner, mm. */
const ROUND = 44;
/** The tape: so wide, its marks so far from each other and so long; its hook so far over it on each side, mm of paper. */
const TAPE = { wide: 6, mark: 1.8, short: 1.8, long: 3.2, hook: 1.4 } as const;
/** The dot at the corner, as on both diagonals, mm of paper. */
const DOT = 1.2;

/** A corner enlarged, and a tape on it that runs towards the opposite corner: its end, hooked on, or where it is read, drawn on past the corner; `ring` in mm of paper. */
export function tapeEnd(over: Elevation, corner: Vec2, opposite: Vec2, ring: { readonly centre: Vec2; readonly radius: number }, is: 'hooked' | 'read'): readonly Mark[] {
  const { centre, radius } = ring;
  const scale = radius / ROUND;
  // The corner lies off the ring's middle, so that what the tape runs over is seen.
  const [wayX, wayY] = unit(minus(opposite, corner)) ?? [1, 0];
  const middle = plus(corner, [wayX, wayY], ROUND / 3);
  const fit: Fit = { scale, origin: [centre[0] - middle[0] * scale, centre[1] + middle[1] * scale] };
  return [
    circle(centre, radius, null, 'white'),
    ...elevationMarks(clippedTo(over, discWindow(middle, ROUND)), fit),
    ...(is === 'hooked' ? tapeFrom : tapePast)(onPaper(fit, corner), [wayX, -wayY], radius),
    circle(centre, radius, pens.enlarged),
  ];
}

/** A tape from where its hook is, in a ring so large; its one edge is on the line that is measured. */
function tapeFrom(hook: Vec2, way: Vec2, radius: number): readonly Mark[] {
  const at = beside(hook, way);
  return [...stretch(at, 0, reachIn(radius)), line(band(2), at(-1, -TAPE.hook), at(-1, TAPE.wide + TAPE.hook)), ...dot(hook)];
}

/** The same tape drawn on past a place, where it is read: an arrowhead at that. */
function tapePast(place: Vec2, way: Vec2, radius: number): readonly Mark[] {
  const at = beside(place, way);
  return [...stretch(at, -0.5 * radius, reachIn(radius)), line(band(1.1), at(0, 0), at(0, TAPE.wide)), arrowhead(at(0, -DOT), [-way[1], way[0]], 4.4, 4), ...dot(place)];
}

/** The corner that is measured from or to. */
const dot = (at: Vec2): readonly Mark[] => [circle(at, DOT + 0.5, null, 'white'), circle(at, DOT, null, 'ink')];

/** From a corner to the ring's edge along the tape, mm of paper. */
const reachIn = (radius: number): number => (4 / 3) * radius - 0.6;

/** Places so far along a tape from a place, and aside. */
const beside = (from: Vec2, way: Vec2) => (along: number, aside: number): Vec2 => plus(plus(from, way, along), [-way[1], way[0]], aside);

/** A stretch of tape with its marks. */
function stretch(at: (along: number, aside: number) => Vec2, from: number, to: number): readonly Mark[] {
  const body = [at(from, 0), at(to - 1.5, 0), at(to - 2.2, TAPE.wide), at(from, TAPE.wide)];
  const marks = Array.from({ length: Math.floor((to - from - 3) / TAPE.mark) }, (_, index) => index + 1);
  return [area('white', body), outline(pens.motion, body), ...marks.map((index) => line(pens.edge, at(from + index * TAPE.mark, 0), at(from + index * TAPE.mark, index % 5 === 0 ? TAPE.long : TAPE.short)))];
}
