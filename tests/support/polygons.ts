import type { Vec2 } from '../../src/model/index.ts';

const next = <T>(list: readonly T[], index: number): T => {
  const found = list[(index + 1) % list.length];
  if (found === undefined) throw new Error('an empty outline');
  return found;
};

/** Area by the trapezium sum, positive when anticlockwise. */
export const areaOf = (outline: readonly Vec2[]): number =>
  outline.reduce((sum, [x, y], index) => {
    const [nx, ny] = next(outline, index);
    return sum + (x * ny - nx * y) / 2;
  }, 0);

export const edgesOf = (outline: readonly Vec2[]): readonly (readonly [Vec2, Vec2])[] =>
  outline.map((point, index) => [point, next(outline, index)]);

const turn = ([ax, ay]: Vec2, [bx, by]: Vec2, [cx, cy]: Vec2): number => (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);

/** Whether two straights cross or touch. */
export function meets([a, b]: readonly [Vec2, Vec2], [c, d]: readonly [Vec2, Vec2]): boolean {
  return toSegment(a, [c, d]) < 1e-9 || toSegment(b, [c, d]) < 1e-9 || toSegment(c, [a, b]) < 1e-9 || toSegment(d, [a, b]) < 1e-9
    || (parted(turn(a, b, c), turn(a, b, d)) && parted(turn(c, d, a), turn(c, d, b)));
}

/** On two sides of a line, by more than rounding. */
const parted = (one: number, other: number): boolean => one * other < 0 && Math.min(Math.abs(one), Math.abs(other)) > 1e-9;

/** No edge meets another but its neighbours, and no edge is without length. */
export function isSimple(outline: readonly Vec2[]): boolean {
  const edges = edgesOf(outline);
  return edges.every(([a, b], i) => Math.hypot(b[0] - a[0], b[1] - a[1]) > 1e-9
    && edges.every((other, j) => j <= i + 1 || (i === 0 && j === edges.length - 1) || !meets([a, b], other)));
}

/** Distance of a point from a straight. */
export function toSegment([x, y]: Vec2, [[ax, ay], [bx, by]]: readonly [Vec2, Vec2]): number {
  const [dx, dy] = [bx - ax, by - ay];
  const share = Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)));
  return Math.hypot(x - ax - share * dx, y - ay - share * dy);
}

/** Whether a point lies inside, by counting crossings of a line to the right. */
export const inside = (outline: readonly Vec2[], [x, y]: Vec2): boolean =>
  edgesOf(outline).filter(([[ax, ay], [bx, by]]) => (ay > y) !== (by > y) && x < ax + ((y - ay) / (by - ay)) * (bx - ax)).length % 2 === 1;

export const toOutline = (outline: readonly Vec2[], point: Vec2): number =>
  Math.min(...edgesOf(outline).map((edge) => toSegment(point, edge)));

/** Least distance between two outlines that do not overlap; 0 when they do. */
export function apart(one: readonly Vec2[], other: readonly Vec2[]): number {
  const crossing = edgesOf(one).some((a) => edgesOf(other).some((b) => meets(a, b)));
  if (crossing || one.some((point) => inside(other, point)) || other.some((point) => inside(one, point))) return 0;
  return Math.min(...one.map((point) => toOutline(other, point)), ...other.map((point) => toOutline(one, point)));
}
