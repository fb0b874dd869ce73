import type { Vec2 } from '../../model/index.ts';
import { tell } from '../../scene/index.ts';
import { atMost, moreThan } from '../kit/at-most.ts';
import { cutFace } from '../kit/cut-face.ts';
import { linearDimension } from '../kit/dimension.ts';
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

/** Height of a row of the picture, mm of paper, and of the whole. */
const ROW = 32;
const HIGH = 2 * ROW + 3;
/** A slit no longer than this is taped over from outside; with a longer one the fold has lost its hinge and the panel is made anew, mm (common practice, no source). */
export const LONGEST_SLIT = 30;
/** The panel in section, and its outer face: mm of paper. */
const SECTION: Box = { x: 2, y: 11, width: 22, height: 7 };
const FACE = { width: 23, height: 27, y: 2.5 } as const;
/** On the face, mm of paper: how long a slit is drawn that is taped over, and the tape; and one that is too long. */
const SLIT = 9;
const TAPE = { long: 17, wide: 6 } as const;
const TOO_LONG = 14;
/** Half of what is missing of a panel cut through. */
const GAP = 0.9;
/** In the lower row, from the left, mm of paper: both faces, the panel that is spoilt, the new sheet, the eye and the number of the step. */
const BELOW = { faces: [2, 30], spoilt: 67, sheet: 107, eye: 149, number: 159 } as const;
const cap = capHeights.step;

/**
 * Where the knife went through the panel's outer skin: seen from outside. A short slit is taped over there, along the fold and past both of its
 * ends; with a longer one, be it short of the whole fold, the panel is spoilt: one more sheet is fetched, sides in mm, and the panel made anew,
 * from the step with the number told.
 */
export const slitPicture = (panel: CutOut, anew: Anew, { width }: Pick<Paper, 'width'>): DrawnPicture => toPicture({ width, height: HIGH }, slitMarks(panel, anew, width));

/** From which step a panel is made anew, and the sides of the sheet that it is cut from, mm. */
export interface Anew {
  readonly step: number;
  readonly sheet: readonly [number, number];
}

/** The marks of the picture, for the tests. */
export function slitMarks(panel: CutOut, anew: Anew, width: number): readonly Mark[] {
  const [short, taped] = [33, 65];
  const told = tell.mm(LONGEST_SLIT);
  const middle = FACE.y + FACE.height / 2;
  return [
    ...cutThrough(), ...onwards([SECTION.x + SECTION.width + 1.5, middle]),
    ...outerFace(short, SLIT), ...atMost(told, [short + FACE.width / 2, middle + 6.4], cap), ...onwards([short + FACE.width + 1.5, middle]),
    ...outerFace(taped, SLIT), ...tapedOver([taped + FACE.width / 2, middle]), ...ticked([taped + FACE.width + 7, FACE.y + FACE.height - 4], 1.4),
    line(pens.edge, [1, ROW + 1.5], [width - 1, ROW + 1.5]),
    { mark: 'placed', at: [0, ROW + 3], marks: madeAnew(panel, anew, width / WIDE) },
  ];
}

/** The width that the places below are told for, mm of paper. */
const WIDE = 165;

/** Slits that are too long, the panel spoilt by them, one more sheet, and from which step it is made into a panel. */
function madeAnew(panel: CutOut, { step, sheet }: Anew, wide: number): readonly Mark[] {
  const middle = FACE.y + FACE.height / 2;
  const [one, other] = BELOW.faces.map((x) => x * wide) as [number, number];
  const [spoilt, fresh] = [BELOW.spoilt * wide, BELOW.sheet * wide];
  return [
    ...outerFace(one, TOO_LONG), ...moreThan(tell.mm(LONGEST_SLIT), [one + FACE.width / 2, middle + 6.4], cap), ...outerFace(other, FACE.width),
    ...onwards([other + FACE.width + 1.5, middle]),
    ...cutOutMarks(panel, { x: spoilt, y: middle - 11, width: 20, height: 22 }, false), ...crossed([spoilt + 10, middle], 3),
    ...onwards([spoilt + 23, middle]), ...newSheet([fresh, middle], sheet, wide), ...onwards([(BELOW.eye - 13) * wide, middle]),
    ...eye([BELOW.eye * wide, middle], 9), figure(tell.number(step), [BELOW.number * wide, middle], capHeights.count, 700),
  ];
}

/** One more sheet of panel, dashed because it is not there yet: the middle of its left side. */
function newSheet([x, y]: Vec2, [long, high]: Anew['sheet'], wide: number): readonly Mark[] {
  const across = 27 * wide;
  const down = (across * high) / long;
  const ring = cornersOf({ x, y: y - down / 2, width: across, height: down });
  return [
    outline(pens.halfCut, ring), figure(tell.letters('+1'), [x + across / 2, y], capHeights.count, 700),
    ...linearDimension({ axis: 'x', told: tell.mm(long), ends: [x, x + across], line: y - down / 2 - 2.4, feature: y - down / 2, cap }),
    ...linearDimension({ axis: 'y', told: tell.mm(high), ends: [y + down / 2, y - down / 2], line: x - 2.2, feature: x, cap }),
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
