import { times, type Vec3 } from '../../model/index.ts';
import { FrameError, solveFrame, type FrameResult, type NodeLoad } from '../frame/index.ts';
import type { Limits } from '../limits.ts';
import { panelsOf, wayOf } from './bearings.ts';
import type { Skeleton } from './skeleton.ts';
import { isStretchOf, pushOnPanels, structureFrame, type Sockets } from './structure-frame.ts';

/** The bar that bends most and its moment, N·mm, for 1 N. */
export interface Bent {
  readonly bar: string;
  readonly moment: number;
}

/** How an item of points and bars stands, for a push of 1 N on its highest joints the worst of four ways. */
export interface Standing {
  /** Whether hinged sockets are enough for it to stand. */
  readonly sockets: Sockets;
  /** Height of the highest joints over the floor, mm. */
  readonly height: number;
  /** Greatest shift of a highest joint, mm, and the way of the push that shifts it so; and by each of the four ways. */
  readonly drift: number;
  readonly ways: readonly { readonly way: Vec3; readonly drift: number }[];
  readonly weaker: 'sideways' | 'front to back';
  readonly bent: Bent;
  /** The hardest worked cable; null without cables. */
  readonly pull: { readonly cable: string; readonly force: number } | null;
  /** From 1 N on each backrest, square to it; null without one, or where none stands. */
  readonly backrest: Bent | null;
}

const WAYS: readonly Vec3[] = [[1, 0, 0], [-1, 0, 0], [0, 1, 0], [0, -1, 0]];
/** Joints as high as the highest within this, mm. */
const LEVEL = 5;

/** Null where the item gives way even with stiff sockets. */
export function standingOf(skeleton: Skeleton, limits: Limits): Standing | null {
  return standingWith(skeleton, limits, 'hinged') ?? standingWith(skeleton, limits, 'stiff');
}

function standingWith(skeleton: Skeleton, limits: Limits, sockets: Sockets): Standing | null {
  const top = topJoints(skeleton);
  const pushed = WAYS.map((way) => solved(skeleton, limits, sockets, pushOnTop(skeleton, way)));
  const results = pushed.flatMap((result) => result ?? []);
  if (results.length < WAYS.length) return null;
  const drifts = results.map((result) => furthest(result, top));
  const backs = pushOnPanels(skeleton, 'backrest', (panel) => outOfBack(skeleton, panel));
  const back = backs.length === 0 ? null : solved(skeleton, limits, sockets, backs);
  return {
    sockets, height: Math.max(...top.map((joint) => skeleton.joints.get(joint)?.[2] ?? 0)),
    drift: Math.max(...drifts), ways: WAYS.map((way, index) => ({ way, drift: drifts[index] ?? 0 })), weaker: drifts.indexOf(Math.max(...drifts)) < 2 ? 'sideways' : 'front to back',
    bent: mostBent(skeleton, results), pull: hardest(results), backrest: back === null ? null : mostBent(skeleton, [back]),
  };
}

/** Null where the frame gives way. */
export function solved(skeleton: Skeleton, limits: Limits, sockets: Sockets, loads: readonly NodeLoad[]): FrameResult | null {
  try {
    return solveFrame(structureFrame(skeleton, limits, sockets, loads));
  } catch (error) {
    if (error instanceof FrameError) return null;
    throw error;
  }
}

/** A push, N, shared evenly by the highest joints. */
export function pushOnTop(skeleton: Skeleton, push: Vec3): readonly NodeLoad[] {
  const top = topJoints(skeleton);
  return top.map((node): NodeLoad => ({ node, force: times(push, 1 / top.length) }));
}

export function topJoints({ joints }: Skeleton): readonly string[] {
  const top = Math.max(...[...joints.values()].map((at) => at[2]));
  return [...joints].filter(([, at]) => at[2] > top - LEVEL).map(([id]) => id);
}

/** A back leans against the face that looks up or forward; the push goes through the panel. */
function outOfBack(skeleton: Skeleton, panel: string): Vec3 {
  const part = skeleton.model.parts.find(({ id }) => id === panel);
  const face = part === undefined ? ([0, 1, 0] as const) : wayOf(part, [0, 0, 1]);
  return backwards(skeleton, panel, face);
}

function backwards(skeleton: Skeleton, panel: string, face: Vec3): Vec3 {
  const seats = skeleton.model.places.filter(({ use }) => use === 'seat').flatMap((place) => panelsOf(skeleton, place));
  const part = skeleton.model.parts.find(({ id }) => id === panel);
  const from = seats[0]?.part.pose ?? [];
  const away: Vec3 = part === undefined ? [0, 1, 0] : [(part.pose[12] ?? 0) - (from[12] ?? 0), (part.pose[13] ?? 0) - (from[13] ?? 0), 0];
  return face[0] * away[0] + face[1] * away[1] >= 0 ? face : times(face, -1);
}

/** Furthest that one of the highest joints shifts, mm. */
export const furthest = ({ displacements }: FrameResult, top: readonly string[]): number =>
  Math.max(...top.map((joint) => { const [x, y] = displacements[joint] ?? [0, 0]; return Math.hypot(x, y); }));

function mostBent({ bars }: Skeleton, results: readonly FrameResult[]): Bent {
  const all = results.flatMap(({ memberForces }) => bars.flatMap(({ id }) => Object.entries(memberForces).filter(([name]) => isStretchOf(name, id))
    .map(([, { from, to }]): Bent => ({ bar: id, moment: Math.max(Math.hypot(from[4], from[5]), Math.hypot(to[4], to[5])) }))));
  return all.reduce((most, each) => (each.moment > most.moment ? each : most), { bar: '', moment: 0 });
}

function hardest(results: readonly FrameResult[]): Standing['pull'] {
  const all = results.flatMap(({ cableForces }) => Object.entries(cableForces).map(([cable, force]) => ({ cable, force })));
  return all.length === 0 ? null : all.reduce((most, each) => (each.force > most.force ? each : most));
}
