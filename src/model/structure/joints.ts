import { CORNER, type JointKind, type Kit } from '../../read/index.ts';
import { turnedBy, type Turn } from '../joints/turns.ts';
import { makePart } from '../make-part.ts';
import { facing } from '../pose.ts';
import { jointPin, wingNut } from '../fasteners.ts';
import type { Connection, Part, Shape, Vec3 } from '../types.ts';
import { cross, dot, lengthOf, minus, plus, squareTo, times } from '../vectors.ts';
import type { Taken } from '../joints/choose.ts';
import type { BuiltBar, Node } from './types.ts';

export type JointNode = Node & { readonly joint: NonNullable<Node['joint']> };

/** A pin through a sleeve and the bar in it. */
export interface SleevePin {
  readonly bar: string;
  readonly joint: string;
  readonly along: Vec3;
  /** Where pin and sleeve's axis cross, and the way the pin leaves; null where the bar is to slide. */
  readonly pin: { readonly at: Vec3; readonly out: Vec3 } | null;
}

/** The sleeves of a node with their pins: heads look away from the middle of the item, along one axis of the item where they can. */
export function sleevePins({ at, joint }: JointNode, bars: readonly BuiltBar[], middle: Vec3): readonly SleevePin[] {
  const { id, laid } = joint;
  return laid.taken.filter(({ port }) => port.is === 'sleeve').flatMap((taken) => {
    const bar = bars.find(({ plan }) => plan.id === taken.need.part);
    if (bar === undefined || taken.port.is !== 'sleeve') return [];
    const place = plus(at, times(taken.axis, -taken.port.pin));
    const out = pinWay(laid.turn, taken, minus(place, middle));
    return [{ bar: bar.plan.id, joint: id, along: bar.axis, pin: bar.plan.pinned ? { at: place, out } : null }];
  });
}

/** Across the sleeve along one of the joint's own axes: the item's y before its x before its z, outwards. */
function pinWay(turn: Turn, { port, axis }: Taken, outwards: Vec3): Vec3 {
  const own = ([[0, 1, 0], [1, 0, 0], [0, 0, 1]] as const).map((direction) => squareTo(direction, port.axis)).filter((direction) => direction !== null);
  const ways = own.map((direction) => turnedBy(turn, direction));
  const rank = (way: Vec3): number => 4 * Math.abs(way[1]) + 2 * Math.abs(way[0]) + Math.abs(way[2]);
  const best = ways.reduce((first, way) => (rank(way) > rank(first) + 1e-9 ? way : first), ways[0] ?? squareTo([0, 1, 0], axis) ?? [1, 0, 0]);
  return dot(best, outwards) < -1e-6 ? times(best, -1) : best;
}

/** The joint as a part, drilled where its pins go. */
export function jointPart(kit: Kit, { at, joint }: JointNode, pins: readonly SleevePin[]): Part {
  const { id, place, group, laid: { kind, turn } } = joint;
  const drilled = pins.flatMap(({ pin }) => (pin === null ? [] : [{ at: inOwn(turn, minus(pin.at, at)), along: inOwn(turn, pin.out) }]));
  return { ...makePart(kit, id, 'joint', place, jointShape(kit, kind, drilled), facing(at, turn.x, turn.y, turn.z)), group };
}

/** The corner joint keeps the form that decks and frames know it by. */
function jointShape(kit: Kit, kind: JointKind, drilled: readonly { readonly at: Vec3; readonly along: Vec3 }[]): Shape {
  const pinDiameter = kit.jointPin.diameter;
  if (kind.name !== CORNER) return { form: 'ported-joint', joint: kind, pinDiameter, drilled };
  const [first] = drilled;
  return { form: 'joint', joint: kit.joint, pinDiameter, drilled: first === undefined ? null : Math.abs(first.along[0]) > Math.abs(first.along[1]) ? 'x' : 'y' };
}

/** A direction of the item in the joint's own axes. */
const inOwn = ({ x, y, z }: Turn, way: Vec3): Vec3 =>
  [dot(way, x), dot(way, y), dot(way, z)].map((value) => Math.round(value * 1e9) / 1e9 + 0) as unknown as Vec3;

/** Pin and nut through a sleeve, and how they hold; the pin's own x and y as posts have them. */
export function pinParts(kit: Kit, sleeve: SleevePin, pin: NonNullable<SleevePin['pin']>, outside: number, labels: { readonly pin: string; readonly nut: string; readonly place: Part['place'] }): { readonly parts: readonly Part[]; readonly connection: Connection } {
  const across = cross(pin.out, sleeve.along);
  const x = lengthOf(across) < 1e-9 ? [1, 0, 0] as const : across;
  const head = plus(pin.at, times(pin.out, outside / 2));
  const end = plus(pin.at, times(pin.out, -outside / 2));
  return {
    parts: [
      jointPin(kit, labels.pin, labels.place, facing(head, x, cross(pin.out, x), pin.out)),
      wingNut(kit, labels.nut, labels.place, facing(end, x, cross(times(pin.out, -1), x), times(pin.out, -1))),
    ],
    connection: { is: 'pin', pin: labels.pin, nut: labels.nut, holds: [sleeve.bar, sleeve.joint], out: pin.out },
  };
}
