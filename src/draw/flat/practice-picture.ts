import type { Vec2 } from '../../model/index.ts';
import { cornersOf } from '../kit/geometry.ts';
import { area, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { crossed, ticked } from '../kit/right-wrong.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import type { Box, DrawnPicture } from '../types.ts';
import { numbered, onwards } from './trial.ts';
import { cutOutMarks, wasteMarks, type CutOut } from './waste.ts';

/** Height of the picture, mm of paper. */
const HIGH = 33;
/** A panel's section, enlarged: its thickness and that of a skin, half the length of an off-cut, mm of paper. */
const DEEP = 9;
const SKIN = 1.5;
const HALF = 12;
/** How far the tried off-cut is bent, rad. */
const BENT = 0.6;
/** Of an outcome, mm of paper from its left and top: the tried piece, the verdict; under them the way on, what is taken next and the numbers of what is done with it. */
const PLACES = { tried: [24, 11], verdict: [44, 11], way: [5, 26], next: [15, 20.5], numbers: 31, apart: 8 } as const;
const NEXT = { width: 11, height: 11 } as const;
const VERDICT = 1.4;

/** Numbers of the pictures that this one belongs to: its own; the one in which the blade gets its stop; and the two that are done once more, held and pulled. */
export interface Numbers {
  readonly own: number;
  readonly stop: number;
  readonly held: number;
  readonly pulled: number;
}

/** How the piece that was tried turns out: its outer skin whole, so that it bends; not cut down to that skin, so that it does not; cut through. */
type Outcome = 'bends' | 'stiff' | 'through';

/**
 * What was cut on waste is bent. With its outer skin whole: then the panel, by the same steps. Too stiff to bend: pulled once more.
 * With the skin cut through: the blade's stop once more, then other waste.
 */
export const practicePicture = (panel: CutOut, numbers: Numbers, { width }: Pick<Paper, 'width'>): DrawnPicture => toPicture({ width, height: HIGH }, practiceMarks(panel, numbers, width));

/** The marks of the picture, for the tests. */
export function practiceMarks(panel: CutOut, { own, stop, held, pulled }: Numbers, width: number): readonly Mark[] {
  const column = width / 3;
  const outcome = (place: number, how: Outcome, next: (box: Box) => readonly Mark[], then: readonly number[]): readonly Mark[] => {
    const at = ([x, y]: Vec2): Vec2 => [place * column + x, y];
    const [left, top] = at(PLACES.next);
    return [
      ...(place === 0 ? [] : [line(pens.edge, at([0, 1]), at([0, HIGH - 1]))]),
      ...triedPiece(at(PLACES.tried), how), ...(how === 'bends' ? ticked : crossed)(at(PLACES.verdict), VERDICT),
      ...onwards(at(PLACES.way)), ...next({ x: left, y: top, ...NEXT }),
      ...then.flatMap((number, index) => numbered([at([PLACES.numbers + index * PLACES.apart, PLACES.way[1]])], number)),
    ];
  };
  return [
    ...numbered([[4.5, 4.6]], own),
    ...outcome(0, 'bends', (box) => cutOutMarks(panel, box, false), [held, pulled]),
    ...outcome(1, 'stiff', ({ x, y }) => triedPiece([x + 5, y + 5.5], 'stiff', 0.55), [pulled]),
    ...outcome(2, 'through', (box) => wasteMarks(cornersOf(box)), [stop, held, pulled]),
  ];
}

/** Share of the core that is left where a blade did not go deep enough. */
const LEFT = 0.45;

/** An off-cut with its outer skin below, drawn larger by so much: cut down to that skin and bent up; not so deep, and straight; or cut through. */
function triedPiece([x, y]: Vec2, how: Outcome, by = 1): readonly Mark[] {
  const bent = how === 'stiff' ? 0 : BENT;
  const gap = how === 'through' ? 1.6 : 0;
  return ([-1, 1] as const).flatMap((side) => {
    const turned = (along: number, up: number): Vec2 => {
      const [a, u] = [along + gap, up];
      return [x + by * side * (a * Math.cos(bent / 2) + u * Math.sin(bent / 2)), y + by * (DEEP / 2 + a * Math.sin(bent / 2) - u * Math.cos(bent / 2))];
    };
    const strip = (low: number, high: number, from: number, to = HALF): readonly Vec2[] => [turned(from, low), turned(to, low), turned(to, high), turned(from, high)];
    const cut = 0.5;
    const bottom = how === 'stiff' ? SKIN + LEFT * (DEEP - 2 * SKIN) : SKIN;
    return [
      area('core', strip(SKIN, DEEP - SKIN, how === 'stiff' ? 0 : cut)), ...[strip(0, SKIN, 0), strip(DEEP - SKIN, DEEP, cut)].flatMap((ring) => [area('panel', ring), outline(pens.cut, ring)]),
      ...(how === 'stiff' ? [area('white', strip(bottom, DEEP - SKIN, 0, cut))] : []),
      line(pens.cut, turned(cut, bottom), turned(cut, DEEP)),
    ];
  });
}
