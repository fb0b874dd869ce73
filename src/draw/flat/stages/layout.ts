import type { FlatPattern } from '../../../model/index.ts';
import type { Box } from '../../types.ts';
import { capHeights } from '../../kit/lettering.ts';
import type { Mark } from '../../kit/marks.ts';
import { figure } from '../../kit/marks.ts';
import { flapOn } from '../panel-lines.ts';
import type { Strip } from '../strip.ts';
import { placeStrip } from '../strip.ts';
import type { Paper } from '../../kit/svg.ts';
import type { Whole } from '../whole.ts';
import { placeWhole } from '../whole.ts';
import { tell } from '../../../scene/index.ts';

/** White kept at the paper's edge, and between neighbours, in mm. */
export const margin = 1.5;
export const gap = 7;

/** Room for dimensions round the whole view, in mm of paper. */
export interface Room {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export const noRoom: Room = { left: 0, right: 0, top: 0, bottom: 0 };

/** Room for one row of plain dimension figures. */
export const oneRow = 9;

/** The box left of a column of the given width, less the room for dimensions. */
export function mainBox(paper: Paper, column: number, room: Room): Box {
  const side = column > 0 ? column + gap : 0;
  return {
    x: margin + room.left,
    y: margin + room.top,
    width: paper.width - 2 * margin - side - room.left - room.right,
    height: paper.height - 2 * margin - room.top - room.bottom,
  };
}

/** The box of the column on the right. */
export function columnBox(paper: Paper, column: number): Box {
  return { x: paper.width - margin - column, y: margin, width: column, height: paper.height - 2 * margin };
}

/** The whole panel on the left, a strip across its back flap on the right, with a count below the strip. */
export function wholeAndStrip(pattern: FlatPattern, paper: Paper, span: number, start: number, room: Room): { readonly whole: Whole; readonly strip: Strip } {
  const column = columnBox(paper, span);
  const below = capHeights.count + 3;
  return {
    whole: placeWhole(pattern, mainBox(paper, span, room)),
    strip: placeStrip(flapOn(pattern, 'back'), { ...column, height: column.height - below }, start),
  };
}

/** How often the same is done, as ×n: bold, centred on a point. */
export function countMark(count: number, x: number, y: number): Mark {
  return figure(tell.times(count), [x, y], capHeights.count, 700);
}

/** The count under a strip. */
export function stripCount(strip: Strip, count: number): Mark {
  const { x, y, width, height } = strip.frame;
  return countMark(count, x + width / 2, y + height + 3 + capHeights.count / 2);
}
