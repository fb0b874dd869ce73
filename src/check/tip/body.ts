import { endsOfTube, placed, type FlatPattern, type Part, type Shape, type Vec3 } from '../../model/index.ts';
import { partsOf } from '../parts.ts';
import type { Case } from '../types.ts';

/** A body that may tip over any of four edges. Lengths mm, weight N, mass kg. */
export interface Body {
  readonly mass: number;
  readonly weight: number;
  readonly centreHeight: number;
  /** From the posts' middle line, the edge it tips over most easily, in to its centre of gravity. */
  readonly arm: number;
  readonly height: number;
}

interface Lump {
  readonly mass: number;
  readonly at: Vec3;
}

/** The four ways a body may tip: along x or y, either way. */
export const ways = [[0, 1], [0, -1], [1, 1], [1, -1]] as const;
export type Way = (typeof ways)[number];

/** The empty item, tipping the way it does most easily. */
export const emptyBody = (given: Case): Body => easiest(given, () => lumpsOf(given));

/** The worst laden item: the top deck alone bears its load, standing towards the edge it tips over. */
export const topLadenBody = (given: Case): Body => easiest(given, (way) => [...lumpsOf(given), topLoad(given, way)]);

function easiest(given: Case, lumps: (way: Way) => readonly Lump[]): Body {
  const bodies = ways.map((way) => bodyOf(given, way, lumps(way)));
  return bodies.reduce((worst, body) => (body.weight * body.arm < worst.weight * worst.arm ? body : worst));
}

const lumpsOf = ({ model }: Case): readonly Lump[] =>
  model.parts.map((part) => ({ mass: part.mass, at: placed(part.pose, middleOf(part.shape)) }));

function topLoad(given: Case, [axis, way]: Way): Lump {
  const { model, limits } = given;
  const { least, most } = footing(given, axis);
  const off = (least + most) / 2 + way * limits.loadForward.value * (most - least);
  const height = Math.max(...model.deckTops);
  return { mass: given.load / limits.gravity.value, at: axis === 0 ? [off, 0, height] : [0, off, height] };
}

/** Centre of gravity of the empty item, mm. */
export function centreOf(given: Case): Vec3 {
  const lumps = lumpsOf(given);
  const mass = lumps.reduce((sum, lump) => sum + lump.mass, 0);
  const mean = (axis: 0 | 1 | 2): number => lumps.reduce((sum, lump) => sum + lump.mass * lump.at[axis], 0) / mass;
  return [mean(0), mean(1), mean(2)];
}

function bodyOf(given: Case, [axis, way]: Way, lumps: readonly Lump[]): Body {
  const mass = lumps.reduce((sum, lump) => sum + lump.mass, 0);
  const mean = (of: 0 | 1 | 2): number => lumps.reduce((sum, lump) => sum + lump.mass * lump.at[of], 0) / mass;
  const { least, most } = footing(given, axis);
  return {
    mass,
    weight: mass * given.limits.gravity.value,
    centreHeight: mean(2),
    arm: way === 1 ? most - mean(axis) : mean(axis) - least,
    height: topOf(given),
  };
}

/** Outermost middle lines of the posts along an axis, mm. The rim stands a radius further out: left out as worn or sunk in. */
export function footing({ model }: Case, axis: 0 | 1): { readonly least: number; readonly most: number } {
  const places = partsOf(model, 'post').map((post) => placed(post.pose, [0, 0, 0])[axis]);
  return { least: Math.min(...places), most: Math.max(...places) };
}

/** Top of the tallest post, mm. */
export const topOf = ({ model }: Case): number => Math.max(...partsOf(model, 'post').flatMap(endHeights));

const endHeights = (part: Part): readonly number[] => (endsOfTube(part) ?? []).map(([, , z]) => z);

/** Middle of a part's mass in its own coordinates, mm, to the nearest few mm: all a centre of gravity needs. */
function middleOf(shape: Shape): Vec3 {
  switch (shape.form) {
    case 'tube':
    case 'joint':
    case 'ported-joint':
    case 'fitting':
    case 'folded': return [0, 0, 0];
    case 'plate': return [0, 0, shape.thickness / 2];
    case 'panel': return [0, 0, panelMiddle(shape.pattern)];
    case 'pin': return [0, 0, -shape.length / 2];
    case 'strip':
    case 'wing-nut': return [0, 0, shape.height / 2];
    case 'cable': return [shape.length / 2, 0, 0];
  }
}

/** Height of a folded panel's middle: the floor half a thickness under its inner face, wraps round the tubes, tabs on top. */
function panelMiddle(pattern: FlatPattern): number {
  const floor = 4 * pattern.axes[0] * pattern.axes[1];
  const strips = pattern.flaps.map((flap) => ({
    wrap: (flap.to - flap.from) * flap.halfCut,
    tab: (flap.to - flap.from) * (flap.edge - flap.halfCut),
  }));
  const sum = (pick: 'wrap' | 'tab'): number => strips.reduce((total, strip) => total + strip[pick], 0);
  const moment = -floor * pattern.thickness / 2 + sum('wrap') * pattern.wrapRadius + sum('tab') * pattern.thickness / 2;
  return moment / (floor + sum('wrap') + sum('tab'));
}
