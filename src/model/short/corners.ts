import type { Face } from '../../read/index.ts';

export const SIDES: readonly Face[] = ['left', 'right', 'front', 'back'];

/** The four corners, named by side along x and along y. */
export const CORNERS = [
  { name: 'left-front', x: 'left', y: 'front', sx: -1, sy: -1 },
  { name: 'right-front', x: 'right', y: 'front', sx: 1, sy: -1 },
  { name: 'left-back', x: 'left', y: 'back', sx: -1, sy: 1 },
  { name: 'right-back', x: 'right', y: 'back', sx: 1, sy: 1 },
] as const;

export type Corner = (typeof CORNERS)[number];

/** Corners that a frame with these sides has a joint at. */
export const cornersOf = (sides: readonly Face[]): readonly Corner[] =>
  CORNERS.filter(({ x, y }) => sides.includes(x) || sides.includes(y));
