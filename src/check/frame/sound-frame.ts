import { cross, lengthOf, minus, unit, type Vec3 } from '../../model/index.ts';
import { FrameError } from './errors.ts';
import type { Frame, Member, Section } from './types.ts';

/** Refuses a frame whose names, places or stiffnesses make no sense. Errors: FrameError, naming the culprit. */
export function refuseUnsound(frame: Frame): void {
  const places = new Map(frame.nodes.map((node) => [node.name, node.at]));
  refuseTwins('node', frame.nodes);
  refuseTwins('member', frame.members);
  refuseTwins('cable', frame.cables);
  frame.nodes.forEach(({ name, at }) => { refuseStrange(`node "${name}"`, at); });
  frame.members.forEach((member) => { refuseMember(member, places); });
  frame.cables.forEach((cable) => {
    spanOf(`cable "${cable.name}"`, cable, places);
    refuseUnless(cable.EA > 0 && Number.isFinite(cable.EA), `cable "${cable.name}" has E A ${cable.EA} N; it must be more than 0`);
  });
  frame.supports.forEach(({ node }) => { placeOf('a support', node, places); });
  frame.nodeLoads.forEach(({ node, force, moment }) => {
    placeOf('a load', node, places);
    refuseStrange(`the load on node "${node}"`, [...(force ?? []), ...(moment ?? [])]);
  });
  frame.lineLoads.forEach(({ member, perLength }) => {
    refuseUnless(frame.members.some(({ name }) => name === member), `a line load stands on member "${member}", which is not there`);
    refuseStrange(`the load on member "${member}"`, perLength);
  });
}

type Places = ReadonlyMap<string, Vec3>;

function refuseMember(member: Member, places: Places): void {
  const span = spanOf(`member "${member.name}"`, member, places);
  Object.entries(member.section).forEach(([name, value]: [string, number]) => {
    refuseUnless(value >= 0 && Number.isFinite(value), `member "${member.name}" has ${name} ${value}; it must be 0 or more`);
  });
  refuseUnless(hasSome(member.section), `member "${member.name}" has no stiffness at all; give it E A at least`);
  const { up } = member;
  if (up) {
    const across = lengthOf(cross(unit(span), unit(up)));
    refuseUnless(across > 1e-6, `member "${member.name}" has its "up" along itself; it must point across`);
  }
}

const hasSome = ({ EA, EIy, EIz, GJ }: Section): boolean => EA + EIy + EIz + GJ > 0;

function spanOf(what: string, { from, to }: { readonly from: string; readonly to: string }, places: Places): Vec3 {
  const span = minus(placeOf(what, to, places), placeOf(what, from, places));
  refuseUnless(lengthOf(span) > 0, `${what} has no length: nodes "${from}" and "${to}" are in one place`);
  return span;
}

function placeOf(what: string, node: string, places: Places): Vec3 {
  const at = places.get(node);
  if (!at) throw new FrameError(`${what} names node "${node}", which is not there`);
  return at;
}

function refuseTwins(kind: string, things: readonly { readonly name: string }[]): void {
  const seen = new Set<string>();
  for (const { name } of things) {
    refuseUnless(!seen.has(name), `two ${kind}s are called "${name}"; every ${kind} needs a name of its own`);
    seen.add(name);
  }
}

function refuseStrange(what: string, values: readonly number[]): void {
  refuseUnless(values.every(Number.isFinite), `${what} has the value ${String(values.find((value) => !Number.isFinite(value)))}; it must be a number`);
}

function refuseUnless(sound: boolean, message: string): void {
  if (!sound) throw new FrameError(message);
}
