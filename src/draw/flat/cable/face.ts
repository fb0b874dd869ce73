import type { BracedFace, FaceBar, FaceCord, Vec2 } from '../../../model/index.ts';
import { area, circle, line, outline, type Mark } from '../../kit/marks.ts';
import { pens, type Pen } from '../../kit/pens.ts';
import type { Box } from '../../types.ts';

/** A face on paper: where a place of it lies, mm of paper to 1 mm, and its bars with the floor under them. */
export interface FaceDrawn {
  readonly at: (place: Vec2) => Vec2;
  readonly scale: number;
  readonly bars: readonly Mark[];
}

/** Least thickness of a bar, radius of a peg's head, and how far the floor reaches beside the bars, mm of paper. */
const LEAST = 1.5;
const PEG = 1.35;
const FLOOR = 3;

/** A face in its own proportions, as large as the box lets it, in its middle and on its lower edge. */
export function faceIn({ bars }: BracedFace, { x, y, width, height }: Box): FaceDrawn {
  const ends = bars.flatMap(({ from, to }) => [from, to]);
  const [left, right] = [Math.min(...ends.map(([u]) => u)), Math.max(...ends.map(([u]) => u))];
  const top = Math.max(...ends.map(([, v]) => v));
  const scale = Math.min((width - 2 * FLOOR) / (right - left), (height - 1) / top);
  const [middle, foot] = [x + width / 2, y + height - 0.5];
  const at = ([u, v]: Vec2): Vec2 => [middle + scale * (u - (left + right) / 2), foot - scale * v];
  const [floorFrom, floorTo] = [at([left, 0])[0] - FLOOR, at([right, 0])[0] + FLOOR];
  const upright = bars.filter(isUpright);
  return {
    at, scale,
    bars: [line(pens.edge, [floorFrom, foot], [floorTo, foot]), ...[...bars.filter((bar) => !isUpright(bar)), ...upright].flatMap((bar) => drawnBar(at(bar.from), at(bar.to), Math.max(LEAST, scale * bar.outside)))],
  };
}

const isUpright = ({ from, to }: FaceBar): boolean => Math.abs(to[1] - from[1]) > Math.abs(to[0] - from[0]);

function drawnBar([ax, ay]: Vec2, [bx, by]: Vec2, wide: number): readonly Mark[] {
  const far = Math.hypot(bx - ax, by - ay);
  const [dx, dy]: Vec2 = [(-(by - ay) / far) * (wide / 2), ((bx - ax) / far) * (wide / 2)];
  const ring: readonly Vec2[] = [[ax + dx, ay + dy], [bx + dx, by + dy], [bx - dx, by - dy], [ax - dx, ay - dy]];
  return [area('white', ring), outline(pens.edge, ring)];
}

/** The pegs of cords. */
export const pegsOf = ({ at }: FaceDrawn, cords: readonly FaceCord[]): readonly Mark[] =>
  cords.flatMap(({ low, high }) => [low, high]).map((place) => circle(at(place), PEG, pens.edge, 'panel'));

const pen = (width: number, colour: Pen['colour'] = 'ink'): Pen => ({ ...pens.motion, width, colour });

/** A cord that is left alone, thin; the one that is worked on, tinted. */
export const restingCord = (...way: readonly Vec2[]): readonly Mark[] => [line(pen(0.7), ...way)];
export const workedCord = (...way: readonly Vec2[]): readonly Mark[] => [line(pen(2.6, 'white'), ...way), line(pen(1.9), ...way), line(pen(1.1, 'fresh'), ...way)];

/** The bay of a face in which the first two of its cords cross, as wide as these and their posts. */
export function bayOf(face: BracedFace): BracedFace {
  const [first] = crossedCords(face);
  if (first === undefined) return face;
  const pegs = first.cords.flatMap(({ low, high }) => [low[0], high[0]]);
  const [left, right] = [Math.min(...pegs), Math.max(...pegs)];
  const clip = ({ from, to, outside }: FaceBar): readonly FaceBar[] => {
    const [one, other] = [from, to].map(([u]) => Math.min(right + outside, Math.max(left - outside, u))) as [number, number];
    if (Math.min(from[0], to[0]) > right + outside || Math.max(from[0], to[0]) < left - outside) return [];
    const along = (u: number): Vec2 => [u, from[1] + ((to[1] - from[1]) * (u - from[0])) / (to[0] - from[0])];
    return [Math.abs(to[0] - from[0]) < outside ? { from, to, outside } : { from: along(one), to: along(other), outside }];
  };
  return { ...face, bars: face.bars.flatMap(clip), cords: first.cords };
}

/** Two cords that cross, the lower one first, with the place where they do. */
export interface Crossed {
  readonly cords: readonly [FaceCord, FaceCord];
  readonly at: Vec2;
}

/** How much less steep than long what lies level is. */
const LEVEL = 0.05;

/** The upper edge of the highest level bar of a face that runs below a place, or the floor, mm. */
export const barBelow = ({ bars }: BracedFace, [u, v]: Vec2): number => Math.max(0, ...bars.flatMap(({ from, to, outside }) => {
  const [wide, high] = [Math.abs(to[0] - from[0]), Math.abs(to[1] - from[1])];
  const top = Math.max(from[1], to[1]) + outside / 2;
  return high < LEVEL * wide && top < v && Math.min(from[0], to[0]) < u && Math.max(from[0], to[0]) > u ? [top] : [];
}));

/** The crossings of a face's cords; two cords at the most meet in one place. */
export function crossedCords({ cords }: BracedFace): readonly Crossed[] {
  return cords.flatMap((one, index) => cords.slice(index + 1).flatMap((other): readonly Crossed[] => {
    const at = meeting(one, other);
    return at === null ? [] : [{ cords: [one, other], at }];
  }));
}

/** The cord that pictures of one cord show, the same in all of them: of two that cross, the one that comes down to the right. */
export function shownCord(face: BracedFace): FaceCord | undefined {
  const cords = crossedCords(face)[0]?.cords ?? face.cords;
  return cords.find(({ low, high }) => high[0] < low[0]) ?? cords[0];
}

function meeting(one: FaceCord, other: FaceCord): Vec2 | null {
  const [a, b, c] = [one.low, other.low, [one.high[0] - one.low[0], one.high[1] - one.low[1]]] as const;
  const d: Vec2 = [other.high[0] - b[0], other.high[1] - b[1]];
  const turn = c[0] * d[1] - c[1] * d[0];
  if (Math.abs(turn) < 1e-9) return null;
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const [t, u] = [(dx * d[1] - dy * d[0]) / turn, (dx * c[1] - dy * c[0]) / turn];
  return t > 0 && t < 1 && u > 0 && u < 1 ? [a[0] + t * c[0], a[1] + t * c[1]] : null;
}
