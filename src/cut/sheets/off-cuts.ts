import type { CutPart, Lying, Rectangle } from './types.ts';

/** Smaller rests between loose pieces are dust, mm². */
const LEAST = 400;

/** Every piece of a cut panel. */
export function piecesOf(part: CutPart): readonly Lying[] {
  if (part.part === 'piece') return [part.lies];
  if (part.part === 'loose') return part.lies;
  return part.part === 'cut' ? [...piecesOf(part.first), ...piecesOf(part.second)] : [];
}

/** The pieces of a cut panel that no straight cut from edge to edge parts. */
export function loosePieces(part: CutPart): readonly Lying[] {
  if (part.part === 'loose') return part.lies;
  return part.part === 'cut' ? [...loosePieces(part.first), ...loosePieces(part.second)] : [];
}

/** Every off-cut of a cut panel that is there at all. */
export function offCutsOf(part: CutPart): readonly Rectangle[] {
  if (part.part === 'off-cut') return part.region.width > 0 && part.region.height > 0 ? [part.region] : [];
  if (part.part === 'loose') return betweenLoose(part.region, part.lies);
  return part.part === 'cut' ? [...offCutsOf(part.first), ...offCutsOf(part.second)] : [];
}

/** What is left between loose pieces: the largest clear rectangle, then the largest beside that, and so on. */
function betweenLoose(region: Rectangle, taken: readonly Rectangle[]): readonly Rectangle[] {
  const clear = largestClear(region, taken);
  return clear === null || clear.width * clear.height < LEAST ? [] : [clear, ...betweenLoose(region, [...taken, clear])];
}

/** Straight cuts; a loose piece counts as four. */
export const cutCount = (part: CutPart): number =>
  (part.part === 'cut' ? 1 + cutCount(part.first) + cutCount(part.second) : part.part === 'loose' ? 4 * part.lies.length : 0);

/** The largest rectangle of a region that no defect touches; null where there is none. */
export function largestClear(region: Rectangle, defects: readonly Rectangle[]): Rectangle | null {
  const inside = defects.filter((each) => overlaps(each, region));
  if (inside.length === 0) return region;
  const xs = edges(region.x, region.x + region.width, inside.flatMap(({ x, width }) => [x, x + width]));
  const ys = edges(region.y, region.y + region.height, inside.flatMap(({ y, height }) => [y, y + height]));
  let best: Rectangle | null = null;
  for (const x of xs) {
    for (const right of xs.filter((each) => each > x)) {
      for (const y of ys) {
        for (const top of ys.filter((each) => each > y)) {
          const each = { x, y, width: right - x, height: top - y };
          if (each.width * each.height > (best === null ? 0 : best.width * best.height) && !inside.some((defect) => overlaps(defect, each))) best = each;
        }
      }
    }
  }
  return best;
}

const edges = (from: number, to: number, between: readonly number[]): readonly number[] =>
  [...new Set([from, ...between.filter((at) => at > from && at < to), to])].sort((a, b) => a - b);

/** Whether two rectangles share more than an edge. */
export const overlaps = (a: Rectangle, b: Rectangle): boolean =>
  a.x < b.x + b.width - 1e-9 && b.x < a.x + a.width - 1e-9 && a.y < b.y + b.height - 1e-9 && b.y < a.y + a.height - 1e-9;
