import type { Vec2 } from '../../model/index.ts';
import { cutFace } from '../kit/cut-face.ts';
import { cornersOf } from '../kit/geometry.ts';
import { area, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';

/** A blade between two off-cuts that stop it, mm of paper: half of the blade seen from the side, an off-cut, the tape round them. */
export const PADDED = { half: 1.3, wide: 7, high: 12, tape: 4.5, out: 1 } as const;

/** The padded knife in section: its pads stand on a face, its tip is so far under that, mm of paper; how far it reaches over the face, and how wide a pad is. */
export function paddedKnife([x, face]: Vec2, deep: number, up: number, wide: number = PADDED.wide): readonly Mark[] {
  const blade: readonly Vec2[] = [[x, face + deep], [x - PADDED.half, face + deep - 3.4], [x - PADDED.half, face - up], [x + PADDED.half, face - up], [x + PADDED.half, face + deep - 3.4]];
  const half = PADDED.half + wide + PADDED.out;
  return [
    area('white', blade), outline(pens.cut, blade),
    ...[-1, 1].flatMap((side) => cutFace(cornersOf({ x: side < 0 ? x - PADDED.half - wide : x + PADDED.half, y: face - PADDED.high, width: wide, height: PADDED.high }))),
    area('ink', cornersOf({ x: x - half, y: face - PADDED.high / 2 - PADDED.tape / 2, width: 2 * half, height: PADDED.tape })),
  ];
}

/** The strips that are bound to a blade, mm: as long as a hand is wide and high enough to hold (common practice, no source). */
export const STRIP = { long: 100, high: 40, count: 2 } as const;

/** How far a blade without strips reaches along its line seen from above, mm of paper, and half of its width. */
const BARE = 11;
const THIN = 0.6;

/** The same from above, along a level line, its handle on the right, where it is pulled: the blade between strips so long and so thick on paper, tape round their middle; or alone. */
export function knifeFromAbove([x, y]: Vec2, strips: { readonly long: number; readonly thick: number } | null): readonly Mark[] {
  const long = strips?.long ?? BARE;
  const blade = cornersOf({ x: x - long / 2 - 2, y: y - THIN, width: long + 4, height: 2 * THIN });
  if (strips === null) return [area('white', blade), outline(pens.cut, blade), area('ink', cornersOf({ x: x + long / 2 + 2 - long * 0.7, y: y - 1.3, width: long * 0.7, height: 2.6 }))];
  const bound = [-1, 1].map((side) => cornersOf({ x: x - long / 2, y: side < 0 ? y - THIN - strips.thick : y + THIN, width: long, height: strips.thick }));
  const short = cornersOf({ x: x - TAPED / 2 - 3, y: y - THIN, width: TAPED + 6, height: 2 * THIN });
  const handle = cornersOf({ x: x + TAPED / 2 + 1.5, y: y - HANDLE.half, width: HANDLE.long, height: 2 * HANDLE.half });
  return [
    area('white', cornersOf({ x: x - long / 2, y: y - THIN, width: long, height: 2 * THIN })), ...bound.flatMap((ring) => [area('core', ring), outline(pens.cut, ring)]), area('white', short), outline(pens.cut, short),
    area('ink', cornersOf({ x: x - TAPED / 2, y: y - strips.thick - THIN - 0.5, width: TAPED, height: 2 * (strips.thick + THIN) + 1 })), area('ink', handle),
  ];
}

/** Width of the tape seen from above, mm of paper. */
const TAPED = 4;
/** The handle leans over the strips: how much of it is seen from above, mm of paper. */
const HANDLE = { long: 6, half: 1.2 } as const;
