import type { Fault, Kit } from '../../read/index.ts';
import { PARTS } from '../../parts/facts.ts';
import { facing } from '../pose.ts';
import type { Connection, Part, Shape, Vec3 } from '../types.ts';
import { cross, dot, lengthOf, minus, plus, times, unit } from '../vectors.ts';
import { wrapOf } from '../wrap.ts';
import { faultAt, say } from './faults.ts';
import { isSamePlace } from './nodes.ts';
import type { Made, Node, PlannedCable } from './types.ts';

/** Free air between the widest bulge of a wrapped side and a cable, and between crossing cables, mm. */
const AIR = 1;
const CROSSING_AIR = 0.5;
/** A loop slips over the stud's head with this much play all round, mm. */
const LOOP_PLAY = 0.5;

/** Cables on the studs of their joints, each as near as the others on its studs and across its way let it. */
export function buildCables(kit: Kit, cables: readonly PlannedCable[], nodes: readonly Node[], faults: Fault[]): Made {
  const layers = layersOf(cables);
  const made = cables.map((plan, place) => buildCable(kit, plan, layers[place] ?? 0, nodes, faults));
  return { parts: made.flatMap(({ parts }) => parts), connections: made.flatMap(({ connections }) => connections) };
}

/** The lowest layer that no cable before it holds on the same stud or across its way. */
function layersOf(cables: readonly PlannedCable[]): readonly number[] {
  return cables.reduce<readonly number[]>((layers, cable, place) => {
    const taken = layers.filter((_, other) => areInTheWay(cable, cables[other] ?? cable));
    let layer = 0;
    while (taken.includes(layer)) layer += 1;
    return [...layers, place === 0 ? 0 : layer];
  }, []);
}

function areInTheWay(one: PlannedCable, other: PlannedCable): boolean {
  if (!isSamePlace(one.face, other.face) || Math.abs(dot(minus(one.from, other.from), one.face)) > 1) return false;
  const ends = [one.from, one.to].some((at) => isSamePlace(at, other.from) || isSamePlace(at, other.to));
  return ends || doCross(one, other);
}

/** Whether the two cross, seen from the face. */
function doCross(one: PlannedCable, other: PlannedCable): boolean {
  const turn = (a: Vec3, b: Vec3, c: Vec3): number => dot(cross(minus(b, a), minus(c, a)), one.face);
  return turn(one.from, one.to, other.from) * turn(one.from, one.to, other.to) < 0 && turn(other.from, other.to, one.from) * turn(other.from, other.to, one.to) < 0;
}

/** How far outside the joints' middles the first cable runs clear of the wrapped sides, mm. */
function firstLayer(kit: Kit): number {
  const wrap = wrapOf(kit);
  return wrap.path.bulge + kit.cable.diameter / 2 + AIR;
}

function buildCable(kit: Kit, plan: PlannedCable, layer: number, nodes: readonly Node[], faults: Fault[]): Made {
  const { id, kind, place, group, from, to, face, told } = plan;
  const way = minus(to, from);
  if (Math.abs(dot(unit(way), face)) > 1e-3) faults.push(faultAt(told, say.cableBeside, say.alongFace));
  const offset = firstLayer(kit) + layer * (kit.cable.diameter + CROSSING_AIR);
  const hooks = [from, to].flatMap((at) => {
    const joint = nodes.find((node) => isSamePlace(node.at, at))?.joint;
    const stud = joint?.laid.taken.find(({ need, axis }) => need.is === 'stud' && isSamePlace(axis, face))?.port;
    return joint === null || joint === undefined || stud?.is !== 'stud' ? [] : [{ joint: joint.id, stud }];
  });
  if (hooks.some(({ stud }) => offset + kit.cable.diameter / 2 > stud.reach - stud.head)) faults.push(faultAt(told, say.studFull, say.fewerCables));
  const [length, direction] = [lengthOf(way), unit(way)];
  const head = Math.max(kit.joint.studHeadDiameter, ...hooks.map(({ stud }) => stud.headDiameter));
  const shape: Shape = { form: 'cable', diameter: kit.cable.diameter, length, loopInside: head / 2 + LOOP_PLAY };
  const part: Part = {
    id, kind, place, group, shape, mass: PARTS[kind].mass(shape, 0),
    pose: facing(plus(from, times(face, offset)), direction, cross(face, direction), face),
  };
  return { parts: [part], connections: hooks.map(({ joint }): Connection => ({ is: 'hook', cable: id, joint, out: face })) };
}
