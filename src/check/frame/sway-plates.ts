import type { Vec3 } from '../../model/index.ts';
import { SAME, isOn, type SwayInput, type SwayLevel, type SwayPlate } from './sway-input.ts';
import type { FrameNode, Member } from './types.ts';

interface TubeRun {
  readonly name: string;
  readonly posts: readonly [number, number];
  readonly height: number;
  readonly from: string;
  readonly to: string;
}

/** A tube and the nodes on it where a plate's outermost pins hold it, in order from its first post. */
export interface Stretch {
  readonly tube: TubeRun;
  readonly pins: readonly FrameNode[];
}

export const platesOn = ({ plates = [] }: SwayInput, level: SwayLevel, posts: readonly [number, number]): readonly SwayPlate[] =>
  plates.filter((plate) => samePosts(plate.posts, posts) && [plate.low, plate.high].some((height) => isOn(level, posts, height)));

const samePosts = (a: readonly [number, number], b: readonly [number, number]): boolean => a.includes(b[0]) && a.includes(b[1]);

export function tubeStretches({ posts }: SwayInput, tube: TubeRun, plates: readonly SwayPlate[]): Stretch {
  const [a, b] = tube.posts.map((post) => posts[post] ?? { x: 0, y: 0 });
  const length = Math.hypot((b?.x ?? 0) - (a?.x ?? 0), (b?.y ?? 0) - (a?.y ?? 0));
  const places = plates.flatMap((plate) => [plate.from, plate.to].map((at) => (plate.posts[0] === tube.posts[0] ? at : length - at)));
  const apart = places.toSorted((one, other) => one - other)
    .reduce<readonly number[]>((kept, at) => (at - (kept.at(-1) ?? -Infinity) > SAME ? [...kept, at] : kept), []);
  const on = (at: number): Vec3 => {
    const share = at / length;
    return [(a?.x ?? 0) * (1 - share) + (b?.x ?? 0) * share, (a?.y ?? 0) * (1 - share) + (b?.y ?? 0) * share, tube.height];
  };
  return { tube, pins: apart.map((at, index) => ({ name: `${tube.name} pin ${index}`, at: on(at) })) };
}

/**
 * A plate resists being racked as two crossed struts and two upright edges between its outermost pins, each
 * hinged at its ends. It does nothing out of its own plane and does not stiffen the tubes between its pins.
 */
export function plateMembers({ posts, plates = [] }: SwayInput, stretches: readonly Stretch[]): readonly Member[] {
  return plates.flatMap((plate, index) => {
    const pin = (height: number, at: number): string => pinNear(stretches, plate, height, pointOf(posts, plate, at));
    const corners = { lowFrom: pin(plate.low, plate.from), lowTo: pin(plate.low, plate.to), highFrom: pin(plate.high, plate.from), highTo: pin(plate.high, plate.to) };
    const bar = (name: string, from: string, to: string, EA: number): Member =>
      ({ name: `plate ${index} ${name}`, from, to, section: { EA, EIy: 0, EIz: 0, GJ: 0 } });
    return [
      bar('rising strut', corners.lowFrom, corners.highTo, plate.strutStiffness),
      bar('falling strut', corners.highFrom, corners.lowTo, plate.strutStiffness),
      bar('first edge', corners.lowFrom, corners.highFrom, plate.edgeStiffness),
      bar('second edge', corners.lowTo, corners.highTo, plate.edgeStiffness),
    ];
  });
}

function pointOf(posts: SwayInput['posts'], plate: SwayPlate, at: number): readonly [number, number] {
  const [a, b] = plate.posts.map((post) => posts[post] ?? { x: 0, y: 0 });
  const [x, y] = [(b?.x ?? 0) - (a?.x ?? 0), (b?.y ?? 0) - (a?.y ?? 0)];
  const share = at / Math.hypot(x, y);
  return [(a?.x ?? 0) + x * share, (a?.y ?? 0) + y * share];
}

function pinNear(stretches: readonly Stretch[], plate: SwayPlate, height: number, [x, y]: readonly [number, number]): string {
  const pins = stretches.filter(({ tube }) => samePosts(tube.posts, plate.posts) && Math.abs(tube.height - height) < SAME).flatMap((each) => each.pins);
  const far = ({ at }: FrameNode): number => Math.hypot(at[0] - x, at[1] - y);
  return pins.toSorted((one, other) => far(one) - far(other))[0]?.name ?? '';
}
