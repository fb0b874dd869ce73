import { sheets } from '../pages/sheet.ts';
import type { ChangePagesInput } from './types.ts';

/** Shares of the width of a page's main column, for three columns and for two. */
export const COLUMNS = { three: [0.36, 0.32, 0.32], two: [0.36, 0.64] } as const;
/** White at the end of a column, and over and under the text of a row together, mm. */
export const columnEnd = 3;
export const rowPad = 1.6;
/** Size of a heading's letters, pt, the distance of its lines as Latin's are apart, and the white over it, mm. */
export const headingSize = 13;
export const headingLine = 7;
export const headingPad = 4;
/** White round a picture in its frame, between both sides of a pair, and under it, mm. */
export const framePad = 1;
export const between = 4;
export const under = 4;
/** Two pairs stand on a page, however high, mm. */
export const highest = 95;

/** Width of the pages between their white, mm. */
export const pageWidth = ({ paper }: Pick<ChangePagesInput, 'paper'>): number => sheets[paper].width - sheets[paper].outer - sheets[paper].inner;
