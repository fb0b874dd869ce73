import type { Vec2 } from '../../model/index.ts';
import { cornersOf } from '../kit/geometry.ts';
import { arrowhead, line, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { cutOutMarks, wasteMarks, type CutOut } from './waste.ts';

/** A row of pictures of a trial on waste, mm of paper: its height, the piece of waste at its left with the line tried on it, the middle of the sections, and what follows under them. */
export const TRIAL = { high: 42, waste: { x: 1, y: 7, width: 28, height: 28 }, line: 20, section: 21, verdict: 36 } as const;

/** Sides of what is taken next, mm of paper. */
const NEXT = { width: 15, height: 10 } as const;

/** A short arrow to the right from a place. */
export const onwards = ([x, y]: Vec2): readonly Mark[] => [line(pens.motion, [x, y], [x + 3, y]), arrowhead([x + 7, y], [1, 0], 4)];

export const tickMark = ([x, y]: Vec2): readonly Mark[] => [line({ ...pens.motion, width: 1.2 }, [x - 3, y], [x - 1, y + 2.4], [x + 3.4, y - 3])];

export const crossMark = ([x, y]: Vec2): readonly Mark[] =>
  [line({ ...pens.motion, width: 1.2 }, [x - 2.6, y - 2.6], [x + 2.6, y + 2.6]), line({ ...pens.motion, width: 1.2 }, [x - 2.6, y + 2.6], [x + 2.6, y - 2.6])];

/** On to the panel itself. */
export const passed = ([x, y]: Vec2, panel: CutOut): readonly Mark[] => [...onwards([x, y]), ...cutOutMarks(panel, { x: x + 9, y: y - NEXT.height / 2, ...NEXT }, false)];

/** Another try on another piece of waste. */
export const triedAnew = ([x, y]: Vec2): readonly Mark[] => [...onwards([x, y]), ...wasteMarks(cornersOf({ x: x + 9, y: y - NEXT.height / 2, width: NEXT.height, height: NEXT.height }))];
