import type { Face } from '../read/index.ts';
import { placed } from './pose.ts';
import type { Group, Part, Vec2 } from './types.ts';
import { cornersOf, type Corner } from './frame.ts';

/** A group that has a joint at a corner, and that joint's id. */
export interface Hold {
  readonly group: Group;
  readonly jointId: string;
  /** Height of the tubes' axes, mm. */
  readonly level: number;
}

/** What a post at this corner goes through, from the lowest up. */
export function holdsAt(corner: Corner, groups: readonly Group[], parts: readonly Part[], axes: Vec2): readonly Hold[] {
  return groups.filter((group) => hasCorner(group.sides, corner))
    .map((group) => ({ group, level: group.level, jointId: jointAt(corner, group, parts, axes) }))
    .sort((a, b) => a.level - b.level);
}

const hasCorner = (sides: readonly Face[], corner: Corner): boolean =>
  cornersOf(sides).some((each) => each.name === corner.name);

/** The joint that stands on the corner's post axis. */
export function jointAt({ sx, sy }: Corner, group: Group, parts: readonly Part[], axes: Vec2): string {
  const joint = parts.find((part) => {
    if (part.group !== group.name || part.kind !== 'joint') return false;
    const [x, y] = placed(part.pose, [0, 0, 0]);
    return Math.hypot(x - sx * axes[0], y - sy * axes[1]) < 1;
  });
  if (joint === undefined) throw new RangeError(`${group.name} has no joint at its ${sx < 0 ? 'left' : 'right'} ${sy < 0 ? 'front' : 'back'}`);
  return joint.id;
}
