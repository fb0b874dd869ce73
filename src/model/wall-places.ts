import { placed } from './pose.ts';
import { endsOfTube } from './tube.ts';
import type { Model, Part, Shape, Vec3 } from './types.ts';

/** From a post's upper end to the bracket on it at least, white between it and a joint's sleeve, and the steps in which its place is sought, mm. */
const UNDER_TOP = 40;
const BESIDE_SLEEVE = 20;
const SOUGHT = 10;
/** A joint is on a post whose axis it is nearer to than this, mm. */
const ON_POST = 10;

/** From the tube's axis to the wall where the kit has no bracket, mm. */
const PLAIN_REACH = 60;

/** From the middle of a bracket's plate to the screw over its arm and to the one under it, mm. */
export const screwsOut = ({ plate }: { readonly plate: number }): number => 0.6 * (plate / 2);

/** A place for a bracket: on the axis of an upright tube at the back. */
export interface WallPlace {
  readonly at: Vec3;
  readonly outside: number;
}

const isUpright = (part: Part): boolean => {
  const [[, , low], [, , high]] = endsOfTube(part) ?? [[0, 0, 0], [0, 0, 0]];
  const [[x], [far]] = endsOfTube(part) ?? [[0], [1]];
  return Math.abs(high - low) > 10 && Math.abs((far ?? 1) - (x ?? 0)) < 1;
};

/** Near the top of the outermost two of the rearmost upright tubes; those that the item has brackets on where it has any. */
export function wallPlaces({ parts, kit }: Pick<Model, 'parts' | 'kit'>): readonly WallPlace[] {
  const brackets = parts.flatMap(({ shape, pose }): readonly WallPlace[] =>
    (shape.form === 'fitting' && shape.fitting.is === 'wall-bracket' ? [{ at: placed(pose, [0, 0, 0]), outside: shape.outside }] : []));
  if (brackets.length > 0) return brackets;
  const joints = parts.filter(({ kind }) => kind === 'joint').map(({ pose }) => placed(pose, [0, 0, 0]));
  const away = Math.max(kit.joint.sleeveBelow, kit.joint.sleeveAbove) + BESIDE_SLEEVE;
  const freeUnder = ([x, y, z]: Vec3): number => {
    const taken = joints.filter((at) => Math.hypot(at[0] - x, at[1] - y) < ON_POST).map((at) => at[2]);
    const tries = Array.from({ length: Math.floor(z / SOUGHT) }, (_, step) => z - UNDER_TOP - step * SOUGHT);
    return tries.find((height) => taken.every((joint) => Math.abs(joint - height) > away)) ?? z - UNDER_TOP;
  };
  const posts = parts.filter(isUpright).flatMap((part): readonly WallPlace[] => {
    const ends = endsOfTube(part);
    if (ends === null || part.shape.form !== 'tube') return [];
    const top = ends[0][2] > ends[1][2] ? ends[0] : ends[1];
    return [{ at: [top[0], top[1], freeUnder(top)], outside: part.shape.outside }];
  });
  const back = Math.max(...posts.map(({ at }) => at[1]));
  const rear = posts.filter(({ at }) => back - at[1] < 1).toSorted((a, b) => a.at[0] - b.at[0]);
  return rear.filter((_, index) => index === 0 || index === rear.length - 1);
}

const bracketKind = ({ catalogue }: Model['kit']) => catalogue.fittings.find((fitting) => fitting.is === 'wall-bracket');

/** From the axis of a tube in a bracket to the wall, mm. */
export const wallReach = (kit: Model['kit']): number => bracketKind(kit)?.reach ?? PLAIN_REACH;

/** A bracket for a tube of that outside, mm: the kit's, or a plain block where it has none. */
export function wallBracket(kit: Model['kit'], outside: number): Shape {
  const fitting = bracketKind(kit);
  return fitting === undefined
    ? { form: 'plate', width: 40, height: 80, thickness: PLAIN_REACH, holes: [] }
    : { form: 'fitting', fitting, outside, inside: 0 };
}

/** Whether the item has brackets of its own among its parts. */
export const hasWallBrackets = ({ parts }: Pick<Model, 'parts'>): boolean =>
  parts.some(({ shape }) => shape.form === 'fitting' && shape.fitting.is === 'wall-bracket');
