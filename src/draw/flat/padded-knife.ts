import type { Vec2 } from '../../model/index.ts';
import { cutFace } from '../kit/cut-face.ts';
import { cornersOf } from '../kit/geometry.ts';
import { area, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';

/** A blade between two off-cuts that stop it, mm of paper: half of the blade across, an off-cut, the tape round both and how far it stands out, half of the knife's body on them. */
export const PADDED = { half: 1.3, wide: 7, high: 12, tape: 4.5, out: 1, body: 4.6 } as const;

/** How far the knife reaches over the face, and how wide a pad is, mm of paper; whether tape holds it all. */
export interface PaddedLook {
  readonly up: number;
  readonly wide?: number;
  readonly isBound?: boolean;
}

/** The padded knife in section: its pads stand on a face, its tip is so far under that, mm of paper; only the blade is between the pads, the knife's body stands on both. */
export function paddedKnife([x, face]: Vec2, deep: number, { up, wide = PADDED.wide, isBound = true }: PaddedLook): readonly Mark[] {
  const top = face - PADDED.high;
  const blade: readonly Vec2[] = [[x, face + deep], [x - PADDED.half, face + deep - 3.4], [x - PADDED.half, top], [x + PADDED.half, top], [x + PADDED.half, face + deep - 3.4]];
  const half = PADDED.half + wide + PADDED.out;
  return [
    area('white', blade), outline(pens.cut, blade),
    ...[-1, 1].flatMap((side) => pad([x + side * (PADDED.half + wide / 2), face], wide)),
    area('ink', cornersOf({ x: x - PADDED.body, y: face - up, width: 2 * PADDED.body, height: up - PADDED.high })),
    ...(isBound ? [area('ink', cornersOf({ x: x - half, y: face - PADDED.high / 2 - PADDED.tape / 2, width: 2 * half, height: PADDED.tape }))] : []),
  ];
}

/** A pad in section, the middle of its foot; so wide, mm of paper. */
export const pad = ([x, face]: Vec2, wide: number): readonly Mark[] => cutFace(cornersOf({ x: x - wide / 2, y: face - PADDED.high, width: wide, height: PADDED.high }));

/** The strips that are bound to a blade, mm: as long as a hand is wide, for they run along the straight-edge, and no higher than a finger is thick, so that little of the blade is out (common practice, no source). */
export const STRIP = { long: 100, high: 20, count: 2 } as const;

/** A knife whose blade slides out, mm: width of the blade and of its bevel, width, thickness and length of its body; how far it leans from upright towards where it is pulled, rad (common practice, no source). */
export const KNIFE = { blade: 18, bevel: 5, body: 26, thick: 12, long: 94, lean: 0.45 } as const;

/** The tape round the strips, mm: on either side of the blade, how far from their middle to how far. */
export const TAPED = { from: 24, to: 43 } as const;

/** How far a blade without strips reaches along its line seen from above, mm of paper, and half of its width. */
const BARE = 11;
const THIN = 0.6;

/** The same from above, along a level line, its body on the right, where it is pulled: the blade between strips so thick, mm, tape round both ends of them, mm of paper for one mm; or alone. */
export function knifeFromAbove([x, y]: Vec2, strips: { readonly scale: number; readonly pads: number } | null): readonly Mark[] {
  if (strips === null) {
    const blade = cornersOf({ x: x - BARE / 2 - 2, y: y - THIN, width: BARE + 4, height: 2 * THIN });
    return [area('white', blade), outline(pens.cut, blade), area('ink', cornersOf({ x: x - 0.2 * BARE + 2, y: y - 1.3, width: 0.7 * BARE, height: 2.6 }))];
  }
  const { scale, pads } = strips;
  const [long, thick] = [STRIP.long * scale, pads * scale];
  const bound = [-1, 1].map((side) => cornersOf({ x: x - long / 2, y: side < 0 ? y - THIN - thick : y + THIN, width: long, height: thick }));
  const body = (KNIFE.thick * scale) / 2;
  return [
    area('white', cornersOf({ x: x - long / 2, y: y - THIN, width: long, height: 2 * THIN })), ...bound.flatMap((ring) => [area('core', ring), outline(pens.cut, ring)]),
    ...[-1, 1].map((side) => area('ink', cornersOf({ x: x + (side * (TAPED.from + TAPED.to) * scale) / 2 - ((TAPED.to - TAPED.from) * scale) / 2, y: y - thick - THIN - 0.5, width: (TAPED.to - TAPED.from) * scale, height: 2 * (thick + THIN) + 1 }))),
    area('ink', cornersOf({ x: x - (KNIFE.body * scale) / 3, y: y - body, width: (KNIFE.body + KNIFE.long * Math.sin(KNIFE.lean)) * scale, height: 2 * body })),
  ];
}
