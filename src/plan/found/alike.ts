import { undone, type Pose } from '../../model/index.ts';
import { countOf, indicesOf, type Bits } from './bits.ts';
import type { Ground } from './ground.ts';
import { carried } from './vectors.ts';
import type { Unit } from './units.ts';

/** Places are told apart from this distance on, mm. */
const GRAIN = 0.5;

/**
 * A text that two sets of units share when one is the other, moved and turned: all units as they stand to the rarest
 * one that shows which way round it is; of several such, the least text. A mirror image is something else.
 */
export function formOf(ground: Ground, set: Bits): string {
  const units = indicesOf(set).flatMap((index) => ground.units.all[index] ?? []);
  const frames = framesOf(ground, units);
  const texts = frames.map((frame) => units.map((unit) => toldIn(frame, unit)).sort().join('|'));
  return texts.sort()[0] ?? '';
}

/** Poses that lead from the item into the set's own coordinates. */
function framesOf(ground: Ground, units: readonly Unit[]): readonly Pose[] {
  const counts = new Map<number, number>();
  const framed = units.filter((unit) => showsItsWay(ground, unit));
  for (const { look } of framed) counts.set(look, (counts.get(look) ?? 0) + 1);
  const [rarest] = [...counts].sort((a, b) => a[1] - b[1] || a[0] - b[0])[0] ?? [];
  const anchors = framed.filter(({ look }) => look === rarest).flatMap((unit) => ownFrames(ground, unit));
  return anchors.length > 0 ? anchors : [centredOn(units)];
}

/** A bar looks the same however it is rolled; a joint, a panel or a plate does not. */
function showsItsWay(ground: Ground, unit: Unit): boolean {
  const form = formOfUnit(ground, unit);
  return unit.is === 'part' && form !== 'tube' && form !== 'cable';
}

const formOfUnit = (ground: Ground, unit: Unit): string => ground.units.parts.get(unit.parts[0] ?? '')?.shape.form ?? '';

/** A panel and a plate can be turned by half and look the same; all that lies on them does or does not. */
function ownFrames(ground: Ground, unit: Unit): readonly Pose[] {
  const pose = ground.units.parts.get(unit.parts[0] ?? '')?.pose;
  if (pose === undefined) return [];
  const form = formOfUnit(ground, unit);
  const turns: readonly (readonly [number, number])[] = form === 'panel' || form === 'plate' ? [[1, 1], [-1, -1]] : [[1, 1]];
  return turns.map(([x, y]) => undone(pose.map((value, index) => (index < 4 ? value * x : index < 8 ? value * y : value))));
}

function centredOn(units: readonly Unit[]): Pose {
  const boxes = units.map(middleOf);
  const centre = [0, 1, 2].map((axis) => boxes.reduce((sum, box) => sum + (box[axis] ?? 0), 0) / Math.max(1, boxes.length));
  return [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, -(centre[0] ?? 0), -(centre[1] ?? 0), -(centre[2] ?? 0), 1];
}

function middleOf({ pieces }: Unit): readonly [number, number, number] {
  const middle = [0, 0, 0];
  for (const { least, most } of pieces) for (let axis = 0; axis < 3; axis++) middle[axis] = (middle[axis] ?? 0) + ((least[axis] ?? 0) + (most[axis] ?? 0)) / 2 / pieces.length;
  return [middle[0] ?? 0, middle[1] ?? 0, middle[2] ?? 0];
}

/** What a unit looks like, and where its middle and its first body's middle are. */
function toldIn(frame: Pose, unit: Unit): string {
  const [first] = unit.pieces;
  const places = [middleOf(unit), first === undefined ? middleOf(unit) : middleOf({ ...unit, pieces: [first] })];
  return `${unit.look}:${places.map(([x, y, z]) => carried(frame, x, y, z).map((value) => Math.round(value / GRAIN + 0.013)).join(',')).join(':')}`;
}

/** How many sets that look like this one a greater set can hold at most, told from its units alone. */
export function copiesOf(ground: Ground, set: Bits, within: Bits): number {
  const own = looksIn(ground, set);
  const all = looksIn(ground, within);
  const shares = [...own].map(([look, count]) => Math.floor((all.get(look) ?? count) / count));
  return countOf(set) === 0 ? 1 : Math.max(1, Math.min(...shares));
}

function looksIn(ground: Ground, set: Bits): ReadonlyMap<number, number> {
  const counts = new Map<number, number>();
  for (const index of indicesOf(set)) {
    const look = ground.units.all[index]?.look ?? 0;
    counts.set(look, (counts.get(look) ?? 0) + 1);
  }
  return counts;
}
