import type { Vec2 } from '../../model/index.ts';
import { tell } from '../../scene/index.ts';
import { linearDimension } from '../kit/dimension.ts';
import { cornersOf } from '../kit/geometry.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, circle, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { crossed, ticked } from '../kit/right-wrong.ts';
import { toPicture } from '../kit/svg.ts';
import type { DrawnPicture } from '../types.ts';
import { handUp } from './hands.ts';
import { pencil } from './pencil.ts';

/** A sleeve to be drilled, and the tube in it, mm. */
export interface SleeveToDrill {
  /** From the middle of the arms to the end that the hole is nearer to, to the other end, and to the hole, towards the nearer end. */
  readonly near: number;
  readonly far: number;
  readonly hole: number;
  readonly outside: number;
  readonly tube: number;
  /** On which side of the picture the nearer end lies, as it does in the step. */
  readonly nearEnd: 'left' | 'right';
}

const cap = capHeights.step;
const HEIGHT = 60;
/** mm of paper to 1 mm: of the right way, and of the wrong one. */
const SCALE = { right: 0.7, wrong: 0.4 } as const;
/** How far the tube is seen beyond the sleeve, and the arm that goes off its middle, mm of paper. */
const BEYOND = { right: 5, wrong: 3 } as const;
const ARM = { right: 8, wrong: 5 } as const;

/** Along the tube: mm of paper to 1 mm; from the middle of the right one to that of a wrong one, and on to that of the next, as shares of the sleeve's width; how far off its middle the bit stands; their signs under them, mm of paper. */
const ALONG = { scale: 0.36, apart: 1.22, off: 0.28, sign: 15 } as const;
/** Half of a bit's width, and how far it is seen over the sleeve and under it, mm of paper. */
const BIT = { half: 1.5, over: 8, under: 3 } as const;

/**
 * The place of the hole measured from the nearer rim: tape hooked on that, pencil at the mark; and under a cross measured from the
 * other. Then seen along the tube: the bit through its middle; and, each over a cross, beside it, and through its middle into a hand that holds the tube from behind.
 */
export const sleeveMarkPicture = (drilled: SleeveToDrill, width: number): DrawnPicture => toPicture({ width, height: HEIGHT }, sleeveMarkMarks(drilled));

/** The marks of the picture, for the tests. */
export function sleeveMarkMarks(drilled: SleeveToDrill): readonly Mark[] {
  const { near: below, far: above, hole } = drilled;
  const far = below - hole;
  const y = 28;
  const right: Vec2 = [3 + BEYOND.right + above * SCALE.right, y];
  const rim = right[0] + below * SCALE.right;
  const mark = rim - far * SCALE.right;
  const low = y + (drilled.outside * SCALE.right) / 2;
  const end = rim + BEYOND.right;
  const start = end + 6;
  const wrong: Vec2 = [start + BEYOND.wrong + above * SCALE.wrong, y];
  const otherRim = wrong[0] - above * SCALE.wrong;
  const last = wrong[0] + below * SCALE.wrong + BEYOND.wrong;
  return [
    ...turnedTo(drilled.nearEnd, 3 + end, [
      ...jointFromSide(drilled, right, SCALE.right, BEYOND.right, ARM.right), ...markAcross(drilled, mark, y, SCALE.right), ...tapeFrom(rim, mark - 9, y - (drilled.outside * SCALE.right) / 2),
      ...pencilUp([mark, low]), ...linearDimension({ axis: 'x', told: tell.mm(far), ends: [mark, rim], line: low + 10, feature: low, cap }),
    ]),
    ...ticked([drilled.nearEnd === 'right' ? end + 1 : 3.4, y - 18]),
    ...turnedTo(drilled.nearEnd, start + last, [
      ...jointFromSide(drilled, wrong, SCALE.wrong, BEYOND.wrong, ARM.wrong), ...markAcross(drilled, otherRim + far * SCALE.wrong, y, SCALE.wrong),
      ...tapeFrom(otherRim, otherRim + far * SCALE.wrong + 6, y - (drilled.outside * SCALE.wrong) / 2),
    ]),
    ...crossed([drilled.nearEnd === 'right' ? last - 3 : start + 3, y - 18]),
    ...alongTube(drilled, [last + 2 + (drilled.outside * ALONG.scale) / 2, y]),
  ];
}

