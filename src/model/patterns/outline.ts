import type { PatternFlap, Side, Vec2 } from '../types.ts';
import { atSide, ROUND } from './sides.ts';

/** Straights per quarter of a round corner. */
const ROUND_STEPS = 6;

/** A point of an outline, and the radius of the fillet there; 0 for a sharp corner. */
interface Knee {
  readonly at: Vec2;
  readonly radius: number;
}

/** What stands at a stretch of a side, in the order of `along`: a flap, or just an edge `out` from the middle. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly edge: { readonly flap: PatternFlap } | { readonly out: number };
}

/** A side with its stretches, and how far out the bottom of the notch between two of them is. */
export interface SideProfile {
  readonly side: Side;
  readonly stretches: readonly Stretch[];
  readonly notches: readonly number[];
}

/**
 * The outline of a panel, anticlockwise, from the profiles of its four sides. The inside corner between two sides lies where
 * the first stretch of the one and the last of the other begin; inside corners are rounded.
 */
export function outlineOf(profiles: readonly SideProfile[], radius: number): readonly Vec2[] {
  const sides = ROUND.map(({ side, way }) => ({ way, profile: profiles.find((each) => each.side === side) }));
  const knees = sides.flatMap(({ way, profile }, place): Knee[] => {
    const before = sides[(place + 3) % 4];
    if (profile === undefined || before?.profile === undefined) return [];
    const corner = cornerBetween(before.profile, before.way, profile, way);
    return [{ at: corner, radius }, ...sideKnees(profile, way, radius)];
  });
  return knees.flatMap((knee, place) => filleted(knees[(place + knees.length - 1) % knees.length], knee, knees[(place + 1) % knees.length]));
}

/** Inside corner: where the last stretch of one side and the first of the next would meet. */
function cornerBetween(before: SideProfile, beforeWay: 1 | -1, next: SideProfile, way: 1 | -1): Vec2 {
  const last = endOf(before, beforeWay);
  const first = endOf(next, way === 1 ? -1 : 1);
  return runsX(before.side) ? [last, first] : [first, last];
}

const runsX = (side: Side): boolean => side === 'front' || side === 'back';

/** Where a side ends towards higher (1) or lower (−1) `along`. */
const endOf = ({ stretches }: SideProfile, way: 1 | -1): number =>
  (way === 1 ? Math.max(...stretches.map(({ to }) => to)) : Math.min(...stretches.map(({ from }) => from)));

function sideKnees({ side, stretches, notches }: SideProfile, way: 1 | -1, radius: number): Knee[] {
  const upwards = stretches.flatMap((stretch, place): Knee[] => {
    const next = stretches[place + 1];
    const bottom = notches[place] ?? 0;
    const knees = stretchPoints(stretch).map(([along, out]): Knee => ({ at: atSide(side, along, out), radius: 0 }));
    return next === undefined ? knees
      : [...knees, { at: atSide(side, stretch.to, bottom), radius }, { at: atSide(side, next.from, bottom), radius }];
  });
  return way === 1 ? upwards : upwards.toReversed();
}

/** Points of one stretch as (along, out), from its lower end to its upper one. */
function stretchPoints({ from, to, edge }: Stretch): readonly Vec2[] {
  if ('out' in edge) return [[from, edge.out], [to, edge.out]];
  const { flap } = edge;
  return [...flankOf(flap, -1), ...flankOf(flap, 1).toReversed()];
}

/** One flank of a flap, from its root outwards: ends of its strips, lugs, and the snip at the tab. */
function flankOf({ root, strips, lugs, corner, edge }: PatternFlap, end: -1 | 1): readonly Vec2[] {
  return strips.flatMap((strip, place): Vec2[] => {
    const at = end === -1 ? strip.start : strip.end;
    const beside = lugs.filter((lug) => place === 0 && lug.end === end).flatMap((lug): Vec2[] => [
      [at, root + lug.from], [end * lug.edge, root + lug.from], [end * lug.edge, root + lug.to], [at, root + lug.to],
    ]);
    const inner: Vec2[] = place === 0 ? [] : [[at, root + strip.from]];
    const outer: Vec2[] = strip.to === edge && corner > 0 ? [[at, root + edge - corner], [at - end * corner, root + edge]] : [[at, root + strip.to]];
    return [...inner, ...beside, ...outer];
  });
}

function filleted(before: Knee | undefined, { at, radius }: Knee, next: Knee | undefined): readonly Vec2[] {
  if (radius <= 0 || before === undefined || next === undefined) return [at];
  const [in1, in2] = [towards(at, before.at), towards(at, next.at)];
  const middle: Vec2 = [at[0] + radius * (in1[0] + in2[0]), at[1] + radius * (in1[1] + in2[1])];
  return Array.from({ length: ROUND_STEPS + 1 }, (_, step): Vec2 => {
    const angle = (step * Math.PI) / 2 / ROUND_STEPS;
    const [cos, sin] = [radius * Math.cos(angle), radius * Math.sin(angle)];
    return [middle[0] - in2[0] * cos - in1[0] * sin, middle[1] - in2[1] * cos - in1[1] * sin];
  });
}

function towards(from: Vec2, to: Vec2): Vec2 {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  return [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
}

/** Signed area, mm². */
export const areaOf = (outline: readonly Vec2[]): number =>
  outline.reduce((sum, [x, y], index) => {
    const [nx, ny] = outline[(index + 1) % outline.length] ?? [0, 0];
    return sum + (x * ny - nx * y) / 2;
  }, 0);

/** The corners of the box round an outline. */
export const boxOf = (outline: readonly Vec2[]): { readonly min: Vec2; readonly max: Vec2 } => ({
  min: [Math.min(...outline.map(([x]) => x)), Math.min(...outline.map(([, y]) => y))],
  max: [Math.max(...outline.map(([x]) => x)), Math.max(...outline.map(([, y]) => y))],
});
