import { placed, type Pose, type Shape, type Vec2, type Vec3 } from '../../model/index.ts';
import type { Mark } from '../types.ts';
import { turnedBy } from './directions.ts';

type Plate = Extract<Shape, { form: 'plate' }>;

/** Where a hand holds a panel, and which way its fingers reach over it, in the panel's own coordinates, mm. */
interface Hold {
  readonly at: Vec2;
  readonly onto: Vec2;
}

/** A hand is so far from the middle of every hole that is drilled or pinned there, mm (our own choice: half of a hand and a thumb's breadth). */
export const CLEAR_OF_HOLES = 60;

/** Two hands that hold a flat panel clear of its holes: at its ends; where these are too near to holes, on its upper edge between them; none where it has no such places. */
export function plateHolds(plate: Plate, pose: Pose): readonly Extract<Mark, { mark: 'hand' }>[] {
  const long = plate.width >= plate.height ? 0 : 1;
  const space = ([x, y]: Vec2): Vec3 => [x, y, plate.thickness / 2];
  const holds = [endHolds(plate, long), edgeHolds(plate, long, pose)].find((each) => each.every((hold) => isClear(plate, hold))) ?? [];
  return holds.map(({ at, onto }) => ({ mark: 'hand', at: placed(pose, space(at)), onto: turnedBy(pose, [onto[0], onto[1], 0]) }));
}

const isClear = ({ holes }: Plate, { at }: Hold): boolean => holes.every((hole) => Math.hypot(hole.at[0] - at[0], hole.at[1] - at[1]) >= CLEAR_OF_HOLES);

/** A place so far along a panel's long side, and so far across that. */
const place = (long: 0 | 1, along: number, across: number): Vec2 => (long === 0 ? [along, across] : [across, along]);

/** The middles of both ends. */
const endHolds = (plate: Plate, long: 0 | 1): readonly Hold[] =>
  [-1, 1].map((end) => ({ at: place(long, (end * sidesOf(plate, long).along) / 2, 0), onto: place(long, -end, 0) }));

/** On the upper one of the long edges, as far out as there is room between two holes: in the middle of the first and the last space, or both in a single one. */
function edgeHolds(plate: Plate, long: 0 | 1, pose: Pose): readonly Hold[] {
  const up = turnedBy(pose, [...place(long, 0, 1), 0])[2] < 0 ? -1 : 1;
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
