import { placed, type Pose, type Shape, type Vec2, type Vec3 } from '../../model/index.ts';
import type { Mark } from '../types.ts';
import { turnedBy } from './directions.ts';
import { BREADTH, CLEAR_OF_WORK } from './hand-room.ts';

type Hand = Extract<Mark, { mark: 'hand' }>;
type Plate = Extract<Shape, { form: 'plate' }>;

/** Where a hand holds a panel, and which way its fingers reach over it, in the panel's own coordinates, mm. */
interface Hold {
  readonly at: Vec2;
  readonly onto: Vec2;
}

/** No nearer to a corner than this, and so far from each other at least, mm: a hand's breadth and a little more (common practice, no source). */
const FROM_CORNER = BREADTH / 2;
const APART = 1.5 * BREADTH;
/** Places on its edges are tried so far from each other, mm. */
const EVERY = 10;

/**
 * Hands that hold a flat panel clear of the holes that are worked on: at its ends; where these are too near to holes, on its upper
 * edge between them; else those two places of these edges that are farthest from the holes; a single one where there is but
 * one; none where it has no such place. `holes` are in the panel's own coordinates, mm.
 */
export function plateHolds(plate: Plate, pose: Pose, holes: readonly Vec2[]): readonly Hand[] {
  const long = plate.width >= plate.height ? 0 : 1;
  const space = ([x, y]: Vec2): Vec3 => [x, y, plate.thickness / 2];
  const isClear = (hold: Hold): boolean => farFrom(holes, hold) >= CLEAR_OF_WORK;
  const usual = [endHolds(plate, long), edgeHolds(plate, long, pose)].find((each) => each.length > 0 && each.every(isClear));
  const holds = usual ?? farthest(along(plate, long, pose).filter(isClear), holes);
  return holds.map(({ at, onto }) => ({ mark: 'hand', at: placed(pose, space(at)), onto: turnedBy(pose, [onto[0], onto[1], 0]), person: 2 }));
}

const farFrom = (holes: readonly Vec2[], { at }: Hold): number => Math.min(...holes.map(([x, y]) => Math.hypot(x - at[0], y - at[1])));

/** Of places the two that are farthest from holes and far enough from each other; else the farthest alone. */
function farthest(places: readonly Hold[], holes: readonly Vec2[]): readonly Hold[] {
  const far = new Map(places.map((each) => [each, farFrom(holes, each)]));
  const least = (pair: readonly Hold[]): number => Math.min(...pair.map((each) => far.get(each) ?? 0));
  const pairs = places.flatMap((one, index) => places.slice(index + 1).flatMap((other) => (Math.hypot(one.at[0] - other.at[0], one.at[1] - other.at[1]) >= APART ? [[one, other]] : [])));
  const best = (all: readonly (readonly Hold[])[]): readonly Hold[] => all.toSorted((a, b) => least(b) - least(a))[0] ?? [];
  return pairs.length > 0 ? best(pairs) : best(places.map((each) => [each]));
}

/** Places all along the ends and the upper edge. */
function along(plate: Plate, long: 0 | 1, pose: Pose): readonly Hold[] {
  const { along: far, across } = sidesOf(plate, long);
  const up = upOf(long, pose);
  const shares = (length: number): readonly number[] => Array.from({ length: Math.max(0, Math.floor((length - 2 * FROM_CORNER) / EVERY)) + 1 }, (_, index) => FROM_CORNER - length / 2 + index * EVERY);
  return [
    ...shares(far).map((at): Hold => ({ at: place(long, at, (up * across) / 2), onto: place(long, 0, -up) })),
    ...[-1, 1].flatMap((end) => shares(across).map((at): Hold => ({ at: place(long, (end * far) / 2, at), onto: place(long, -end, 0) }))),
  ];
}

/** Which way across its long side is upwards. */
const upOf = (long: 0 | 1, pose: Pose): 1 | -1 => (turnedBy(pose, [...place(long, 0, 1), 0])[2] < 0 ? -1 : 1);

/** A place so far along a panel's long side, and so far across that. */
const place = (long: 0 | 1, along: number, across: number): Vec2 => (long === 0 ? [along, across] : [across, along]);

/** The middles of both ends. */
const endHolds = (plate: Plate, long: 0 | 1): readonly Hold[] =>
  [-1, 1].map((end) => ({ at: place(long, (end * sidesOf(plate, long).along) / 2, 0), onto: place(long, -end, 0) }));

/** On the upper one of the long edges, as far out as there is room between two holes: in the middle of the first and the last space, or both in a single one. */
function edgeHolds(plate: Plate, long: 0 | 1, pose: Pose): readonly Hold[] {
  const up = upOf(long, pose);
  const columns = [...new Set(plate.holes.map(({ at }) => Math.round(at[long])))].toSorted((a, b) => a - b);
  const spaces = columns.slice(1).map((to, index): Vec2 => [columns[index] ?? to, to]);
  const [first, last] = [spaces[0], spaces.at(-1)];
  if (first === undefined || last === undefined) return [];
  const share = spaces.length === 1 ? 0.25 : 0.5;
  const within = ([from, to]: Vec2, part: number): number => from + part * (to - from);
  return [within(first, share), within(last, 1 - share)].map((along) => ({ at: place(long, along, (up * sidesOf(plate, long).across) / 2), onto: place(long, 0, -up) }));
}

const sidesOf = ({ width, height }: Plate, long: 0 | 1): { readonly along: number; readonly across: number } =>
  (long === 0 ? { along: width, across: height } : { along: height, across: width });
