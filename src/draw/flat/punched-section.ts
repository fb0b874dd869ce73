import type { Box } from '../types.ts';
import { cornersOf } from '../kit/geometry.ts';
import { area, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';

/** Tape round the punch that comes to lie on the face when the hole is deep enough, mm of paper. */
const tape = { wide: 2.6, high: 3 } as const;

/** Tape on both sides of a punch whose half is `wide`, down on the face at `top`, mm of paper. */
export const tapeRound = (middle: number, wide: number, top: number): readonly Mark[] => [middle - wide - tape.wide, middle + wide].map((x) =>
  area('ink', cornersOf({ x, y: top - tape.high, width: tape.wide, height: tape.high })));

/** A panel in section with its two skins, mm of paper. */
export function plate(box: Box, skin: number): readonly Mark[] {
  const ring = cornersOf(box);
  return [
    area('core', ring), outline(pens.cut, ring),
    ...[box.y + skin, box.y + box.height - skin].map((y) => line(pens.edge, [box.x, y], [box.x + box.width, y])),
  ];
}

/** A board of wood under what is punched, along its grain. */
export const woodMarks = ({ x, y, width, height }: Box): readonly Mark[] => [
  outline(pens.cut, cornersOf({ x, y, width, height })),
  ...[0.3, 0.62].flatMap((share, row) => [0, 0.5].map((from) => line(pens.edge, [x + width * (from + 0.04 + 0.05 * row), y + height * share], [x + width * (from + 0.38 + 0.05 * row), y + height * share]))),
];
