import type { Vec2 } from '../../model/index.ts';
import { tell, type Told } from '../../scene/index.ts';
import { cornersOf } from '../kit/geometry.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, figure, line, outline, toldWidth, type Mark } from '../kit/marks.ts';
import { band, pens } from '../kit/pens.ts';
import { crossed, ticked } from '../kit/right-wrong.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import type { DrawnPicture } from '../types.ts';

/** The string is held so far from the post at its top, mm: over the sleeves that stand out from it. */
const OFF = 30;
/** A post may be out of plumb by so much of its height, and is not looked at closer than to so many mm: common practice, no source. */
const OUT = { share: 1 / 200, least: 2 } as const;

/** How far the string may be from a post's foot, mm, where it hangs `OFF` from its top. */
export function plumbAtFoot(height: number): readonly [number, number] {
  const out = Math.max(OUT.least, Math.round(height * OUT.share));
  return [OFF - out, OFF + out];
}

const HEIGHT = 56;
/** Where it is told what is right and what is wrong, under each. */
const SIGN = 51;
const cap = capHeights.step;
/** The frame on paper, mm: half its width, its top and its feet, and how far its top leans in the wrong one. */
const FRAME = { half: 13, top: 10, foot: 44, leans: 7, post: 3 } as const;
/** From the post's side to the string, and from there to the figures, mm of paper. */
const STRING = 9;
/** From the top and from the foot to where it is measured, mm of paper. */
const IN = { top: 4, foot: 10 } as const;

/** The work seen from one side, a plumb line before its post: as far from it at the foot as at the top, or under a cross not, and which way it is pushed then. At last from above where the string hangs: on two sides of a post. */
export const plumbPicture = (height: number, { width }: Pick<Paper, 'width'>): DrawnPicture => toPicture({ width, height: HEIGHT }, plumbMarks(height, width));

/** The marks of the picture, for the tests. */
export function plumbMarks(height: number, width: number): readonly Mark[] {
  const [right, wrong, above] = [width * 0.17, width * 0.59, width * 0.9];
  const [lowest, highest] = plumbAtFoot(height);
  const [least, most] = [tell.mm(lowest), tell.mm(highest)];
  const [top, foot] = [FRAME.top + IN.top, FRAME.foot - IN.foot];
  const string = right + FRAME.half + STRING;
  // Over the feet of the wrong one, where its top is.
  const leaning = wrong + FRAME.leans;
  const range: Vec2 = [string + 3, foot];
  const dash = range[0] + toldWidth(least, cap, 700);
  return [
    ...frame(right, 0), ...plumbLine(string, right - FRAME.half), ...between(right + FRAME.half, string, top), ...between(right + FRAME.half, string, foot),
    ...after(tell.mm(OFF), [string + 3, top]), ...after(least, range),
    line(pens.motion, [dash + 1.4, foot], [dash + 4.2, foot]), ...after(most, [dash + 5.6, foot]),
    ...ticked([right, SIGN]),
    ...frame(wrong, FRAME.leans), ...plumbLine(leaning + FRAME.half + STRING, leaning - FRAME.half), ...crossed([wrong, SIGN]),
    ...pushed([leaning + FRAME.half + FRAME.post + 1, FRAME.top + 2]),
    ...fromAbove([above, (FRAME.top + FRAME.foot) / 2]),
  ];
}

const after = (told: Told, [x, y]: Vec2): readonly Mark[] => [figure(told, [x + toldWidth(told, cap, 700) / 2, y], cap, 700)];

/** Posts, rails and the floor; the top leans to the right by so many mm of paper. */
function frame(x: number, leans: number): readonly Mark[] {
  const { half, top, foot, post } = FRAME;
  const at = (y: number): number => (leans * (foot - y)) / (foot - top);
  const bar = (side: number): readonly Vec2[] => [[x + side * half - post / 2 + at(top), top], [x + side * half + post / 2 + at(top), top], [x + side * half + post / 2, foot], [x + side * half - post / 2, foot]];
  const rail = (y: number): readonly Vec2[] => [[x - half + at(y), y - post / 2], [x + half + at(y), y - post / 2], [x + half + at(y + post), y + post / 2], [x - half + at(y + post), y + post / 2]];
  return [
    ...[top + 6, foot - 8].flatMap((y) => [area('white', rail(y)), outline(pens.cut, rail(y))]),
    ...[-1, 1].flatMap((side) => [area('panel', bar(side)), outline(pens.cut, bar(side))]),
    line({ ...pens.cut, width: 0.5 }, [x - half - 6, foot], [x + half + STRING + 6 + leans, foot]),
  ];
}

/** A bob on its string, tied round a stick that lies on the top from post to post. */
const plumbLine = (x: number, posts: number): readonly Mark[] => [
  ...stick(posts - FRAME.post, x + 3), line({ ...pens.motion, width: 0.4 }, [x, FRAME.top - STICK], [x, FRAME.foot - 2.4]),
  ...[-0.5, 0.5].map((by) => line({ ...pens.motion, width: 0.6 }, [x + by, FRAME.top - STICK - 0.4], [x + by, FRAME.top + 0.4])),
  area('ink', [[x - 1.6, FRAME.foot - 5.6], [x + 1.6, FRAME.foot - 5.6], [x + 1.6, FRAME.foot - 3.2], [x, FRAME.foot - 0.4], [x - 1.6, FRAME.foot - 3.2]]),
];

/** Thickness of the stick, mm of paper. */
const STICK = 2.4;

function stick(from: number, to: number): readonly Mark[] {
  const box = cornersOf({ x: from, y: FRAME.top - STICK, width: to - from, height: STICK });
  return [area('white', box), outline(pens.cut, box)];
}

/** From a post to the string. */
const between = (post: number, string: number, y: number): readonly Mark[] => {
  const from = post + FRAME.post / 2;
  return [line(pens.dimension, [from, y], [string, y]), arrowhead([from, y], [-1, 0]), arrowhead([string, y], [1, 0])];
};

/** From above: half of the work's sides, half of a post, and from its side to the string, mm of paper. */
const PLAN = { half: [8, 7], post: 1.5, string: 4 } as const;

/** Seen from above, the two places of the string: beside a post, and before it. */
function fromAbove([x, y]: Vec2): readonly Mark[] {
  const [wide, high] = PLAN.half;
  const square = (at: Vec2, half: number): readonly Vec2[] => cornersOf({ x: at[0] - half, y: at[1] - half, width: 2 * half, height: 2 * half });
  const posts = [[-1, -1], [1, -1], [-1, 1], [1, 1]].map(([along = 0, across = 0]): Vec2 => [x + along * wide, y + across * high]);
  const post: Vec2 = [x + wide, y + high];
  const strings: readonly Vec2[] = [[post[0] + PLAN.post + PLAN.string, post[1]], [post[0], post[1] + PLAN.post + PLAN.string]];
  return [
    outline(pens.cut, cornersOf({ x: x - wide, y: y - high, width: 2 * wide, height: 2 * high })),
    ...posts.flatMap((at) => [area('panel', square(at, PLAN.post)), outline(pens.cut, square(at, PLAN.post))]),
    ...strings.flatMap((at, index) => [
      line(pens.dimension, [post[0] + (index === 0 ? PLAN.post : 0), post[1] + (index === 0 ? 0 : PLAN.post)], at), area('ink', square(at, 1.3)),
    ]),
  ];
}

/** Its top is pushed back. */
const pushed = ([x, y]: Vec2): readonly Mark[] => [line(band(1.4), [x + 8, y], [x + 4, y]), arrowhead([x, y], [-1, 0], 4.4, 3.6)];
