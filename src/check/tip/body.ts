import { endsOfTube, placed, type Part, type Vec3 } from '../../model/index.ts';
import { heapOf, partHeap, type Heap } from '../middle-of.ts';
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

/** The four ways a body may tip: along x or y, either way. */
export const ways = [[0, 1], [0, -1], [1, 1], [1, -1]] as const;
export type Way = (typeof ways)[number];

/** The empty item, tipping the way it does most easily. */
export const emptyBody = (given: Case): Body => easiest(given, () => lumpsOf(given));

/** The worst laden item: the top deck alone bears its load, standing towards the edge it tips over. */
export const topLadenBody = (given: Case): Body => easiest(given, (way) => [...lumpsOf(given), topLoad(given, way)]);

function easiest(given: Case, lumps: (way: Way) => readonly Heap[]): Body {
  const bodies = ways.map((way) => bodyOf(given, way, lumps(way)));
  return bodies.reduce((worst, body) => (body.weight * body.arm < worst.weight * worst.arm ? body : worst));
}

const lumpsOf = ({ model }: Case): readonly Heap[] => model.parts.map(partHeap);

function topLoad(given: Case, [axis, way]: Way): Heap {
  const { model, limits } = given;
  const { least, most } = footing(given, axis);
  const off = (least + most) / 2 + way * limits.loadForward.value * (most - least);
  const height = Math.max(...model.deckTops);
  return { mass: given.load / limits.gravity.value, at: axis === 0 ? [off, 0, height] : [0, off, height] };
}

/** Centre of gravity of the empty item, mm. */
export const centreOf = (given: Case): Vec3 => heapOf(lumpsOf(given)).at;

function bodyOf(given: Case, [axis, way]: Way, lumps: readonly Heap[]): Body {
  const { mass, at } = heapOf(lumps);
  const { least, most } = footing(given, axis);
  return {
    mass,
    weight: mass * given.limits.gravity.value,
    centreHeight: at[2],
    arm: way === 1 ? most - at[axis] : at[axis] - least,
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
