import type { Vec2 } from '../../model/index.ts';
import { tell } from '../../scene/index.ts';
import { hatching } from '../kit/hatching.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, circle, figure, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { BALANCE, balanceHooked } from './balance.ts';
import { smooth, thinCord } from './cable/rope.ts';
import { ringOf, SCALE, type Bracket, type WallShown } from './wall-pieces.ts';

/** Radius of a post seen from above, mm of paper. */
export const POST = 3.6;
/** Half of the length of wall behind a bracket, mm of paper. */
const WALL = 7.4;
/** From the plate to the middle of the jaws, of what the kit's bracket reaches. */
const REACH = SCALE * 0.62;

/** From the wall to the middle of a bracket's jaws, mm of paper. */
export const reachFromAbove = ({ reach }: Pick<Bracket, 'reach'>): number => reach * REACH;

/** The wall behind a bracket. */
export function wallFromAbove(wall: WallShown, [x, y]: Vec2): readonly Mark[] {
  const ring = ringOf({ x: x - 4, y: y - WALL, width: 4, height: 2 * WALL });
  return [area('core', ring), ...(wall.kind === 'masonry' ? hatching(ring, 2.4).map(([from, to]) => line(pens.edge, from, to)) : []), outline(pens.cut, ring)];
}

/** Plate, web and the jaws of a bracket that are open to the front. */
export function clipFromAbove([x, y]: Vec2, reach: number): readonly Mark[] {
  const [plate, web] = [ringOf({ x, y: y - 5, width: 1.2, height: 10 }), ringOf({ x: x + 1.2, y: y - 0.9, width: reach - POST - 2, height: 1.8 })];
  const arc = (radius: number): readonly Vec2[] => Array.from({ length: 25 }, (_, index): Vec2 => {
    const angle = 0.85 + ((2 * Math.PI - 1.7) * index) / 24;
    return [x + reach + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
  const jaws = [...arc(POST + 1.5), ...arc(POST + 0.3).toReversed()];
  return [area('panel', plate), outline(pens.cut, plate), area('panel', web), outline(pens.cut, web), area('panel', jaws), outline(pens.cut, jaws)];
}

/** From the middle of the jaws to the cord's end, which a balance's hook holds, mm of paper. */
const CORD_END = POST + 5;
/** From the middle of one bracket to that of the other, mm of paper. */
const APART = 19;
/** From the middle between two brackets, or from that of one, to what the balance shows, mm of paper. */
const TOLD = 10.5;

/** What a balance's cord goes round: the web of the bracket, or the post that is tied into it. */
export type PulledAt = 'web' | 'post';

/** A balance hooked to a cord round the web of each bracket, or round the post that is tied into it, and drawn straight out, with what it shows: each of them holds. From the wall's face and the middle. */
export function pulledFromAbove(bracket: Bracket, wall: WallShown, { pull, count, by, hasPost = false }: { readonly pull: number; readonly count: number; readonly by: PulledAt; readonly hasPost?: boolean }, [x, y]: Vec2): readonly Mark[] {
  const reach = reachFromAbove(bracket);
  const rows = count === 1 ? [y] : [y - APART / 2, y + APART / 2];
  const middle = x + reach + CORD_END + BALANCE.hook + BALANCE.long / 2;
  return [
    ...rows.flatMap((row): readonly Mark[] => [...wallFromAbove(wall, [x, row]), ...clipFromAbove([x, row], reach), ...(by === 'post' ? tiedFromAbove([x, row], reach) : []), ...(hasPost ? postFromAbove([x + reach, row]) : []), ...cordFrom(by, [x, row], reach), ...balanceHooked([x + reach + CORD_END, row])]),
    figure(tell.mass(pull), [middle, count === 1 ? y + TOLD : y], capHeights.count, 700),
  ];
}

/** A post in the jaws, and the cord that ties it: from the web past both jaws, its knot before the post. */
export function tiedFromAbove([x, y]: Vec2, reach: number): readonly Mark[] {
  const [web, jaws] = [x + 1.2 + (reach - POST - 2) / 2, x + reach];
  return [
    ...postFromAbove([jaws, y]),
    ...[-1, 1].flatMap((side) => thinCord(...smooth([web, y - side * 1.6], [web + 2, y + side * 1.6], [jaws - POST + 0.6, y + side * (POST + 1)], [jaws, y + side * (POST + 2.6)], [jaws + POST - 1, y + side * (POST + 0.2)], [jaws + POST + 1.4, y]))),
    circle([jaws + POST + 1.2, y], 1.4, pens.cut, 'white'),
  ];
}

/** A post seen from above. */
export const postFromAbove = ([x, y]: Vec2): readonly Mark[] => [circle([x, y], POST, pens.cut, 'panel'), circle([x, y], POST - 0.9, pens.edge, 'fresh')];

/** The balance's cord to its hook. */
function cordFrom(by: PulledAt, [x, y]: Vec2, reach: number): readonly Mark[] {
  const [web, jaws] = [x + 1.2 + (reach - POST - 2) / 2, x + reach];
  const end = jaws + CORD_END;
  if (by === 'web') return [-1, 1].map((side) => line(CORD, [web, y], [web, y + side * 1.7], [jaws - 1, y + side * (POST + 2.4)], [jaws + 2, y + side * (POST + 2.4)], [end - 1, y]));
  const round = Array.from({ length: 13 }, (_, index): Vec2 => {
    const angle = 0.9 + ((2 * Math.PI - 1.8) * index) / 12;
    return [jaws + (POST + 0.4) * Math.cos(angle), y + (POST + 0.4) * Math.sin(angle)];
  });
  return [line(CORD, [end - 1, y], ...round, [end - 1, y])];
}

/** A cord seen from above. */
const CORD = { ...pens.motion, width: 0.7 };
