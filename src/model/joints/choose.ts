import type { JointKind, Port } from '../../read/index.ts';
import type { Vec3 } from '../types.ts';
import { dot } from '../vectors.ts';
import type { Need, Needs } from './needs.ts';
import { isSameWay, textOf, turnedBy, turnsFor, type Turn } from './turns.ts';

/** A need with the port that takes it, both in the joint's own and in the item's directions. */
export interface Taken {
  readonly need: Need;
  readonly port: Port;
  /** The port's axis as it stands in the item. */
  readonly axis: Vec3;
}

/** A joint as it is laid at a point. */
export interface Laid {
  readonly kind: JointKind;
  readonly turn: Turn;
  readonly taken: readonly Taken[];
  readonly missing: readonly Need[];
  readonly cost: number;
}

/**
 * What speaks against a joint, in our own measure: a need it does not meet outweighs all else; then ports left idle,
 * the most bulky first; then how it stands; its mass decides between the rest.
 */
const COST = { missing: 100, idleSleeve: 8, idleSocket: 5, idleStud: 0.5, lean: 0.5, socketOutwards: 0.2, studInwards: 0.1, kilogram: 1 } as const;

/** The joint of the kit that meets the needs of a point best, and how it is laid; null when there are no needs. Ties go by the kit's order, then by the pose. */
export function chooseJoint(kinds: readonly JointKind[], { needs, inwards }: Needs, turnsOf: typeof turnsFor = turnsFor): Laid | null {
  const laid = kinds.flatMap((kind) => turnsOf(kind, needs).map((turn) => lay(kind, turn, needs, inwards)));
  return laid.reduce<Laid | null>((best, one) => (best === null || isBetter(one, best) ? one : best), null)
    ?? bare(kinds, needs);
}

const isBetter = (one: Laid, best: Laid): boolean =>
  one.cost < best.cost - 1e-9 || (one.cost < best.cost + 1e-9 && one.kind === best.kind && textOf(one.turn) < textOf(best.turn));

/** Where no joint has even one port that is asked for, the first one lacks everything. */
function bare([kind]: readonly JointKind[], needs: readonly Need[]): Laid | null {
  return kind === undefined || needs.length === 0 ? null
    : { kind, turn: { x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] }, taken: [], missing: needs, cost: Infinity };
}

function lay(kind: JointKind, turn: Turn, needs: readonly Need[], inwards: Vec3): Laid {
  const idle = kind.ports.map((port) => ({ port, axis: turnedBy(turn, port.axis) }));
  const taken: Taken[] = [];
  const missing: Need[] = [];
  for (const need of needs) {
    const place = idle.findIndex(({ port, axis }) => takes(kind, port, axis, need));
    const [found] = place < 0 ? [] : idle.splice(place, 1);
    if (found === undefined) missing.push(need);
    else taken.push({ need, ...found });
  }
  const standing = COST.lean * (1 - dot(turnedBy(turn, kind.up), [0, 0, 1]))
    + taken.reduce((sum, { port, axis }) => sum + (port.is === 'stud' ? COST.studInwards * (1 + dot(axis, inwards)) : 0), 0);
  const cost = COST.missing * missing.length + idle.reduce((sum, { port, axis }) => sum + idleCost(port, axis, inwards), 0) + standing + COST.kilogram * kind.mass;
  return { kind, turn, taken, missing, cost };
}

function takes(kind: JointKind, port: Port, axis: Vec3, { is, out, tube }: Need): boolean {
  if (port.is !== is || (tube !== null && !goesIn(kind, tube))) return false;
  return isSameWay(axis, out) || (is === 'sleeve' && isSameWay(axis, [-out[0], -out[1], -out[2]]));
}

/** A tube sits well in a bore of its own outline with up to this much more width, mm. Common practice, no source. */
const PLAY = 2;

const goesIn = ({ profile, bore }: JointKind, tube: { readonly profile: string; readonly outside: number }): boolean =>
  profile === tube.profile && bore > tube.outside && bore <= tube.outside + PLAY;

function idleCost(port: Port, axis: Vec3, inwards: Vec3): number {
  switch (port.is) {
    case 'sleeve': return COST.idleSleeve;
    case 'socket': return COST.idleSocket + COST.socketOutwards * (1 - dot(axis, inwards));
    case 'stud': return COST.idleStud + COST.studInwards * (1 + dot(axis, inwards));
  }
}
