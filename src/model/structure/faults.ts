import { FaultError, type Fault } from '../../read/index.ts';
import type { Vec3 } from '../types.ts';
import type { Told } from './types.ts';

/** One fault that building an item shows, at the place where the file tells of the part. */
export const faultAt = ({ position, field }: Told, found: string, remedy: string): Fault => ({ position, field, found, remedy });

/** Throws all faults together, or does nothing when there are none. */
export function throwFaults(faults: readonly Fault[]): void {
  if (faults.length > 0) throw new FaultError(faults);
}

const WAYS: readonly (readonly [Vec3, string])[] = [
  [[0, 0, 1], 'up'], [[0, 0, -1], 'down'], [[1, 0, 0], 'right'], [[-1, 0, 0], 'left'], [[0, -1, 0], 'front'], [[0, 1, 0], 'back'],
];

/** A direction in words, or by its three numbers where none fits. */
export function wayInWords(way: Vec3): string {
  const named = WAYS.find(([axis]) => axis.every((value, place) => Math.abs(value - (way[place] ?? 0)) < 1e-3));
  return named === undefined ? `[${way.map((value) => Number(value.toFixed(2))).join(' ')}]` : named[1];
}

export const say = {
  noJoint: (point: string) => `no joint that fits ${point}`,
  nearest: (kind: string, lacks: readonly string[]) => `a kit with such a joint, or other bars here; the nearest is ${kind}, which lacks ${lacks.join(' and ')}`,
  lacks: (port: 'socket' | 'sleeve' | 'stud', way: string, part: string) => `a ${port} ${port === 'sleeve' ? 'along' : 'towards'} ${way} for ${part}`,
  short: (length: string) => `${length} between its points`,
  longer: (least: string) => `at least ${least}, the room its sockets need`,
  run: (one: string, other: string) => `joints that run into each other at ${one} and ${other}`,
  further: (least: string) => `points at least ${least} apart`,
  pinBeyond: 'a bar that ends before the pin of its joint',
  endLater: (more: string) => `a bar that goes on ${more} past that joint, or pinned: false`,
  loop: 'a loop that is no rectangle in one plane',
  rectangle: 'bars one after the other round a rectangle, in one plane square to face',
  askew: 'bars that do not lie side by side in one plane square to face',
  roundOnly: 'a tube that is not round',
  round: 'round tubes of one width where a panel is folded round them',
  wrappedTwice: (bar: string) => `${bar}, which another panel is folded round`,
  once: 'a bar that is free of other panels: two cannot lie where one is folded round',
  parallel: 'parallel bars in one plane, and a face square to it',
  noRoom: 'no room between the joints',
  room: 'bars with more room between their joints, or a length of its own',
  shallow: (depth: string) => `a depth of ${depth}`,
  deeper: (least: string) => `at least ${least}, so that the rims can be folded and pinned`,
  narrow: 'bars too short for the folded sides',
  wider: 'longer bars: the corners of a folded panel need room',
  cableBeside: 'a cable that does not run along that side',
  alongFace: 'points and a face square to each other',
  studFull: 'more cables on one stud than go over it',
  fewerCables: 'fewer cables at this point',
  hingeFace: 'a bar that does not run along the panel',
  plugBore: (kind: string, bore: string) => `${kind}, whose plug does not go into a bore of ${bore}`,
  plugOf: (bore: string) => `a fitting of the kit with bore: ${bore}, or another tube`,
  hingeOn: 'a bar that the panel lies over',
} as const;
