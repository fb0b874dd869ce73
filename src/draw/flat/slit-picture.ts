import type { Vec2 } from '../../model/index.ts';
import { tell } from '../../scene/index.ts';
import { atMost } from '../kit/at-most.ts';
import { cutFace } from '../kit/cut-face.ts';
import { cornersOf } from '../kit/geometry.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, figure, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { crossed, ticked } from '../kit/right-wrong.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import type { Box, DrawnPicture } from '../types.ts';
import { eye } from './eye.ts';
import { tapeRoll } from './tape-roll.ts';
import { onwards } from './trial.ts';
import { cutOutMarks, type CutOut } from './waste.ts';

/** Height of the picture, mm of paper. */
const HIGH = 32;
/** A slit no longer than this is taped over from outside; with a longer one the fold has lost its hinge and the panel is made anew, mm (common practice, no source). */
export const LONGEST_SLIT = 30;
/** The panel in section, and its outer face: mm of paper. */
const SECTION: Box = { x: 2, y: 11, width: 22, height: 7 };
const FACE = { width: 23, height: 27, y: 2.5 } as const;
/** On the face, mm of paper: how long the slit is drawn, and the tape over it; half of what is missing of a panel cut through. */
const SLIT = 9;
const TAPE = { long: 17, wide: 6 } as const;
const GAP = 0.9;
const cap = capHeights.step;

/**
 * Where the knife went through the panel's outer skin: seen from outside. A short slit is taped over there, along the fold and past both of its
 * ends; with a long one the panel is made anew, from the step with the number told.
 */
export const slitPicture = (panel: CutOut, anew: number, { width }: Pick<Paper, 'width'>): DrawnPicture => toPicture({ width, height: HIGH }, slitMarks(panel, anew, width));

/** The marks of the picture, for the tests. */
export function slitMarks(panel: CutOut, anew: number, width: number): readonly Mark[] {
  const [short, taped, bar, long] = [33, 65, 106, 110];
  const told = tell.mm(LONGEST_SLIT);
  const middle = FACE.y + FACE.height / 2;
  return [
    ...cutThrough(), ...onwards([SECTION.x + SECTION.width + 1.5, middle]),
    ...outerFace(short, SLIT), ...atMost(told, [short + FACE.width / 2, middle + 6.4], cap), ...onwards([short + FACE.width + 1.5, middle]),
    ...outerFace(taped, SLIT), ...tapedOver([taped + FACE.width / 2, middle]), ...ticked([taped + FACE.width + 7, FACE.y + FACE.height - 4], 1.4),
    line(pens.edge, [bar, 1], [bar, HIGH - 1]),
    ...outerFace(long, FACE.width), ...crossed([long + FACE.width + 4.6, FACE.y + 5], 1.2), ...onwards([long + FACE.width + 1.5, middle]),
    ...cutOutMarks(panel, { x: width - 13.5, y: 2, width: 13, height: 13 }, true), ...eye([width - 15, 23], 9), figure(tell.number(anew), [width - 5, 23], capHeights.count, 700),
  ];
}

/** Across the fold: the knife's cut goes through both skins, and it is looked at from outside, below. */
function cutThrough(): readonly Mark[] {
  const { x, y, width, height } = SECTION;
  const middle = x + width / 2;
  const half = width / 2 - GAP;
  return [
    ...cutFace(cornersOf({ x, y, width: half, height })), ...cutFace(cornersOf({ x: middle + GAP, y, width: half, height })),
    ...eye([middle, y + height + 10], 9), line(pens.motion, [middle, y + height + 6], [middle, y + height + 4]), arrowhead([middle, y + height + 0.8], [0, -1], 3),
  ];
}

/** The panel's outer face from a place on, with so much of the fold slit, mm of paper. */
function outerFace(x: number, slit: number): readonly Mark[] {
  const box = { x, y: FACE.y, width: FACE.width, height: FACE.height };
  const y = FACE.y + FACE.height / 2;
  const [from, to]: Vec2 = [x + (FACE.width - slit) / 2, x + (FACE.width + slit) / 2];
  return [area('panel', cornersOf(box)), outline(pens.cut, cornersOf(box)), line(pens.halfCut, [x, y], [x + FACE.width, y]), line({ ...pens.motion, width: 1.6 }, [from, y], [to, y])];
}

/** Tape along the fold over the slit, from its roll. */
const tapedOver = ([x, y]: Vec2): readonly Mark[] => [area('ink', cornersOf({ x: x - TAPE.long / 2, y: y - TAPE.wide / 2, width: TAPE.long, height: TAPE.wide })), ...tapeRoll([x + TAPE.long / 2 - 0.5, y], [x + FACE.width / 2 + 8.4, y - 3])];
