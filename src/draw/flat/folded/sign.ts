import type { Mark } from '../../kit/marks.ts';

/** What stands under the whole view: its marks from an upper left corner. */
export type Sign = (x: number, y: number) => readonly Mark[];
