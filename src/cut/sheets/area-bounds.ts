import type { Board, Laid } from './raster.ts';

/**
 * A weight for every piece so that the pieces on one panel never weigh more than `room`, however they are laid, cut
 * from edge to edge or not.
 */
export interface Weighing {
  /** Infinite for a piece that the panel has no place for. */
  readonly weights: readonly number[];
  readonly room: number;
}

/** Sizes from which the weighings below are made; more of them would hardly prove more. */
const STEPS = 6;

/**
 * The weighings of a board: area against the area without defects, and areas of sizes stretched by dual feasible
 * functions (Fekete and Schepers 2001): sizes above 1 − e count as the whole, below e as nothing; or only those
 * above a half count, as the whole. A piece that may lie two ways weighs what it weighs the lighter way.
 */
export function weighings(board: Board, pieces: number): readonly Weighing[] {
  const stretchX = stretches(board.laid.map(({ width }) => width / board.width));
  const stretchY = stretches(board.laid.map(({ height }) => height / board.height));
  const pairs = stretchX.flatMap((x, i) => stretchY.map((y, j) => ({ x, y, plain: i === 0 && j === 0 })));
  return pairs.map(({ x, y, plain }) => ({
    weights: lightest(board.laid, pieces, ({ width, height }) => x(width / board.width) * y(height / board.height)),
    room: plain ? clearShare(board) : 1,
  }));
}

type Stretch = (share: number) => number;

function stretches(shares: readonly number[]): readonly Stretch[] {
  const small = [...new Set(shares.map((share) => Math.min(share, 1 - share)))].filter((share) => share > 0 && share <= 0.5).sort((a, b) => b - a);
  const steps = small.filter((_, index) => index % Math.ceil(small.length / STEPS) === 0);
  return [
    (share) => share,
    (share) => (share > 0.5 ? 1 : 0),
    // A hair less than the size itself: sizes above 1 − e count whole only where the two cannot lie side by side.
    ...steps.map((step): Stretch => (share) => (share > 1 - step + 1e-9 ? 1 : share < step - 1e-9 ? 0 : share)),
  ];
}

function lightest(laid: readonly Laid[], pieces: number, weight: (each: Laid) => number): readonly number[] {
  return Array.from({ length: pieces }, (_, piece) => {
    const all = laid.filter((each) => each.piece === piece).map(weight);
    return Math.min(...all);
  });
}

/** The share of the board that no defect covers; overlapping defects count once. */
function clearShare({ width, height, blocked }: Board): number {
  const xs = [...new Set([0, width, ...blocked.flatMap(({ fromX, toX }) => [fromX, toX])])].filter((x) => x >= 0 && x <= width).sort((a, b) => a - b);
  const ys = [...new Set([0, height, ...blocked.flatMap(({ fromY, toY }) => [fromY, toY])])].filter((y) => y >= 0 && y <= height).sort((a, b) => a - b);
  let clear = 0;
  for (let i = 1; i < xs.length; i += 1) {
    for (let j = 1; j < ys.length; j += 1) {
      const [x1 = 0, x2 = 0, y1 = 0, y2 = 0] = [xs[i - 1], xs[i], ys[j - 1], ys[j]];
      if (!blocked.some((each) => x1 >= each.fromX && x2 <= each.toX && y1 >= each.fromY && y2 <= each.toY)) clear += (x2 - x1) * (y2 - y1);
    }
  }
  return clear / (width * height);
}

/** What pieces of such worth can be worth on a panel at most, by one weighing: the best parts of pieces that have a place on it fill the room. */
export function worthByWeight({ weights, room }: Weighing, worths: readonly number[], most: readonly number[]): number {
  const weightless = worths.reduce((sum, worth, piece) => (weights[piece] === 0 && worth > 0 ? sum + worth * (most[piece] ?? 0) : sum), 0);
  const order = worths.map((_, piece) => piece).filter((piece) => (worths[piece] ?? 0) > 0 && (weights[piece] ?? 0) > 0 && Number.isFinite(weights[piece]))
    .sort((a, b) => (worths[b] ?? 0) / (weights[b] ?? 1) - (worths[a] ?? 0) / (weights[a] ?? 1));
  let [left, worth] = [room, weightless];
  for (const piece of order) {
    const taken = Math.min(most[piece] ?? 0, left / (weights[piece] ?? 1));
    worth += taken * (worths[piece] ?? 0);
    left -= taken * (weights[piece] ?? 0);
    if (left <= 0) break;
  }
  return worth;
}
