import type { Vec2 } from '../../../model/index.ts';
import { area, line, outline, type Mark } from '../../kit/marks.ts';
import { earlier, pens } from '../../kit/pens.ts';
import { hatching } from '../../kit/hatching.ts';

/** Pitch of the hatching of off-cuts and, closer and crossed, of what is not to be used, mm of paper. */
const offCutPitch = 3;
const damagePitch = 1.6;

/** What is left over: hatched light, one way. */
export const offCutMarks = (ring: readonly Vec2[]): readonly Mark[] =>
  hatching(ring, offCutPitch).map(([from, to]) => line(earlier(pens.edge), from, to));

/** What is not to be used: hatched dark and crossed, edged. */
export function damageMarks(ring: readonly Vec2[]): readonly Mark[] {
  const flipped = ring.map(([x, y]): Vec2 => [x, -y]);
  return [
    area('white', ring),
    ...hatching(ring, damagePitch).map(([from, to]) => line(pens.damage, from, to)),
    ...hatching(flipped, damagePitch).map(([from, to]) => line(pens.damage, [from[0], -from[1]], [to[0], -to[1]])),
    outline(pens.edge, ring),
  ];
}
