import type { Vec2 } from '../../model/index.ts';
import { tell } from '../../scene/index.ts';
import { capHeights } from '../kit/lettering.ts';
import { cornersOf } from '../kit/geometry.ts';
import { area, arrowhead, figure, line, outline, toldWidth, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import type { Box } from '../types.ts';

/** Side of the box into which something is laid, and the white between it and the number, mm of paper. */
const BOX = 7;
const GAP = 1.6;
/** White beside the sign, and round the number of a step on its page, mm of paper. */
const RIM = 1.6;
const PAGE = { aside: 1.2, above: 1.6 } as const;
const cap = capHeights.count;
const small = capHeights.step;

/** An off-cut that is kept, as a rectangle on paper: laid into a box, and the number of the step that uses it; the number alone where the box has no room. Just white where the same step goes on with it. */
export function keptMarks(ring: readonly Vec2[], use: number | 'next'): readonly Mark[] {
  return [area('white', ring), ...(use === 'next' ? [] : signIn(ring, use))];
}

/** The sign in the middle of a box, on white, where something of it is kept for steps and the rest is waste: their numbers side by side, or under each other. */
export function keptSign(box: Box, steps: readonly number[]): readonly Mark[] {
  const isRow = BOX + steps.reduce((sum, step) => sum + GAP + pageWide(step), 0) + 2 * RIM <= box.width;
  const columns = isRow ? steps.map((step) => [step]) : [steps];
  const sign = boxWithPages([box.x + box.width / 2, box.y + box.height / 2], columns);
  const [width, height] = [sign.width + 2 * RIM, sign.height + 1.8];
  if (width > box.width || height > box.height) return [];
  return [area('white', cornersOf({ x: box.x + (box.width - width) / 2, y: box.y + (box.height - height) / 2, width, height })), ...sign.marks];
}

/** The open box and, right of it, columns of steps' numbers on their pages, round a middle; and the room that they take, mm of paper. */
function boxWithPages([x, y]: Vec2, columns: readonly (readonly number[])[]): { readonly marks: readonly Mark[]; readonly width: number; readonly height: number } {
  const widths = columns.map((column) => Math.max(...column.map(pageWide)));
  const width = BOX + widths.reduce((sum, each) => sum + GAP + each, 0);
  const most = Math.max(...columns.map(({ length }) => length));
  const left = x - width / 2;
  const pages = columns.flatMap((column, place) => {
    const middle = left + BOX + widths.slice(0, place).reduce((sum, each) => sum + GAP + each, GAP) + (widths[place] ?? 0) / 2;
    return column.map((step, row) => pageMarks(step, [middle, y + (row - (column.length - 1) / 2) * (pageHigh + GAP)]));
  });
  return { marks: [...boxMarks([left + BOX / 2, y]), ...pages.flat()], width, height: Math.max(BOX, most * pageHigh + (most - 1) * GAP) };
}

/** Width and height of a step's number on its page, mm of paper. */
const pageHigh = cap + 2 * PAGE.above;
const pageWide = (step: number): number => toldWidth(tell.number(step), cap, 700) + 2 * PAGE.aside;

function signIn(ring: readonly Vec2[], step: number): readonly Mark[] {
  const [xs, ys] = [ring.map(([x]) => x), ring.map(([, y]) => y)];
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const [wide, high] = [right - left, bottom - top];
  const [x, y] = [(left + right) / 2, (top + bottom) / 2];
  const told = tell.number(step);
  const row = boxWithPages([x, y], [[step]]);
  if (wide >= row.width + 3 && high >= row.height + 1.5) return row.marks;
  if (wide >= Math.max(BOX, pageWide(step)) + 1 && high >= BOX + GAP + pageHigh + 3) return [...boxMarks([x, y - (GAP + cap) / 2 - PAGE.above]), ...pageMarks(step, [x, y + (BOX + GAP + PAGE.above) / 2])];
  return wide >= toldWidth(told, small, 700) + 0.6 && high >= small + 0.6 ? [figure(told, [x, y], small, 700)] : [];
}

/** An open box with an arrow down into it. */
function boxMarks([x, y]: Vec2): readonly Mark[] {
  const half = BOX / 2;
  return [
    line({ ...pens.motion, width: 0.8 }, [x - half, y - half + 2], [x - half, y + half], [x + half, y + half], [x + half, y - half + 2]),
    line({ ...pens.motion, width: 0.8 }, [x, y - half], [x, y]), arrowhead([x, y + half - 1], [0, 1], 3.4, 3),
  ];
}

/** The number of a step under the line that steps have over them, on a page of a booklet: no length. */
function pageMarks(step: number, [x, y]: Vec2): readonly Mark[] {
  const told = tell.number(step);
  const [width, height] = [pageWide(step), pageHigh];
  const page = cornersOf({ x: x - width / 2, y: y - height / 2, width, height });
  return [area('white', page), outline(pens.edge, page), line({ ...pens.motion, width: 1 }, [x - width / 2, y - height / 2], [x + width / 2, y - height / 2]), figure(told, [x, y], cap, 700)];
}
