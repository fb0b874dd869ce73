import { times, type Vec3 } from '../../model/index.ts';
import type { NodeLoad } from '../frame/index.ts';
import type { Limits } from '../limits.ts';
import { cornersUnder, middleOf, type Bearing } from './bearings.ts';
import type { Skeleton } from './skeleton.ts';
import { furthest, pushOnTop, solved, topJoints, type Standing } from './stands.ts';

/** Which of the panels in use are laden, each on the half that the push goes towards, and how far their loads alone shift the top. */
export interface Laden {
  readonly stands: 'all at once' | 'the top alone' | 'one side alone';
  /** Ids of the laden panels. */
  readonly panels: readonly string[];
  /** Their loads as the places are tested with, N. */
  readonly load: number;
  /** How much further than under the push alone the highest joints shift under that load, mm; never less than 0. */
  readonly lean: number;
  /** Shift of the highest joints the way they lean, for a push of 1 N, mm. */
  readonly drift: number;
}

/** Panels as high as the highest within this, or no nearer to a side than this, mm. */
const LEVEL = 5;
/** A way that gives less than this share of the weakest is not looked at: no load makes up for it. */
const WEAK = 0.9;

/** All at once, the top alone and, where panels stand side by side, one side alone; `push` is the gentle push in N under all loads. */
export function ladensOf(skeleton: Skeleton, limits: Limits, standing: Standing | null, bearings: readonly Bearing[], push: number): readonly Laden[] {
  const ways = (standing?.ways ?? []).filter(({ drift }) => drift >= WEAK * (standing?.drift ?? 0));
  const told = (stands: Laden['stands'], some: (way: Vec3) => readonly Bearing[]): readonly Laden[] => ways.map(({ way, drift }) => {
    const laden = some(way);
    return { stands, drift, panels: laden.map(({ panel }) => panel.id), load: laden.reduce((sum, { load }) => sum + load, 0), lean: standing === null ? 0 : leanUnder(skeleton, limits, standing, laden, times(way, push), drift * push) };
  });
  const top = Math.max(...bearings.map((bearing) => middleOf(bearing)[2]));
  const highest = bearings.filter((bearing) => middleOf(bearing)[2] > top - LEVEL);
  return [
    ...told('all at once', () => bearings),
    ...(highest.length < bearings.length ? told('the top alone', () => highest) : []),
    ...told('one side alone', (way) => onSide(bearings, way)).filter(({ panels }) => panels.length < bearings.length),
  ];
}

/** The panels that reach furthest along a way. */
function onSide(bearings: readonly Bearing[], way: Vec3): readonly Bearing[] {
  const along = (bearing: Bearing): number => middleOf(bearing)[0] * way[0] + middleOf(bearing)[1] * way[1];
  const most = Math.max(...bearings.map(along));
  return bearings.filter((bearing) => along(bearing) > most - LEVEL);
}

function leanUnder(skeleton: Skeleton, limits: Limits, { sockets }: Standing, laden: readonly Bearing[], push: Vec3, pushed: number): number {
  if (laden.length === 0) return 0;
  const down = laden.flatMap((bearing) => onCorners(skeleton, limits, bearing, push));
  const result = solved(skeleton, limits, sockets, [...pushOnTop(skeleton, push), ...down]);
  return result === null ? 0 : Math.max(0, furthest(result, topJoints(skeleton)) - pushed);
}

/** A panel's load on the joints under it, most of it on the half that lies along a way. */
function onCorners(skeleton: Skeleton, { oneSided }: Limits, bearing: Bearing, way: Vec3): readonly NodeLoad[] {
  const corners = cornersUnder(skeleton, bearing);
  const [x, y] = middleOf(bearing);
  const isNear = (joint: string): boolean => { const [jx, jy] = skeleton.joints.get(joint) ?? [x, y]; return (jx - x) * way[0] + (jy - y) * way[1] > 0; };
  const near = corners.filter(isNear);
  const share = (joint: string): number => {
    if (near.length === 0 || near.length === corners.length) return 1 / corners.length;
    return near.includes(joint) ? oneSided.value / near.length : (1 - oneSided.value) / (corners.length - near.length);
  };
  return corners.map((node): NodeLoad => ({ node, force: [0, 0, -share(node) * bearing.load] }));
}
