import { undone, type Pose } from '../../model/index.ts';
import { indicesOf, type Bits } from './bits.ts';
import type { Ground } from './ground.ts';
import { carried } from './vectors.ts';
import type { Unit } from './units.ts';

/** Places are told apart from this distance on, mm. */
const GRAIN = 0.5;

/**
 * A text that two sets of units share when one is the other, moved and turned: all units as they stand to the rarest
 * one that shows which way round it is; of several such, the least text. A mirror image is something else.
 */
export function formOf(book: FormBook, set: Bits): string {
  const { ground } = book;
  const units = indicesOf(set).flatMap((index) => ground.units.all[index] ?? []);
  const anchors = anchorsOf(ground, units);
  if (anchors.length === 0) return toldBy(units, (unit) => toldIn(centredOn(units), unit));
  return anchors.flatMap((anchor) => ownFrames(ground, anchor).map((frame, turn) => toldBy(units, (unit) => remembered(book, anchor, turn, frame, unit)))).sort()[0] ?? '';
}

/** Forms that were told before, and how each unit stands to each other one. */
export interface FormBook {
  readonly ground: Ground;
  readonly told: Map<number, string>;
}

export const formBook = (ground: Ground): FormBook => ({ ground, told: new Map() });

const toldBy = (units: readonly Unit[], told: (unit: Unit) => string): string => units.map(told).sort().join('|');

function remembered({ ground, told }: FormBook, anchor: Unit, turn: number, frame: Pose, unit: Unit): string {
  const key = (anchor.index * 2 + turn) * ground.size + unit.index;
  const known = told.get(key) ?? toldIn(frame, unit);
  told.set(key, known);
  return known;
}

/** The units of the rarest look that shows which way round it is. */
function anchorsOf(ground: Ground, units: readonly Unit[]): readonly Unit[] {
  const counts = new Map<number, number>();
  const framed = units.filter((unit) => showsItsWay(ground, unit));
  for (const { look } of framed) counts.set(look, (counts.get(look) ?? 0) + 1);
  const [rarest] = [...counts].sort((a, b) => a[1] - b[1] || a[0] - b[0])[0] ?? [];
  return framed.filter(({ look }) => look === rarest);
}

/** A bar looks the same however it is rolled; a joint, a panel or a plate does not. */
function showsItsWay(ground: Ground, unit: Unit): boolean {
  const form = formOfUnit(ground, unit);
  return unit.is === 'part' && form !== 'tube' && form !== 'cable';
}

const formOfUnit = (ground: Ground, unit: Unit): string => ground.units.parts.get(unit.parts[0] ?? '')?.shape.form ?? '';

/** Poses that lead from the item into a unit's own coordinates. A panel and a plate can be turned by half and look the same; all that lies on them does or does not. */
function ownFrames(ground: Ground, unit: Unit): readonly Pose[] {
  const pose = ground.units.parts.get(unit.parts[0] ?? '')?.pose;
  if (pose === undefined) return [];
  const form = formOfUnit(ground, unit);
  const turns: readonly (readonly [number, number])[] = form === 'panel' || form === 'plate' || form === 'folded' ? [[1, 1], [-1, -1]] : [[1, 1]];
  return turns.map(([x, y]) => undone(pose.map((value, index) => (index < 4 ? value * x : index < 8 ? value * y : value))));
}

function centredOn(units: readonly Unit[]): Pose {
  const boxes = units.map(middleOf);
  const centre = [0, 1, 2].map((axis) => boxes.reduce((sum, box) => sum + (box[axis] ?? 0), 0) / Math.max(1, boxes.length));
  return [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, -(centre[0] ?? 0), -(centre[1] ?? 0), -(centre[2] ?? 0), 1];
}

function middleOf({ pieces }: Unit): readonly [number, number, number] {
  const middle = [0, 0, 0];
  for (const { min, max } of pieces) for (let axis = 0; axis < 3; axis++) middle[axis] = (middle[axis] ?? 0) + ((min[axis] ?? 0) + (max[axis] ?? 0)) / 2 / pieces.length;
  return [middle[0] ?? 0, middle[1] ?? 0, middle[2] ?? 0];
}

/** What a unit looks like, and where its middle and its first body's middle are. */
function toldIn(frame: Pose, unit: Unit): string {
  const [first] = unit.pieces;
  const places = [middleOf(unit), first === undefined ? middleOf(unit) : middleOf({ ...unit, pieces: [first] })];
  return `${unit.look}:${places.map(([x, y, z]) => carried(frame, x, y, z).map((value) => Math.round(value / GRAIN + 0.013)).join(',')).join(':')}`;
}

/** How many sets that look like this one the whole item can hold at most, told from its units alone. */
export function copiesOf({ size, units: { all }, finishedLooks }: Ground, set: Bits): number {
  const counts = new Int32Array(size);
  const indices = indicesOf(set);
  for (const index of indices) {
    const { look = 0 } = all[index] ?? {};
    counts[look] = (counts[look] ?? 0) + 1;
  }
  return indices.reduce((least, index) => {
    const { look = 0 } = all[index] ?? {};
    const there = finishedLooks[look] ?? 0;
    return there === 0 ? least : Math.max(1, Math.min(least, Math.floor(there / (counts[look] ?? 1))));
  }, indices.length === 0 ? 1 : Number.MAX_SAFE_INTEGER);
}
