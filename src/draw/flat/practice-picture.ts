import type { Vec2 } from '../../model/index.ts';
import { cornersOf } from '../kit/geometry.ts';
import { area, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { crossed, ticked } from '../kit/right-wrong.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import type { DrawnPicture } from '../types.ts';
import { numbered, onwards } from './trial.ts';
import { cutOutMarks, wasteMarks, type CutOut } from './waste.ts';

/** Height of the picture, and the middle of the bent pieces in it, mm of paper. */
const HIGH = 27;
const MIDDLE = 13;
/** A panel's section, enlarged: its thickness and that of a skin, half the length of an off-cut, mm of paper. */
const DEEP = 9;
const SKIN = 1.5;
const HALF = 12;
/** How far the tried off-cut is bent, rad. */
const BENT = 0.6;
/** Of either outcome, mm of paper from its left: the bent piece, the verdict, the way on, what is taken next and the numbers of what is done with it. */
const PLACES = { bent: 20.5, verdict: 40.5, way: 44.5, next: 52.5, numbers: 70.4 } as const;
const NEXT = { width: 14, height: 11 } as const;
const VERDICT = 1.4;

/** Numbers of the pictures that this one belongs to: its own, and that of the first of the two that are done once more. */
export interface Numbers {
  readonly own: number;
  readonly again: number;
}

/** What was cut on waste is bent: with its outer skin whole, then the panel; with the skin cut through, other waste; by the same steps. */
export const practicePicture = (panel: CutOut, numbers: Numbers, { width }: Pick<Paper, 'width'>): DrawnPicture => toPicture({ width, height: HIGH }, practiceMarks(panel, numbers, width));

/** The marks of the picture, for the tests. */
export function practiceMarks(panel: CutOut, { own, again }: Numbers, width: number): readonly Mark[] {
  const [well, badly] = [0, width / 2];
  const next = (from: number) => ({ x: from + PLACES.next, y: MIDDLE - NEXT.height / 2, ...NEXT });
  const outcome = (from: number, isThrough: boolean): readonly Mark[] => [
    ...bentPiece([from + PLACES.bent, MIDDLE], isThrough), ...(isThrough ? crossed : ticked)([from + PLACES.verdict, MIDDLE], VERDICT), ...onwards([from + PLACES.way, MIDDLE]),
    ...numbered([[from + PLACES.numbers, MIDDLE - 4], [from + PLACES.numbers, MIDDLE + 4]], again),
  ];
  return [
    ...numbered([[4.5, 4.6]], own), ...outcome(well, false), ...cutOutMarks(panel, next(well), false),
    line(pens.edge, [badly, 1], [badly, HIGH - 1]), ...outcome(badly - 1, true), ...wasteMarks(cornersOf(next(badly - 1))),
  ];
}

/** An off-cut cut down to its outer skin, which lies below, and bent up; or cut through. */
function bentPiece([x, y]: Vec2, isThrough: boolean): readonly Mark[] {
  return ([-1, 1] as const).flatMap((side) => {
    const gap = isThrough ? 1.6 : 0;
    const turned = (along: number, up: number): Vec2 => {
      const [a, u] = [along + gap, up];
      return [x + side * (a * Math.cos(BENT / 2) + u * Math.sin(BENT / 2)), y + DEEP / 2 + a * Math.sin(BENT / 2) - u * Math.cos(BENT / 2)];
    };
    const strip = (low: number, high: number, from: number): readonly Vec2[] => [turned(from, low), turned(HALF, low), turned(HALF, high), turned(from, high)];
    const cut = 0.5;
    return [
      area('core', strip(SKIN, DEEP - SKIN, cut)), ...[strip(0, SKIN, 0), strip(DEEP - SKIN, DEEP, cut)].flatMap((ring) => [area('panel', ring), outline(pens.cut, ring)]),
      line(pens.cut, turned(cut, SKIN), turned(cut, DEEP)),
    ];
  });
}
