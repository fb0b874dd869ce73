import type { BracedFace, CableEnds, CableLoop, Vec2 } from '../../../model/index.ts';
import { tell } from '../../../scene/index.ts';
import { linearDimension } from '../../kit/dimension.ts';
import { cornersOf } from '../../kit/geometry.ts';
import { capHeights } from '../../kit/lettering.ts';
import { area, circle, figure, line, outline, ringedNumeral, type Mark } from '../../kit/marks.ts';
import { pens } from '../../kit/pens.ts';
import { toPicture, type Paper } from '../../kit/svg.ts';
import type { DrawnPicture } from '../../types.ts';
import { coil, cutEnd, drawnStrand, smooth, stands } from './rope.ts';

/** Cables of one length: how many, how they are cut and tied. Lengths in mm. */
export interface CableCut extends CableEnds {
  readonly count: number;
  readonly loop: CableLoop;
  /** How far each gives way under a mass when it is taut. */
  readonly test: { readonly mass: number; readonly most: number };
  /** The face that they brace. */
  readonly face: BracedFace;
}

const cap = capHeights.step;
/** Height of the picture, mm of paper. */
export const CUT_HIGH = 40;
/** Place of the cord under its upper edge, the cord's left end and the mark left of the paper's right edge, mm of paper. */
const CORD = 20;
const LEFT = 26;
const RIGHT = 46;
/** Left of the middle a stretch of cord and tape is left out, mm of paper. */
const LEFT_OUT = 3;

/**
 * A length of cable measured off the coil, marked and cut: the tape along it, the pencil at its length, sticky tape wound round the mark,
 * the knife through the middle of that, so that neither end frays: common practice, no source.
 */
export const cableCutPicture = (cable: CableCut, { width }: Paper): DrawnPicture => toPicture({ width, height: CUT_HIGH }, cableCutMarks(cable, width));

/** The marks of the picture, for the tests. */
export function cableCutMarks(cable: CableCut, width: number): readonly Mark[] {
  const [mark, y] = [width - RIGHT, CORD];
  return [...cordCutMarks(cable, width), step(1, [LEFT + 12, y - 14]), step(2, [mark + 14, y - 11.5]), step(3, [mark - 22, y + 11]), step(4, [mark + 4, y + 14.5])];
}

/** The same without its numbers, where others are numbered beside it. */
export function cordCutMarks(cable: Pick<CableCut, 'count' | 'cut'>, width: number): readonly Mark[] {
  const [mark, y] = [width - RIGHT, CORD];
  const middle = (LEFT + mark) / 2;
  const pieces: readonly Vec2[] = [[LEFT, middle - LEFT_OUT / 2], [middle + LEFT_OUT / 2, mark]];
  return [
    figure(tell.times(cable.count), [9, y], capHeights.count, 700),
    ...drawnStrand(stands([LEFT, y], [middle - LEFT_OUT / 2, y])), ...drawnStrand(stands(...smooth([middle + LEFT_OUT / 2, y], [mark + 4, y], [mark + 14, y + 1], [mark + 21, y + 4.5]))), ...cutEnd([LEFT, y], [-1, 0]), ...wound([LEFT + 2, y], 4),
    ...coil([mark + 28, y + 6]),
    ...pieces.flatMap(([from, to]) => tape([from, y - 2.2], to)), ...[middle - LEFT_OUT / 2, middle + LEFT_OUT / 2].map((x) => leftOut([x, y])),
    ...linearDimension({ axis: 'x', told: tell.mm(cable.cut), ends: [LEFT, mark], line: y - 10, feature: y - 6, cap }),
    ...wound([mark, y], 8), ...rollAt([mark - 11, y + 10], [mark - 2.6, y + 1.2]),
    line({ ...pens.motion, width: 1 }, [mark, y - 2], [mark, y + 2]), ...pencilAt([mark, y - 1.6]),
    ...knifeAt([mark, y + 1.6]),
  ];
}

/** The tape from a place to another on its right, its ticks at the cord. */
function tape([x, y]: Vec2, to: number): readonly Mark[] {
  const ring = cornersOf({ x, y: y - 3.4, width: to - x, height: 3.4 });
  const ticks = Array.from({ length: Math.floor((to - x - 0.5) / 4) }, (_, index) => x + 4 * (index + 1));
  return [area('white', ring), outline(pens.edge, ring), ...ticks.map((at, index) => line(pens.edge, [at, y], [at, y - (index % 5 === 4 ? 2.2 : 1.2)]))];
}

/** Sticky tape wound round the cord, so wide. */
function wound([x, y]: Vec2, wide: number): readonly Mark[] {
  const box = cornersOf({ x: x - wide / 2, y: y - 1.7, width: wide, height: 3.4 });
  return [area('core', box), outline(pens.edge, box)];
}

/** A roll of sticky tape, its end leading to a place on the cord. */
const rollAt = ([x, y]: Vec2, to: Vec2): readonly Mark[] => [
  line({ ...pens.motion, width: 1.3 }, [x + 2.4, y - 3.9], to), line({ ...pens.motion, width: 0.8, colour: 'core' }, [x + 2.4, y - 3.9], to),
  circle([x, y], 4.6, pens.cut, 'core'), circle([x, y], 2.4, pens.edge, 'white'),
];

/** The edge of a stretch that is left out. */
const leftOut = ([x, y]: Vec2): Mark => line(pens.edge, ...smooth([x + 0.4, y - 7], [x - 0.5, y - 4], [x + 0.5, y - 1], [x - 0.4, y + 2.4]));

const step = (place: number, at: Vec2): Mark => ringedNumeral(tell.number(place), at, capHeights.order, pens.edge);

/** A pencil whose point is on a place, leaning to the right. */
export function pencilAt([x, y]: Vec2): readonly Mark[] {
  const ring: readonly Vec2[] = [[x, y], [x + 1, y - 3.4], [x + 5.6, y - 11.2], [x + 7.8, y - 10], [x + 3.1, y - 2.2]];
  return [area('white', ring), outline(pens.cut, ring), area('ink', [[x, y], [x + 0.4, y - 1.5], [x + 1.3, y - 0.9]])];
}

/** A knife on the mark from below: its blade, scored to be snapped off, and its body with the slide. */
function knifeAt([x, y]: Vec2): readonly Mark[] {
  const on = (along: number, across: number): Vec2 => [x + 0.82 * along - 0.57 * across, y + 0.57 * along + 0.82 * across];
  const [blade, body, slide] = [[on(0, 0), on(10, 0), on(10, 3), on(2.2, 3)], [on(9, -0.6), on(20, -0.6), on(21, 0.4), on(21, 3), on(20, 4), on(9, 4)], [on(13, 0.9), on(17, 0.9), on(17, 2.5), on(13, 2.5)]] as const;
  return [
    area('white', blade), outline(pens.cut, blade), ...[4.4, 6.8].map((at) => line(pens.edge, on(at, 0), on(at - 1.2, 3))),
    area('panel', body), outline(pens.cut, body), area('ink', slide),
  ];
}