/** Round sleeve and tube with a bit from above through their middle, beside it, and once more through it with a hand under them. */
function alongTube({ outside, tube }: SleeveToDrill, [x, y]: Vec2): readonly Mark[] {
  const [rim, own] = [(outside * ALONG.scale) / 2, (tube * ALONG.scale) / 2];
  const drilledAt = (middle: number, bit: number, behind: readonly Mark[] = []): readonly Mark[] => {
    const left = bit - BIT.half;
    const long: readonly Vec2[] = [[left, y - rim - BIT.over], [left, y + rim + BIT.under], [bit, y + rim + BIT.under + 1.2], [left + 2 * BIT.half, y + rim + BIT.under], [left + 2 * BIT.half, y - rim - BIT.over]];
    return [
      circle([middle, y], rim, pens.cut, 'white'), circle([middle, y], own, pens.cut, 'panel'), ...behind, area('white', long), outline(pens.edge, long),
      ...[0.25, 0.5, 0.75].map((share) => line(pens.edge, [left, y - rim - BIT.over * share + 1], [left + 2 * BIT.half, y - rim - BIT.over * share - 1])),
    ];
  };
  const [beside, held] = [x + ALONG.apart * 2 * rim, x + ALONG.apart * 4 * rim];
  const sign = y + rim + ALONG.sign;
  return [
    ...drilledAt(x, x), ...ticked([x, sign]), ...drilledAt(beside, beside + ALONG.off * 2 * rim), ...crossed([beside, sign]),
    ...drilledAt(held, held, handUp([held, y + rim])), ...crossed([held, sign]),
  ];
}

/** Lines and areas drawn with the nearer end to the right, mirrored where it lies to the left; `ends` the sum of the drawing's left and right end, mm of paper. */
const turnedTo = (nearEnd: SleeveToDrill['nearEnd'], ends: number, marks: readonly Mark[]): readonly Mark[] => (nearEnd === 'right' ? marks : marks.map((mark): Mark => {
  const over = (points: readonly Vec2[]): readonly Vec2[] => points.map(([x, y]): Vec2 => [ends - x, y]);
  switch (mark.mark) {
    case 'line': return { ...mark, points: over(mark.points) };
    case 'area': return { ...mark, rings: mark.rings.map(over) };
    case 'figure': return { ...mark, centre: [ends - mark.centre[0], mark.centre[1]] };
    default: throw new RangeError(`a mark “${mark.mark}” cannot be mirrored here`);
  }
}));

const rectangle = (left: number, top: number, right: number, bottom: number): readonly Vec2[] => cornersOf({ x: left, y: top, width: right - left, height: bottom - top });
const solid = (ring: readonly Vec2[]): readonly Mark[] => [area('white', ring), outline(pens.cut, ring)];

/** Sleeve level with the tube through it, the end that is nearer to the hole to the right; an arm goes down from its middle. */
function jointFromSide({ near: below, far: above, outside, tube }: SleeveToDrill, [x, y]: Vec2, s: number, beyond: number, arm: number): readonly Mark[] {
  const [left, right, half] = [x - above * s, x + below * s, (outside * s) / 2];
  const foot = y + half + arm;
  return [
    ...solid(rectangle(left - beyond, y - (tube * s) / 2, right + beyond, y + (tube * s) / 2)),
    area('white', rectangle(x - half, y, x + half, foot)), line(pens.cut, [x - half, y + half], [x - half, foot]), line(pens.cut, [x + half, y + half], [x + half, foot]),
    line(pens.edge, [x - half, foot], [x - half / 3, foot - 1.4], [x + half / 3, foot + 1.4], [x + half, foot]),
    ...solid(rectangle(left, y - half, right, y + half)),
  ];
}

const markAcross = ({ outside }: SleeveToDrill, x: number, y: number, s: number): readonly Mark[] =>
  [line({ ...pens.motion, width: 0.9 }, [x, y - (outside * s) / 2], [x, y + (outside * s) / 2])];

/** A tape on the sleeve, its hook over the rim, from there to a place. */
function tapeFrom(rim: number, to: number, top: number): readonly Mark[] {
  const inwards = Math.sign(to - rim);
  const blade = rectangle(Math.min(rim, to), top - 5, Math.max(rim, to), top);
  const hook: readonly Vec2[] = [[rim, top - 5.6], [rim - inwards * 1.4, top - 5.6], [rim - inwards * 1.4, top + 3], [rim, top + 3]];
  const ticks = Array.from({ length: Math.floor(Math.abs(to - rim) / 2) }, (_, index) => rim + inwards * 2 * (index + 1));
  return [area('panel', blade), outline(pens.edge, blade), ...ticks.map((x, index) => line(pens.edge, [x, top], [x, top - (index % 5 === 4 ? 3.4 : 2)])), area('ink', hook)];
}

/** A pencil that comes from below on the left, its point at a place. */
const pencilUp = ([x, y]: Vec2): readonly Mark[] => pencil([x, y]).map((mark) => {
  const turned = (points: readonly Vec2[]): readonly Vec2[] => points.map(([px, py]): Vec2 => [2 * x - px, 2 * y - py]);
  if (mark.mark === 'line') return { ...mark, points: turned(mark.points) };
  return mark.mark === 'area' ? { ...mark, rings: mark.rings.map(turned) } : mark;
});
