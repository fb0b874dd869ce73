import { jointKinds, type Fault, type Kit } from '../../read/index.ts';
import { chooseJoint, type Laid } from '../joints/choose.ts';
import type { Need } from '../joints/needs.ts';
import { rememberingTurns } from '../joints/turns.ts';
import type { Vec3 } from '../types.ts';
import { lengthOf, minus, times, unit } from '../vectors.ts';
import { faultAt, say, wayInWords } from './faults.ts';
import type { Blueprint, Node, Told } from './types.ts';

/** Points nearer to each other than this are one, mm. */
const SAME_PLACE = 0.5;

export const isSamePlace = (a: Vec3, b: Vec3): boolean => lengthOf(minus(a, b)) < SAME_PLACE;

/** A need with the place in the file of what has it. */
interface ToldNeed extends Need {
  readonly told: Told;
}

interface Meeting {
  readonly at: Vec3;
  readonly needs: readonly ToldNeed[];
}

/**
 * The points of a blueprint where parts meet, each with the joint of the kit that fits and the pose it is laid in.
 * Where only one bar is, none is needed. A point that no joint fits is told with the nearest joint and what that lacks.
 */
export function nodesOf(kit: Kit, blueprint: Blueprint, faults: Fault[]): readonly Node[] {
  const meetings = inOrderOfJoints(meetingsOf(blueprint), blueprint);
  const middle = middleOf(blueprint);
  const turnsOf = rememberingTurns();
  return meetings.map((meeting) => {
    if (!needsJoint(meeting.needs)) return { at: meeting.at, joint: null };
    const hint = blueprint.joints.find(({ at }) => isSamePlace(at, meeting.at));
    const kinds = jointKinds(kit).filter(({ name }) => hint === undefined || hint.kind === null || name === hint.kind);
    // Where the kind is fixed, its kit has told already whether the tube goes in.
    const needs = hint === undefined || hint.kind === null ? meeting.needs : meeting.needs.map((need) => ({ ...need, tube: null }));
    const laid = chooseJoint(kinds, { needs, inwards: inwardsFrom(meeting.at, middle) }, turnsOf);
    const named = hint ?? { ...blueprint.jointAt(meeting.at), group: null };
    if (laid === null || laid.missing.length > 0) faults.push(...missingPorts(named.id, meeting, laid));
    return { at: meeting.at, joint: laid === null ? null : { id: named.id, place: named.place, group: named.group, laid } };
  });
}

/** Points whose joints a short form names come first, in its order. */
function inOrderOfJoints(meetings: readonly Meeting[], { joints }: Blueprint): readonly Meeting[] {
  const named = joints.flatMap((joint) => meetings.find(({ at }) => isSamePlace(at, joint.at)) ?? []);
  return [...named, ...meetings.filter((meeting) => !named.includes(meeting))];
}

/** One bar alone needs no joint; a cable always hooks on one. */
const needsJoint = (needs: readonly Need[]): boolean => needs.length > 1 || needs.some(({ is }) => is === 'stud');

function meetingsOf({ bars, cables }: Blueprint): readonly Meeting[] {
  const found: { at: Vec3; needs: ToldNeed[] }[] = [];
  const put = (at: Vec3, need: ToldNeed): void => {
    const here = found.find((meeting) => isSamePlace(meeting.at, at));
    if (here === undefined) found.push({ at, needs: [need] });
    else here.needs.push(need);
  };
  for (const { id: part, from, to, through, tube, told } of bars) {
    const along = unit(minus(to, from));
    for (const at of through) put(at, { is: 'sleeve', out: along, part, tube, told });
    put(from, { is: 'socket', out: along, part, tube, told });
    put(to, { is: 'socket', out: times(along, -1), part, tube, told });
  }
  for (const { id: part, from, to, face, told } of cables) {
    // Several cables share one stud.
    for (const at of [from, to]) if (!found.some((meeting) => isSamePlace(meeting.at, at) && meeting.needs.some(({ is, out }) => is === 'stud' && isSamePlace(out, face)))) put(at, { is: 'stud', out: face, part, tube: null, told });
  }
  return found.map(({ at, needs }) => ({ at, needs: [...needs].sort((a, b) => RANK[a.is] - RANK[b.is]) }));
}

/** The port with the fewest to choose from is laid first. */
const RANK: Readonly<Record<Need['is'], number>> = { sleeve: 0, socket: 1, stud: 2 };

/** Middle of the box round all points, on the floor plan. */
function middleOf({ bars }: Blueprint): Vec3 {
  const points = bars.flatMap(({ from, to }) => [from, to]);
  const middle = (axis: 0 | 1): number => (Math.min(...points.map((point) => point[axis])) + Math.max(...points.map((point) => point[axis]))) / 2;
  return [middle(0), middle(1), 0];
}

function inwardsFrom(at: Vec3, middle: Vec3): Vec3 {
  const way: Vec3 = [middle[0] - at[0], middle[1] - at[1], 0];
  return lengthOf(way) < SAME_PLACE ? [0, 0, 0] : unit(way);
}

function missingPorts(point: string, { needs }: Meeting, laid: Laid | null): readonly Fault[] {
  const missing = laid?.missing ?? needs;
  const told = needs.find(({ part }) => part === missing[0]?.part)?.told;
  if (told === undefined) return [];
  const lacks = missing.map(({ is, out, part }) => say.lacks(is, wayInWords(out), part));
  return [faultAt(told, say.noJoint(point), say.nearest(laid?.kind.name ?? 'none', lacks))];
}
