import type { Vec2 } from '../../model/index.ts';
import { tell } from '../../scene/index.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, line, outline, ringedNumeral, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import type { DrawnPicture } from '../types.ts';

/** Height of the strip, mm of paper. */
const HIGH = 38;
/** A panel's section, enlarged: its thickness and that of a skin, half the length of an off-cut, mm of paper. */
const DEEP = 10;
const SKIN = 1.6;
const HALF = 17;
/** How far the tried off-cut is bent, rad. */
const BENT = 0.6;

/** First on an off-cut: cut, bent, its outer skin whole; crossed out with the skin cut through; then the panel. */
export const practicePicture = ({ width }: Paper): DrawnPicture => toPicture({ width, height: HIGH }, practiceMarks(width));

/** The marks of the picture, for the tests. */
export function practiceMarks(width: number): readonly Mark[] {
  const at = (share: number): Vec2 => [width * share, HIGH / 2 + 2];
  const arrow = (share: number): readonly Mark[] => [line(pens.motion, [width * share - 4, HIGH / 2], [width * share + 2, HIGH / 2]), arrowhead([width * share + 6, HIGH / 2], [1, 0], 4)];
  return [
    ...[0.02, 0.38].map((share, index) => ringedNumeral(tell.number(index + 1), [width * share + 3, 6], capHeights.order, pens.edge)),
    ...section(at(0.15), 0, false), ...blade(at(0.15)), ...arrow(0.31),
    ...section(at(0.5), BENT, false), ...tick([width * 0.5, HIGH - 5]),
    ...section(at(0.83), BENT, true), ...cross([width * 0.83, HIGH - 5]),
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

/** A knife's blade in the cut, its point on the outer skin. */
function blade([x, y]: Vec2): readonly Mark[] {
  const tip = y + DEEP / 2 - SKIN;
  const ring: readonly Vec2[] = [[x, tip], [x - 1.2, tip - 4], [x - 1.2, tip - 20], [x + 1.2, tip - 20], [x + 1.2, tip - 4]];
  return [area('white', ring), outline(pens.cut, ring)];
}

const tick = ([x, y]: Vec2): readonly Mark[] => [line({ ...pens.motion, width: 1.2 }, [x - 3, y], [x - 1, y + 2.4], [x + 3.4, y - 3])];

const cross = ([x, y]: Vec2): readonly Mark[] => [line({ ...pens.motion, width: 1.2 }, [x - 2.6, y - 2.6], [x + 2.6, y + 2.6]), line({ ...pens.motion, width: 1.2 }, [x - 2.6, y + 2.6], [x + 2.6, y - 2.6])];
