import type { Vec2 } from '../../model/index.ts';
import { cornersOf } from '../kit/geometry.ts';
import { area, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import type { DrawnPicture } from '../types.ts';
import { knifeFromAbove, paddedKnife } from './padded-knife.ts';
import { crossMark, onwards, passed, TRIAL, tickMark, triedAnew } from './trial.ts';
import { wasteMarks, type CutOut } from './waste.ts';

/** A panel's section, enlarged: its thickness and that of a skin, half the length of an off-cut, mm of paper. */
const DEEP = 9;
const SKIN = 1.5;
const HALF = 15;
/** How far the tried off-cut is bent, rad. */
const BENT = 0.6;

/** First on waste: cut, bent, its outer skin whole, then the panel; with the skin cut through, waste once more. */
export const practicePicture = (panel: CutOut, { width }: Pick<Paper, 'width'>): DrawnPicture => toPicture({ width, height: TRIAL.high }, practiceMarks(panel, width));

/** The marks of the picture, for the tests. */
export function practiceMarks(panel: CutOut, width: number): readonly Mark[] {
  const at = (share: number): Vec2 => [width * share, TRIAL.section];
  const [cut, well, badly] = [at(0.335), at(0.6), at(0.86)];
  return [
    ...wasteMarks(cornersOf(TRIAL.waste)), line(pens.halfCut, [TRIAL.waste.x, TRIAL.line], [TRIAL.waste.x + TRIAL.waste.width, TRIAL.line]),
    ...knifeFromAbove([TRIAL.waste.x + 10, TRIAL.line], 4.4), ...onwards([TRIAL.waste.x + 17, TRIAL.line + 2.6]),
    ...onwards([width * 0.335 - HALF - 9, TRIAL.section]), ...section(cut, 0, false), ...paddedKnife([cut[0], cut[1] - DEEP / 2], DEEP - SKIN, 15),
    ...onwards([width * 0.335 + HALF + 3, TRIAL.section]),
    ...section(well, BENT, false), ...tickMark([well[0] - 12, TRIAL.verdict]), ...passed([well[0] - 6, TRIAL.verdict], panel),
    ...section(badly, BENT, true), ...crossMark([badly[0] - 12, TRIAL.verdict]), ...triedAnew([badly[0] - 6, TRIAL.verdict]),
  ];
}

/** An off-cut cut down to its outer skin, which lies below, and bent up by so much; or cut through. */
function section([x, y]: Vec2, bent: number, isThrough: boolean): readonly Mark[] {
  return ([-1, 1] as const).flatMap((side) => {
    const gap = isThrough ? 1.6 : 0;
    const turned = (along: number, up: number): Vec2 => {
      const [a, u] = [along + gap, up];
      return [x + side * (a * Math.cos(bent / 2) + u * Math.sin(bent / 2)), y + DEEP / 2 + a * Math.sin(bent / 2) - u * Math.cos(bent / 2)];
    };
    const strip = (low: number, high: number, from: number): readonly Vec2[] => [turned(from, low), turned(HALF, low), turned(HALF, high), turned(from, high)];
    const cut = 0.5;
    return [
      area('core', strip(SKIN, DEEP - SKIN, cut)), ...[strip(0, SKIN, 0), strip(DEEP - SKIN, DEEP, cut)].flatMap((ring) => [area('panel', ring), outline(pens.cut, ring)]),
      line(pens.cut, turned(cut, SKIN), turned(cut, DEEP)),
    ];
  });
}
