import type { StitchedSheet } from './signatures.ts';

/** A line or a bar on a sheet, mm from its lower left corner. */
export type SheetMark =
  | { readonly mark: 'fold' | 'staple'; readonly x: number; readonly from: number; readonly to: number }
  | { readonly mark: 'order'; readonly x: number; readonly from: number; readonly to: number; readonly width: number };

/** A flat sheet, lying, mm. */
export interface SheetSize {
  readonly width: number;
  readonly height: number;
}

/**
 * Paper adds its thickness at the fold, sheet by sheet, and pushes the inner sheets out: what is printed on them moves
 * towards the fold by as much. 0.1 mm is the thickness of 80 g/m² paper (common practice, no source).
 */
export const SHEET_THICKNESS = 0.1;

/** How far what is printed on a sheet moves towards the fold, mm. */
export const creepOf = ({ depth }: Pick<StitchedSheet, 'depth'>, thickness: number): number => depth * thickness;

/** Lower left corner of a page of a side, mm: it touches the fold, but for the creep, and stands in the middle of the height. */
export function cornerOn(sheet: SheetSize, page: SheetSize, side: 'left' | 'right', creep: number): readonly [x: number, y: number] {
  const fold = sheet.width / 2;
  return [side === 'left' ? fold - page.width + creep : fold - creep, (sheet.height - page.height) / 2];
}

/** Nearer to the edge most printers print nothing; longer a mark would come near to what is printed, mm. */
const foldReach = 7;
const stapleLength = 12;
const orderLength = 8;
const orderWidth = 1.2;
/** From the sheet's upper edge to the first signature's bar, mm. */
const firstOrder = 22;

/**
 * What is printed on the fold of a sheet's front: where to fold; on the outermost of a signature where the two staples
 * go in, a quarter of the height from either edge, and where there are several signatures a bar that stands
 * lower from one to the next.
 */
export function marksOn({ width, height }: SheetSize, { signature, depth }: StitchedSheet, signatures: number): readonly SheetMark[] {
  const x = width / 2;
  const folds: SheetMark[] = [{ mark: 'fold', x, from: 0, to: foldReach }, { mark: 'fold', x, from: height - foldReach, to: height }];
  if (depth > 0) return folds;
  const staples = [height / 4, (3 * height) / 4].map((middle): SheetMark => ({ mark: 'staple', x, from: middle - stapleLength / 2, to: middle + stapleLength / 2 }));
  const top = height - firstOrder - signature * orderLength;
  const order: SheetMark[] = signatures > 1 ? [{ mark: 'order', x, from: top - orderLength, to: top, width: orderWidth }] : [];
  return [...folds, ...staples, ...order];
}
