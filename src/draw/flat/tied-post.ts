import { MOUTH, type Vec2 } from '../../model/index.ts';
import { tell } from '../../scene/index.ts';
import { hatching } from '../kit/hatching.ts';
import { cornersOf } from '../kit/geometry.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, circle, figure, line, outline, ringedNumeral, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { ticked } from '../kit/right-wrong.ts';
import type { Frame } from './cable/knots.ts';
import { cutEnd, drawnStrand, goes, moves, pull, smooth, stands, type Strand } from './cable/rope.ts';
import { woven, type Passes } from './cable/woven.ts';
import type { WallShown } from './wall-pieces.ts';

/** Height of the picture and the middle of its row, mm of paper. */
export const TIED_HIGH = 48;
const MIDDLE = 27;
/** A bracket from above with its post, mm of paper, to no scale: half of the wall and of the plate, their thickness; half of the arm; from the wall to the jaws' middle; radii of the post and of the jaws; half of the jaws' mouth, rad; half of their height. */
const HELD = { wall: 15, plate: 11, thick: 1.6, arm: 1.7, reach: 23, post: 5.9, inside: 6.3, outside: 7.9, mouth: Math.asin(MOUTH), high: 6.6 } as const;
/** Where the cord lies under the arm, and where it crosses over it, from the wall, mm of paper. */
const ARM = { under: 5.4, over: 10.6 } as const;
/** From the left edge to the wall's face, or to the post's axis, of each frame, mm of paper. */
const FRAMES = [14, 62, 126] as const;
/** What is seen from the room is drawn so many times as large, for the knot to be seen. */
const LARGER = 1.3;

/**
 * How a post is tied into a bracket whose jaws are open to the room: the cord under the bracket's arm, its ends crossed over the arm and drawn
 * past the jaws on both sides, knotted before the post, twice. The cord goes round the arm, so that the jaws stop it: a
 * cord that only lies round the post would come off with it. Common practice, no source.
 */
export function tiedPost(wall: WallShown, first: number): readonly Mark[] {
  return [underArm, crossedOver, knotted].flatMap((frame, index) => {
    const x = FRAMES[index] ?? 0;
    return [ringedNumeral(tell.number(first + index), [x - (index < 2 ? 2.4 : 13), 5], capHeights.order, pens.edge), ...frame(wall)([x, MIDDLE])];
  });
}

/** Points of a frame round its wall's face or its post's axis. */
const about = ([x, y]: Vec2) => (...points: readonly Vec2[]): readonly Vec2[] => points.map(([dx, dy]): Vec2 => [x + dx, y + dy]);
const place = ([x, y]: Vec2, [dx, dy]: Vec2): Vec2 => [x + dx, y + dy];

