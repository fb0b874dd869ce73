import type { Vec2 } from '../../model/index.ts';
import { cutFace } from '../kit/cut-face.ts';
import { cornersOf } from '../kit/geometry.ts';
import { area, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';

/** A blade between two off-cuts that stop it, mm of paper: half of the blade seen from the side, an off-cut, the tape round them. */
export const PADDED = { half: 1.3, wide: 7, high: 12, tape: 4.5, out: 1 } as const;

/** The padded knife in section: its pads stand on a face, its tip is so far under that, mm of paper; and how far it reaches over the face. */
export function paddedKnife([x, face]: Vec2, deep: number, up: number): readonly Mark[] {
  const blade: readonly Vec2[] = [[x, face + deep], [x - PADDED.half, face + deep - 3.4], [x - PADDED.half, face - up], [x + PADDED.half, face - up], [x + PADDED.half, face + deep - 3.4]];
  const half = PADDED.half + PADDED.wide + PADDED.out;
  return [
    area('white', blade), outline(pens.cut, blade),
    ...[-1, 1].flatMap((side) => cutFace(cornersOf({ x: side < 0 ? x - PADDED.half - PADDED.wide : x + PADDED.half, y: face - PADDED.high, width: PADDED.wide, height: PADDED.high }))),
    area('ink', cornersOf({ x: x - half, y: face - PADDED.high / 2 - PADDED.tape / 2, width: 2 * half, height: PADDED.tape })),
  ];
}

/** How far pads reach along the blade seen from above, mm of paper. */
const LONG = 11;

/** The same from above, along a level line: the blade between its pads, or in its handle. */
export function knifeFromAbove([x, y]: Vec2, pad: number | null): readonly Mark[] {
  const blade = cornersOf({ x: x - LONG / 2 - 2, y: y - 0.6, width: LONG + 4, height: 1.2 });
  const pads = pad === null ? [] : [-1, 1].map((side) => cornersOf({ x: x - LONG / 2, y: side < 0 ? y - 0.6 - pad : y + 0.6, width: LONG, height: pad }));
  return [
    ...pads.flatMap((ring) => [area('core', ring), outline(pens.cut, ring)]), area('white', blade), outline(pens.cut, blade),
    ...(pad === null ? [area('ink', cornersOf({ x: x - LONG / 2 - 2, y: y - 1.3, width: LONG * 0.7, height: 2.6 }))] : [area('ink', cornersOf({ x: x - 2, y: y - pad - 1.4, width: 4, height: 2 * pad + 2.8 }))]),
  ];
}

