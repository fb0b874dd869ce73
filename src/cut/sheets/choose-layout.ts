import type { Layout } from './layout.ts';
import { numberedCuts } from './numbered-cuts.ts';
import { cutCount, largestClear, offCutsOf, overlaps, piecesOf } from './off-cuts.ts';
import type { Board } from './raster.ts';
import { realized } from './realize.ts';
import { mirrored, simplified } from './simplify.ts';
import { stripLayouts } from './strips.ts';
import type { CutPart, SheetPiece, SheetStock } from './types.ts';

/** What one cut less is worth against an off-cut as large as the panel. Ours. */
const PER_CUT = 0.005;
/** What it costs to cut through a defect: a rib is hard to cut, a hole leaves the knife without support. Ours. */
const THROUGH_DEFECT = 0.02;

const NEAR = 0.5;

export interface Chosen {
  readonly cuts: CutPart;
  /** The share of the panel that its largest off-cut is. */
  readonly largest: number;
}

/**
 * Of the plain layouts of the same pieces and the one given, that with the largest off-cut and few cuts. A plain
 * layout that would touch a defect may miss it when begun from another corner.
 */
export function chosenLayout(layout: Layout, board: Board, pieces: readonly SheetPiece[], stock: SheetStock, kerf: number): Chosen {
  const plain = stripLayouts(board, layout.makes).map((each) => simplified(realized(each, pieces, stock, kerf)));
  const turned = stock.defects.length === 0 ? plain : plain.flatMap((each) => fromEveryCorner(each, stock, kerf))
    .filter((each) => !piecesOf(each).some((lies) => stock.defects.some((defect) => overlaps(lies, defect))));
  const all = [simplified(realized(layout, pieces, stock, kerf)), ...turned].map((each) => rated(each, stock));
  return all.reduce((best, each) => (each.rate > best.rate + 1e-9 ? each : best));
}

function fromEveryCorner(cuts: CutPart, { width, height }: SheetStock, kerf: number): readonly CutPart[] {
  const right = mirrored(cuts, 'x', width, kerf);
  return [cuts, right, mirrored(cuts, 'y', height, kerf), mirrored(right, 'y', height, kerf)];
}

function rated(cuts: CutPart, stock: SheetStock): Chosen & { readonly rate: number } {
  const areas = offCutsOf(cuts).map((region) => {
    const clear = largestClear(region, stock.defects);
    return clear === null ? 0 : clear.width * clear.height;
  });
  const largest = Math.max(0, ...areas) / (stock.width * stock.height);
  return { cuts, largest, rate: largest - PER_CUT * cutCount(cuts) - THROUGH_DEFECT * throughDefects(cuts, stock) };
}

const throughDefects = (cuts: CutPart, { defects }: SheetStock): number => numberedCuts(cuts).reduce((sum, { axis, at, from, to }) =>
  sum + defects.filter(({ x, y, width, height }) => (axis === 'x' ? at > x + NEAR && at < x + width - NEAR && from < y + height && to > y
    : at > y + NEAR && at < y + height - NEAR && from < x + width && to > x)).length, 0);
