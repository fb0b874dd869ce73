import type { Vec2 } from '../../../model/index.ts';
import { dropStraight } from '../../lines/polyline.ts';
import type { Colour } from '../../kit/colours.ts';
import { area, arrowhead, line, outline, type Mark } from '../../kit/marks.ts';
import { pens, type Pen } from '../../kit/pens.ts';

/** Widths on paper of a single cord and of the white between two that lie side by side, mm; the black edge of each, and the white beside one that goes over another. */
const CORD = 2.2;
const BETWEEN = 1;
const WIDE = { one: CORD, two: 2 * CORD + BETWEEN } as const;
const EDGE = 0.4;
/** From the middle of two cords side by side to that of each, mm of paper. */
export const ASIDE = (CORD + BETWEEN) / 2;
const GAP = 0.9;
/** Points between two given ones of a curve. */
const FINE = 12;

/** A stretch of cord. What stands is white, what the hand moves is tinted as new parts are. */
export interface Strand {
  readonly way: readonly Vec2[];
  readonly cords: 'one' | 'two';
  readonly does: 'stands' | 'moves';
  /** How many times as thick as usual it is drawn; its gaps and its black edges are wider by the root of that. */
  readonly by?: number;
}

export const stands = (...way: readonly Vec2[]): Strand => ({ way, cords: 'one', does: 'stands' });
export const moves = (...way: readonly Vec2[]): Strand => ({ way, cords: 'one', does: 'moves' });
/** Two cords side by side. */
export const doubled = (strand: Strand): Strand => ({ ...strand, cords: 'two' });

/** The same so many times as thick. */
export const thick = (strand: Strand, by: number): Strand => ({ ...strand, by });

/** Widths on paper of a strand, of its black edge and of the white beside it where it goes over another, mm. */
export const wideOf = ({ cords, by = 1 }: Strand): number => by * WIDE[cords];
const edgeOf = ({ by = 1 }: Strand): number => EDGE * Math.sqrt(by);
export const gapOf = ({ by = 1 }: Strand): number => GAP * Math.sqrt(by);

const stroke = (width: number, colour: Colour): Pen => ({ ...pens.motion, width, colour });

/** A strand along its way: what is drawn later lies over it. Its inside is that of a longer stretch where that is told. */
export function drawnStrand(strand: Strand, { way } = strand): readonly Mark[] {
  const [wide, edge, between] = [wideOf(strand), edgeOf(strand), BETWEEN * (strand.by ?? 1)];
  return [
    line(stroke(wide, 'ink'), ...bends(strand.way)), line(stroke(wide - 2 * edge, strand.does === 'moves' ? 'fresh' : 'white'), ...bends(way)),
    ...(strand.cords === 'two' ? [line(stroke(between + 2 * edge, 'ink'), ...bends(way)), line(stroke(between, 'white'), ...bends(way))] : []),
  ];
}

/** The white under a strand where it goes over another. */
export const gapUnder = (strand: Strand): Mark => line({ ...stroke(wideOf(strand) + 2 * gapOf(strand), 'white'), name: 'gap' }, ...bends(strand.way));

/** A way without the points that nobody sees: nearer than this to a straight line, mm of paper. */
const UNSEEN = 0.08;
const bends = (way: readonly Vec2[]): readonly Vec2[] => dropStraight(way, false, UNSEEN);

/** A thin cord, as in drawings of whole cables. */
export const thinCord = (...way: readonly Vec2[]): readonly Mark[] => [line(stroke(1.7, 'ink'), ...bends(way)), line(stroke(1, 'white'), ...bends(way))];

/** The end of a cord, so many times as thick as usual: the face that it is cut to, seen aslant. */
export function cutEnd([x, y]: Vec2, [dx, dy]: Vec2, by = 1): readonly Mark[] {
  const far = Math.hypot(dx, dy);
  const [deep, half, edge] = [0.6 * by, (by * CORD - EDGE * Math.sqrt(by)) / 2, EDGE * Math.sqrt(by)];
  const [along, across]: readonly [Vec2, Vec2] = [[(dx / far) * deep, (dy / far) * deep], [(-dy / far) * half, (dx / far) * half]];
  const face = round([0, 0], 1, 0, 2 * Math.PI).map(([u, v]): Vec2 => [x + u * along[0] + v * across[0], y + u * along[1] + v * across[1]]);
  return [area('core', face), outline(stroke(edge, 'ink'), face)];
}