/** Wall, plate, arm, and the post in the jaws, from above; what lies under the arm is drawn before it. */
function fromAbove({ kind }: WallShown, [x, y]: Vec2, under: readonly Mark[]): readonly Mark[] {
  const wall = cornersOf({ x: x - 4.5, y: y - HELD.wall, width: 4.5, height: 2 * HELD.wall });
  const plate = cornersOf({ x, y: y - HELD.plate, width: HELD.thick, height: 2 * HELD.plate });
  const arm = cornersOf({ x: x + HELD.thick, y: y - HELD.arm, width: HELD.reach - HELD.inside - HELD.thick, height: 2 * HELD.arm });
  const middle: Vec2 = [x + HELD.reach, y];
  const arc = (radius: number): readonly Vec2[] => Array.from({ length: 33 }, (_, index): Vec2 => {
    const angle = HELD.mouth + ((2 * Math.PI - 2 * HELD.mouth) * index) / 32;
    return [middle[0] + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
  const jaws = [...arc(HELD.outside), ...arc(HELD.inside).toReversed()];
  return [
    area('core', wall), ...(kind === 'masonry' ? hatching(wall, 2.4).map(([from, to]) => line(pens.edge, from, to)) : []), outline(pens.cut, wall), ...under,
    ...[plate, arm, jaws].flatMap((ring) => [area('panel', ring), outline(pens.cut, ring)]), circle(middle, HELD.post, pens.cut, 'white'), circle(middle, HELD.post - 1.2, pens.edge, 'core'),
  ];
}

/** The cord's middle is laid under the arm; its ends go up and over it to the other side. */
const underArm = (wall: WallShown): Frame => (at) => {
  const [upper, lower] = about(at)([ARM.under, -13], [ARM.under, 13]) as [Vec2, Vec2];
  return [
    ...fromAbove(wall, at, drawnStrand(moves(upper, lower))), ...cutEnd(upper, [0, -1]), ...cutEnd(lower, [0, 1]),
    ...goes(...smooth(...about(at)([ARM.under + 2.4, -11], [ARM.under + 5, -7], [ARM.under + 5.6, -1], [ARM.under + 6.4, 5]))),
    ...ticked(place(at, [HELD.reach + 3, 13])),
  ];
};

/** From under the arm over it, and past the jaws on the other side: the end that begins above goes on below, and the other way round. */
const half = (at: Vec2, side: 1 | -1): Strand => moves(...smooth(...about(at)(...([[ARM.under, 1.6], [ARM.under + 0.4, 4.2], [ARM.under + 2.4, 4.6], [ARM.over, 0], [ARM.over + 2.6, -6], [ARM.over + 6, -9.4], [HELD.reach, -10.4], [HELD.reach + 5, -9.4], [HELD.reach + 10.6, -6.6]] as const).map(([x, y]): Vec2 => [x, side * y]))));

/** The ends crossed over the arm and drawn past the jaws into the room. */
const crossedOver = (wall: WallShown): Frame => (at) => {
  const under = drawnStrand(stands(...about(at)([ARM.under, -1.8], [ARM.under, 1.8])));
  const end: Vec2 = [HELD.reach + 10.6, 6.6];
  return [
    ...fromAbove(wall, at, under), ...woven([half(at, 1), half(at, -1)], ['o']),
    ...([1, -1] as const).flatMap((side) => [...cutEnd(place(at, [end[0], side * end[1]]), [1, -0.45 * side]), ...pull(place(at, [end[0] + 2, side * (end[1] - 0.6)]), [0.92, -0.4 * side], 1)]),
  ];
};

/** Points of what is seen from the room. */
const large = (at: Vec2, points: readonly Vec2[]): readonly Vec2[] => points.map((point) => place(at, [LARGER * point[0], LARGER * point[1]]));

/** The post with the jaws on both sides of it, seen from the room. */
function fromRoom(at: Vec2): readonly Mark[] {
  const box = (left: number, right: number, high: number): readonly Vec2[] => large(at, [[left, -high], [right, -high], [right, high], [left, high]]);
  const ends = HELD.inside * Math.sin(HELD.mouth);
  return [
    area('white', box(-HELD.post, HELD.post, 13)), ...[-HELD.post, HELD.post].map((x) => line(pens.cut, ...large(at, [[x, -13], [x, 13]]))),
    ...[box(-HELD.outside, -ends, HELD.high), box(ends, HELD.outside, HELD.high)].flatMap((ring) => [area('panel', ring), outline(pens.cut, ring)]),
  ];
}

/** One end of the knot, on the left: in under the other's bight, over its cord, behind both and back the same way; it ends on its own side. */
const KNOT: readonly Vec2[] = [[-5.6, -2.5], [0, -4.4], [4, -5.6], [7, 0], [4, 5.6], [0, 4.4], [-5.6, 2.5], [-9, 3.2], [-11, 7]];
const PASSES: Passes = ['u', 'o', 'u', 'u', 'o', 'u'];

/** Where its left cord comes from, past the jaw; the right one comes from as far on the other side. */
const COMES: Vec2 = [-9.2, -2.5];

/** A reef knot round a place. */
function reefKnot(at: Vec2): readonly Mark[] {
  const end = (side: 1 | -1): Strand => moves(...smooth(...large(at, [COMES, ...KNOT].map(([x, y]): Vec2 => [side * x, y]))));
  return [...woven([end(1), end(-1)], PASSES), ...([1, -1] as const).flatMap((side) => cutEnd(large(at, [[-11 * side, 7]])[0] ?? at, [-0.5 * side, 1]))];
}

/** The ends knotted before the post, seen from the room, and drawn home: twice, one knot on the other. */
const knotted = (): Frame => (at) => [
  ...fromRoom(at), ...reefKnot(at),
  ...([1, -1] as const).flatMap((side) => pull(large(at, [[11.4 * side, 8.8]])[0] ?? at, [0.4 * side, 0.92], 1)),
  figure(tell.times(2), place(at, [24, -2]), capHeights.count, 700), ...ticked(place(at, [24, 9])),
];
