import { looseLayout, type Layout, type Placed } from './layout.ts';
import { blocks, type Board, type Laid } from './raster.ts';

/** Layouts looked at before the best found is taken: the same answer on every machine. */
const LAYOUTS = 1500;
const SAME = 1e-12;

interface Place {
  readonly x: number;
  readonly y: number;
}

/**
 * A good layout without regard to straight cuts: again and again a piece, or nothing, goes to the lowest, leftmost
 * corner that is free, those worth the most for their area first; up to a number of layouts. `most` is how many of
 * each piece there are.
 */
export function cornerLayout(board: Board, worths: readonly number[], most: readonly number[]): Layout {
  const kinds = board.laid.filter(({ piece }) => (worths[piece] ?? 0) > 0 && (most[piece] ?? 0) > 0)
    .sort((a, b) => density(b, worths) - density(a, worths) || b.width * b.height - a.width * a.height);
  const densest = kinds[0] === undefined ? 0 : density(kinds[0], worths);
  const left: number[] = [...most];
  const placed: Placed[] = [];
  let best: { readonly worth: number; readonly placed: readonly Placed[] } = { worth: 0, placed: [] };
  let looked = 0;
  const search = (worth: number, used: number, passed: readonly Place[]): void => {
    looked += 1;
    if (worth > best.worth + SAME) best = { worth, placed: [...placed] };
    if (looked > LAYOUTS || worth + (board.width * board.height - used) * densest <= best.worth + SAME) return;
    const at = freeCorner(board, placed, passed, kinds, left);
    if (at === null) return;
    for (const laid of kinds) {
      if ((left[laid.piece] ?? 0) === 0 || !fits(board, placed, laid, at)) continue;
      left[laid.piece] = (left[laid.piece] ?? 0) - 1;
      placed.push({ laid, ...at });
      search(worth + (worths[laid.piece] ?? 0), used + laid.width * laid.height, passed);
      placed.pop();
      left[laid.piece] = (left[laid.piece] ?? 0) + 1;
      if (looked > LAYOUTS) return;
    }
    search(worth, used, [...passed, at]);
  };
  search(0, 0, []);
  return looseLayout(best.placed, best.worth, worths.length);
}

const density = ({ piece, width, height }: Laid, worths: readonly number[]): number => (worths[piece] ?? 0) / (width * height);

/** The lowest, then leftmost corner at which some piece fits and that was not passed over. */
function freeCorner(board: Board, placed: readonly Placed[], passed: readonly Place[], kinds: readonly Laid[], left: readonly number[]): Place | null {
  const rising = (places: readonly number[]): readonly number[] => [...new Set(places)].sort((a, b) => a - b);
  const xs = rising([0, ...board.blocked.map(({ toX }) => toX), ...placed.map(({ x, laid }) => x + laid.width)]);
  const ys = rising([0, ...board.blocked.map(({ toY }) => toY), ...placed.map(({ y, laid }) => y + laid.height)]);
  const wanted = kinds.filter(({ piece }) => (left[piece] ?? 0) > 0);
  for (const y of ys) {
    for (const x of xs) {
      if (passed.some((each) => each.x === x && each.y === y)) continue;
      if (wanted.some((laid) => fits(board, placed, laid, { x, y }))) return { x, y };
    }
  }
  return null;
}

function fits(board: Board, placed: readonly Placed[], laid: Laid, { x, y }: Place): boolean {
  const part = { x1: x, x2: x + laid.width, y1: y, y2: y + laid.height };
  return part.x2 <= board.width && part.y2 <= board.height
    && !board.blocked.some((defect) => blocks(defect, part))
    && !placed.some((other) => part.x1 < other.x + other.laid.width && part.x2 > other.x && part.y1 < other.y + other.laid.height && part.y2 > other.y);
}