/** A limp cord laid in a coil, as it comes to hand: its turns and the band round them. */
export const coil = ([x, y]: Vec2, size = 1): readonly Mark[] => [
  ...[[0, 0], [0.9, 0.5], [-0.5, 0.9]].flatMap(([dx = 0, dy = 0], turn) => thinCord(...round([0, 0], 1, 0, 2 * Math.PI).map(([u, v]): Vec2 => [x + size * (dx + (7.4 - 0.5 * turn) * u), y + size * (dy + (5.4 - 0.4 * turn) * v)]))),
  area('white', [[x - 1.2 * size, y + 3 * size], [x + 1.2 * size, y + 3 * size], [x + 1.2 * size, y + 7.6 * size], [x - 1.2 * size, y + 7.6 * size]]),
  outline(stroke(EDGE, 'ink'), [[x - 1.2 * size, y + 3 * size], [x + 1.2 * size, y + 3 * size], [x + 1.2 * size, y + 7.6 * size], [x - 1.2 * size, y + 7.6 * size]]),
];

/** The way something is drawn, the arrow's shaft `far` long and its head further on, so many times as bold as usual. */
export const pull = ([x, y]: Vec2, [dx, dy]: Vec2, far = 7, by = 1): readonly Mark[] => [line({ ...pens.motion, width: 0.9 * by }, [x, y], [x + far * dx, y + far * dy]), arrowhead([x + (far + 4 * by) * dx, y + (far + 4 * by) * dy], [dx, dy], 4.4 * by)];

/** The way an end goes next: a curve with its head, white on both sides where it goes over something. */
export function goes(...way: readonly Vec2[]): readonly Mark[] {
  const [before, tip] = way.slice(-2);
  if (before === undefined || tip === undefined) return [];
  const pen: Pen = { ...pens.motion, width: 0.7 };
  return [line({ ...pen, width: 1.7, colour: 'white' }, ...way.slice(0, -1)), line(pen, ...way.slice(0, -1)), arrowhead(tip, [tip[0] - before[0], tip[1] - before[1]], 4)];
}

/** A knot drawn home. */
export const drawnHome = ([x, y]: Vec2, radius = 4.4): readonly Mark[] => {
  const ring: readonly Vec2[] = round([x, y], radius, 0, 2 * Math.PI);
  return [area('white', ring), outline({ ...pens.cut, width: 0.6 }, ring), ...[-0.41, 0.12].map((by) => line(pens.cut, ...smooth([x + (by - 0.24) * radius, y + 0.7 * radius], [x + by * radius, y], [x + (by + 0.44) * radius, y - 0.7 * radius])))];
};

/** A smooth way through points (Catmull and Rom). */
export function smooth(...points: readonly Vec2[]): readonly Vec2[] {
  const at = (index: number): Vec2 => points[Math.min(points.length - 1, Math.max(0, index))] ?? [0, 0];
  const way = points.slice(1).flatMap((_, index) => Array.from({ length: FINE }, (__, step): Vec2 => {
    const [a, b, c, d] = [at(index - 1), at(index), at(index + 1), at(index + 2)];
    return [0, 1].map((axis) => between([a, b, c, d].map((point) => point[axis] ?? 0), step / FINE)) as unknown as Vec2;
  }));
  return [...way, at(points.length - 1)];
}

function between([a = 0, b = 0, c = 0, d = 0]: readonly number[], t: number): number {
  return 0.5 * (2 * b + (c - a) * t + (2 * a - 5 * b + 4 * c - d) * t * t + (3 * b - a - 3 * c + d) * t * t * t);
}

/** A ring seen from its axis. */
export const round = ([x, y]: Vec2, radius: number, from: number, to: number): readonly Vec2[] =>
  Array.from({ length: 4 * FINE + 1 }, (_, step): Vec2 => {
    const angle = from + ((to - from) * step) / (4 * FINE);
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
