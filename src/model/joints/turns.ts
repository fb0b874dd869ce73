import type { JointKind, Port } from '../../read/index.ts';
import type { Vec3 } from '../types.ts';
import { cross, dot, plus, squareTo, times } from '../vectors.ts';
import type { Need } from './needs.ts';

/** A turn from a joint's own axes to the item's: where its x, y and z come to look. */
export interface Turn {
  readonly x: Vec3;
  readonly y: Vec3;
  readonly z: Vec3;
}

/** Directions nearer than this are one: half a degree. */
const SAME_WAY = Math.cos((0.5 * Math.PI) / 180);

export const isSameWay = (a: Vec3, b: Vec3): boolean => dot(a, b) >= SAME_WAY;

export const turnedBy = ({ x, y, z }: Turn, own: Vec3): Vec3 => plus(plus(times(x, own[0]), times(y, own[1])), times(z, own[2]));

const GLOBAL: readonly Vec3[] = [[0, 0, 1], [1, 0, 0], [0, 1, 0], [-1, 0, 0], [0, -1, 0], [0, 0, -1]];

/** The ways a port may be laid on a need; a sleeve takes its bar from either end. */
const axesOf = (port: Port): readonly Vec3[] => (port.is === 'sleeve' ? [port.axis, times(port.axis, -1)] : [port.axis]);

/**
 * Every turn of a joint that lays two of its ports on two needs, or, where all needs run one way, one port on a need
 * and another axis of the joint along an axis of the item. Each turn comes once.
 */
export function turnsFor(kind: JointKind, needs: readonly Need[]): readonly Turn[] {
  const [anchor] = needs;
  if (anchor === undefined) return [];
  const others = needs.filter(({ out }) => Math.abs(dot(out, anchor.out)) < SAME_WAY);
  const turns = kind.ports.filter((port) => port.is === anchor.is).flatMap(axesOf).flatMap((axis) =>
    (others.length > 0
      ? others.flatMap((other) => kind.ports.filter((port) => port.is === other.is).flatMap(axesOf)
        .flatMap((second) => laidOn(axis, second, anchor.out, other.out)))
      : twists(kind, axis, anchor.out)));
  const texts = new Map(turns.map((turn) => [textOf(turn), turn]));
  return [...texts.values()];
}

/** The same for many points of one item: what the needs of one point have in common with those of another is worked out once. */
export function rememberingTurns(): typeof turnsFor {
  const known = new Map<string, readonly Turn[]>();
  return (kind, needs) => {
    const key = [kind.name, ...needs.flatMap(({ is, out }) => [is, ...out.map((value) => value.toFixed(9))])].join(' ');
    const turns = known.get(key) ?? turnsFor(kind, needs);
    known.set(key, turns);
    return turns;
  };
}

/** The turn that lays one axis on one direction and a second axis on the side of another, when the angles between them are the same. */
function laidOn(axis: Vec3, second: Vec3, onto: Vec3, secondOnto: Vec3): readonly Turn[] {
  return Math.abs(Math.acos(clamped(dot(axis, second))) - Math.acos(clamped(dot(onto, secondOnto)))) > (0.5 * Math.PI) / 180 ? [] : aligned(axis, second, onto, secondOnto);
}

const clamped = (cosine: number): number => Math.min(1, Math.max(-1, cosine));

const twists = (kind: JointKind, axis: Vec3, onto: Vec3): readonly Turn[] =>
  [kind.up, ...kind.ports.map((port) => port.axis), ...GLOBAL].flatMap((second) => GLOBAL.flatMap((way) => aligned(axis, second, onto, way)));

function aligned(axis: Vec3, second: Vec3, onto: Vec3, secondOnto: Vec3): readonly Turn[] {
  const [side, sideOnto] = [squareTo(second, axis), squareTo(secondOnto, onto)];
  if (side === null || sideOnto === null) return [];
  const [third, thirdOnto] = [cross(axis, side), cross(onto, sideOnto)];
  const looks = (own: Vec3): Vec3 => cleaned(plus(plus(times(onto, dot(own, axis)), times(sideOnto, dot(own, side))), times(thirdOnto, dot(own, third))));
  return [{ x: looks([1, 0, 0]), y: looks([0, 1, 0]), z: looks([0, 0, 1]) }];
}

/** Dust of the last figures is left out, so that turns by right angles are exact. */
const cleaned = (direction: Vec3): Vec3 => direction.map((value) => (Math.abs(value - Math.round(value)) < 1e-12 ? Math.round(value) + 0 : value)) as unknown as Vec3;

export const textOf = ({ x, y, z }: Turn): string => [...x, ...y, ...z].map((value) => (Math.round(value * 1e6) / 1e6 + 0).toFixed(6)).join(' ');

