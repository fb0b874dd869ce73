import { dot, hasCords, jointPorts, placed, times, type JointPorts, type Model, type Solids, type Vec3 } from '../model/index.ts';
import type { Plan, Step } from '../plan/index.ts';
import { blindEnds } from './kit/blind-ends.ts';
import { turnedBy } from './kit/directions.ts';
import { STANDARD_VIEW } from './kit/views.ts';
import type { SceneBody, View } from './types.ts';
import { partBody } from './whole.ts';

/** A joint as it lies in a step, its sockets dark, and of each sort of its ports the one that looks most towards the eye; whether the item has cords, which studs are for. */
export interface JointShown {
  readonly joint: JointPorts;
  readonly bodies: readonly SceneBody[];
  readonly view: View;
  readonly hasCords: boolean;
  readonly places: readonly { readonly port: JointPorts['ports'][number]; readonly at: Vec3 }[];
}

/** The joints that come for the first time in a step, one of each sort. */
export function newJoints(model: Model, { steps }: Plan, step: Step, solids: Solids): readonly JointShown[] {
  const parts = new Map(model.parts.map((part) => [part.id, part]));
  const sortOf = (id: string): string => {
    const shape = parts.get(id)?.shape;
    return shape?.form === 'ported-joint' ? shape.joint.name : shape?.form ?? '';
  };
  const idsOf = (each: Step): readonly string[] => each.newParts.filter(({ kind }) => kind === 'joint').flatMap(({ ids }) => ids);
  const earlier = new Set(steps.slice(0, steps.indexOf(step)).flatMap(idsOf).map(sortOf));
  const first = idsOf(step).filter((id, index, all) => !earlier.has(sortOf(id)) && all.findIndex((other) => sortOf(other) === sortOf(id)) === index);
  return first.flatMap((id) => shownOf(model, step, solids, id) ?? []);
}

function shownOf(model: Model, step: Step, solids: Solids, id: string): JointShown | null {
  const part = model.parts.find((each) => each.id === id);
  const joint = part === undefined ? null : jointPorts(part.shape);
  const body = partBody(model, 'joint', solids, id, [step]);
  if (part === undefined || joint === null || body === null) return null;
  const view = STANDARD_VIEW;
  const towards = (axis: Vec3): number => dot(turnedBy(body.pose, axis), view.towardsEye);
  const ends = joint.ports.flatMap((port) => endsOf(port).map(({ axis, far }) => ({ port, axis, far })));
  const best = (['sleeve', 'socket', 'stud'] as const).flatMap((is) => ends.filter(({ port }) => port.is === is).toSorted((a, b) => towards(b.axis) - towards(a.axis)).slice(0, 1));
  return { joint, view, hasCords: hasCords(model), bodies: [body, ...blindEnds(solids, body, part)], places: best.map(({ port, axis, far }) => ({ port, at: placed(body.pose, times(axis, far)) })) };
}

/** The outer ends of a port, along the joint's own axes. */
function endsOf(port: JointPorts['ports'][number]): readonly { readonly axis: Vec3; readonly far: number }[] {
  const axis: Vec3 = [port.axis[0], port.axis[1], port.axis[2]];
  switch (port.is) {
    case 'sleeve': return [{ axis, far: port.above }, { axis: times(axis, -1), far: port.below }];
    case 'socket': return [{ axis, far: port.stop + port.depth }];
    case 'stud': return [{ axis, far: port.reach }];
  }
}
