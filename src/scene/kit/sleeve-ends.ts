import { dot, jointPorts, placed, plus, times, undone, type Connection, type Model, type Part, type Pose, type Vec3 } from '../../model/index.ts';
import type { Mark } from '../types.ts';
import { turnedBy } from './directions.ts';

/** Distances of the near ends of the sleeves on a bar from the bar's own first end (a post's foot), mm, from there on; of those of some joints alone where these are named. */
export function sleeveEnds(model: Model, barId: string, joints?: readonly string[]): readonly number[] {
  const bar = model.parts.find(({ id }) => id === barId);
  if (bar?.shape.form !== 'tube') return [];
  const half = bar.shape.length / 2;
  return model.connections.flatMap((each) => (each.is === 'sleeve' && each.bar === barId && (joints?.includes(each.joint) ?? true) ? [half + nearEnd(model, bar.pose, each)] : []))
    .sort((a, b) => a - b);
}

/** Along the bar from its middle. */
function nearEnd({ parts }: Model, bar: Pose, { joint: jointId }: Extract<Connection, { is: 'sleeve' }>): number {
  const joint = parts.find(({ id }) => id === jointId);
  if (joint === undefined) return 0;
  const along = turnedBy(bar, [1, 0, 0]);
  return Math.round((placed(undone(bar), placed(joint.pose, [0, 0, 0]))[0] - sleeveReach(joint, along)) * 1e6) / 1e6;
}

/** How far a joint's sleeve reaches from its middle against a direction, mm; 0 where it has none along it. */
export function sleeveReach({ shape, pose }: Pick<Part, 'shape' | 'pose'>, along: Vec3): number {
  if (shape.form === 'joint') return dot(turnedBy(pose, [0, 0, 1]), along) > 0 ? shape.joint.sleeveBelow : shape.joint.sleeveAbove;
  if (shape.form !== 'ported-joint') return 0;
  const reaches = shape.joint.ports.flatMap((port) => {
    const same = port.is === 'sleeve' ? dot(turnedBy(pose, port.axis), along) : 0;
    return port.is === 'sleeve' && Math.abs(same) > 0.99 ? [same > 0 ? port.below : port.above] : [];
  });
  return reaches[0] ?? 0;
}

/** Ends of a sleeve that are so alike need not be told apart, mm. */
const ALIKE = 8;

/** Of a standing joint whose sleeve has a long and a short end: its middle, the rim of the long end, and how far that is, mm. */
export interface LongEnd {
  readonly middle: Vec3;
  readonly rim: Vec3;
  readonly far: number;
}

/** The long end of a joint's sleeve; null where it has none or its ends are alike. */
export function longEnd(joint: Pick<Part, 'shape' | 'pose'>): LongEnd | null {
  const sleeve = jointPorts(joint.shape)?.ports.find(({ is }) => is === 'sleeve');
  if (sleeve === undefined) return null;
  const axis = turnedBy(joint.pose, sleeve.axis);
  const [ahead, behind] = [sleeveReach(joint, times(axis, -1)), sleeveReach(joint, axis)];
  if (Math.abs(ahead - behind) < ALIKE) return null;
  const middle = placed(joint.pose, [0, 0, 0]);
  return { middle, rim: plus(middle, times(axis, ahead > behind ? ahead : -behind)), far: Math.max(ahead, behind) };
}

/** How long the long end of a sleeve is, moved off by `away`, mm; nothing where its ends are alike. */
export function longEndTold(joint: Pick<Part, 'shape' | 'pose'>, away: Vec3): readonly Mark[] {
  const long = longEnd(joint);
  return long === null ? [] : [{ mark: 'length', from: long.middle, to: long.rim, away, told: { as: 'length', mm: long.far } }];
}
