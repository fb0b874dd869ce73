import type { Vec2 } from '../../model/index.ts';
import { cutFace } from '../kit/cut-face.ts';
import { cornersOf } from '../kit/geometry.ts';
import { area, arrowhead, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import type { Box, DrawnPicture } from '../types.ts';
import { bareKnife } from './guide-picture.ts';
import { woodMarks } from './punched-section.ts';
import { wasteMarks } from './waste.ts';

/** Half of the section, the panel's thickness in it, the board's and how far that reaches further, the knife over the face, mm of paper. */
const HALF = 17;
const PANEL = 5;
const BOARD = { high: 4.4, more: 3 } as const;
const KNIFE = 10;

/** Its width and height, mm of paper. */
export const ON_BOARD = { width: 2 * (HALF + BOARD.more), height: KNIFE + PANEL + BOARD.high + 1 } as const;

/** Across a cut right through: panel and waste on a board of wood, the knife through into that; from its upper left corner. */
export function cutOnBoard([left, top]: Vec2): readonly Mark[] {
  const x = left + ON_BOARD.width / 2;
  const face = top + KNIFE;
  return [
    ...woodMarks({ x: left, y: face + PANEL, width: ON_BOARD.width, height: BOARD.high }),
    ...cutFace(cornersOf({ x: x - HALF, y: face, width: HALF, height: PANEL })), ...wasteMarks(cornersOf({ x, y: face, width: HALF, height: PANEL })),
    ...bareKnife([x, face], PANEL + 1.4, KNIFE), line(pens.motion, [x - 5, top + 0.5], [x - 5, face - 4.5]), arrowhead([x - 5, face - 1.5], [0, 1], 3.5),
  ];
}

/** The same as a picture. */
export const cutOnBoardPicture = ({ width }: Pick<Paper, 'width'>): DrawnPicture => toPicture({ width, height: ON_BOARD.height + 2 }, cutOnBoard([2, 1]));

/** A board of wood under a corner of a panel, as far as it is seen: its grain runs from left to right, mm of paper. */
export function boardUnder(box: Box): readonly Mark[] {
  const ring = cornersOf(box);
  const rows = Math.floor(box.height / GRAIN.pitch);
  return [
    area('white', ring), outline(pens.cut, ring),
    ...Array.from({ length: rows }, (_, row) => [0, 1, 2].map((place) => {
      const from = box.x + 1.5 + ((place + (row % 2) * 0.5) * box.width) / 3;
      return line(pens.edge, [from, box.y + (row + 0.5) * GRAIN.pitch], [Math.min(from + box.width / 4, box.x + box.width - 1), box.y + (row + 0.5) * GRAIN.pitch]);
    })).flat(),
  ];
}

const GRAIN = { pitch: 1.6 } as const;
