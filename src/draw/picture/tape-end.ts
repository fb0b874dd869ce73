import type { Vec2 } from '../../model/index.ts';
import { discWindow } from '../kit/clip.ts';
import { onPaper, type Fit } from '../kit/fit.ts';
import { minus, plus, unit } from '../kit/geometry.ts';
import { area, circle, line, outline, type Mark } from '../kit/marks.ts';
import { band, pens } from '../kit/pens.ts';
import { clippedTo, elevationMarks, type Elevation } from './elevation.ts';

/** What of the work is enlarged round the corner, mm. */
const ROUND = 48;
/** The tape: so wide, its marks so far from each other and so long; its hook so far over it on each side, mm of paper. */
const TAPE = { wide: 4, mark: 1.4, short: 1.2, long: 2, hook: 0.9 } as const;

/** A corner enlarged, and the end of a tape hooked on it that runs towards the opposite corner; `ring` in mm of paper. */
export function tapeEnd(over: Elevation, corner: Vec2, opposite: Vec2, ring: { readonly centre: Vec2; readonly radius: number }): readonly Mark[] {
  const { centre, radius } = ring;
  const scale = radius / ROUND;
  // The corner lies off the ring's middle, so that what the tape runs over is seen.
  const [wayX, wayY] = unit(minus(opposite, corner)) ?? [1, 0];
  const middle = plus(corner, [wayX, wayY], ROUND / 3);
  const fit: Fit = { scale, origin: [centre[0] - middle[0] * scale, centre[1] + middle[1] * scale] };
  return [
    circle(centre, radius, null, 'white'),
    ...elevationMarks(clippedTo(over, discWindow(middle, ROUND)), fit),
    ...tapeFrom(onPaper(fit, corner), [wayX, -wayY], (4 / 3) * radius - 0.6),
    circle(centre, radius, pens.enlarged),
  ];
}

/** A tape from where its hook is, so long on paper; its one edge is on the line that is measured. */
function tapeFrom(hook: Vec2, way: Vec2, long: number): readonly Mark[] {
  const side: Vec2 = [-way[1], way[0]];
  const at = (along: number, aside: number): Vec2 => plus(plus(hook, way, along), side, aside);
  const marks = Array.from({ length: Math.floor(long / TAPE.mark) }, (_, index) => index + 1);
  const body = [at(0, 0), at(long - 1.5, 0), at(long - 2.2, TAPE.wide), at(0, TAPE.wide)];
  return [
    area('white', body), outline(pens.motion, body),
    ...marks.filter((index) => index * TAPE.mark < long - 3).map((index) => line(pens.edge, at(index * TAPE.mark, 0), at(index * TAPE.mark, index % 5 === 0 ? TAPE.long : TAPE.short))),
    line(band(1.3), at(-0.3, -TAPE.hook), at(-0.3, TAPE.wide + TAPE.hook)),
  ];
}
