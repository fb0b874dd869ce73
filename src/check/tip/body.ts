import { placed, type FlatPattern, type Part, type Shape, type Vec3 } from '../../model/index.ts';
import { partsOf } from '../parts.ts';
import type { Case } from '../types.ts';

/** A body that may tip to the front. Lengths mm, weight N, mass kg. */
export interface Body {
  readonly mass: number;
  readonly weight: number;
  readonly centreHeight: number;
  /** From the front posts' middle line, the edge it tips over, back to its centre of gravity. */
  readonly arm: number;
  readonly height: number;
}

interface Lump {
  readonly mass: number;
  readonly at: Vec3;
}

/** The empty item. */
export const emptyBody = (given: Case): Body => bodyOf(given, lumpsOf(given));

/** The worst laden item: the top deck alone bears its load, standing towards the front. */
export const topLadenBody = (given: Case): Body => bodyOf(given, [...lumpsOf(given), topLoad(given)]);

const lumpsOf = ({ model }: Case): readonly Lump[] =>
  model.parts.map((part) => ({ mass: part.mass, at: placed(part.pose, middleOf(part.shape)) }));

function topLoad(given: Case): Lump {
  const { model, limits } = given;
  const { front, back } = footing(given);
  const y = (front + back) / 2 - limits.loadForward.value * (back - front);
  return { mass: given.load / limits.gravity.value, at: [0, y, Math.max(...model.deckTops)] };
}

/** Centre of gravity of the empty item, mm. */
export function centreOf(given: Case): Vec3 {
  const lumps = lumpsOf(given);
  const mass = lumps.reduce((sum, lump) => sum + lump.mass, 0);
  const mean = (axis: 0 | 1 | 2): number => lumps.reduce((sum, lump) => sum + lump.mass * lump.at[axis], 0) / mass;
  return [mean(0), mean(1), mean(2)];
}

function bodyOf(given: Case, lumps: readonly Lump[]): Body {
  const mass = lumps.reduce((sum, lump) => sum + lump.mass, 0);
  const mean = (axis: 1 | 2): number => lumps.reduce((sum, lump) => sum + lump.mass * lump.at[axis], 0) / mass;
  return {
    mass,
    weight: mass * given.limits.gravity.value,
    centreHeight: mean(2),
    arm: mean(1) - footing(given).front,
    height: topOf(given),
  };
}

/** Middle lines of the front and back posts, mm. The rim stands a radius further out: left out as worn or sunk in. */
export function footing({ model }: Case): { readonly front: number; readonly back: number } {
  const depths = partsOf(model, 'post').map((post) => placed(post.pose, [0, 0, 0])[1]);
  return { front: Math.min(...depths), back: Math.max(...depths) };
}

/** Top of the tallest post, mm. */
export const topOf = ({ model }: Case): number => Math.max(...partsOf(model, 'post').flatMap(endHeights));

function endHeights({ shape, pose }: Part): readonly number[] {
  if (shape.form !== 'tube') return [];
  return [-1, 1].map((end) => placed(pose, [(end * shape.length) / 2, 0, 0])[2]);
}

/** Middle of a part's mass in its own coordinates, mm, to the nearest few mm: all a centre of gravity needs. */
function middleOf(shape: Shape): Vec3 {
  switch (shape.form) {
    case 'tube':
    case 'joint': return [0, 0, 0];
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
