import { chained, moved, placed, type Part, type Shape, type Vec3 } from '../../model/index.ts';
import { tell } from '../told.ts';
import type { Mark, SceneBody } from '../types.ts';
import { nearestOf } from './nearest.ts';
import { sleeveEnds } from './sleeve-ends.ts';
import type { Sliding } from './slide.ts';
import type { StageHand } from './stage.ts';

/** A pencil mark on a bar is a band of this width and thickness, mm. */
const MARK = { width: 4, thickness: 0.4 };

/** Two rings near the foot of a bar tell it from the other end, mm from the foot. */
export const FOOT_RINGS: readonly [number, number] = [12, 24];

/** The pencil marks of a bar: its foot, and the near ends of the sleeves, moved with the bar. */
export function barMarks({ model, hand, offsets }: Sliding, barId: string): readonly SceneBody[] {
  const { shape } = hand.part(barId);
  if (shape.form !== 'tube') return [];
  const band: Shape = { form: 'tube', length: MARK.width, outside: shape.outside + 2 * MARK.thickness, inside: shape.outside, holes: [] };
  return [...FOOT_RINGS, ...sleeveEnds(model, barId)].map((height, index) =>
    hand.prop({ partId: barId, id: `mark-${index + 1}` }, band, chained(moved(offsets.get(barId) ?? [0, 0, 0]), hand.pose(barId), moved([height - shape.length / 2, 0, 0])), 'present'));
}

/** How far a bar stands out at its foot, told beside the nearer one; nothing where it ends in a sleeve. */
export function footMark({ model, hand }: Sliding, barIds: readonly string[]): readonly Mark[] {
  const bar = nearestOf(hand, barIds);
  return bar === undefined ? [] : fromFoot(hand, bar, sleeveEnds(model, bar).slice(0, 1));
}

/** Distances from a bar's foot to places along it, mm, one length over the other. */
export function fromFoot(hand: StageHand, bar: string, places: readonly number[]): readonly Mark[] {
  const half = halfOf(hand.part(bar));
  const at = (height: number): Vec3 => placed(hand.pose(bar), [height - half, 0, 0]);
  return places.filter((place) => place > 0).map((place, index): Mark => ({ mark: 'length', from: at(0), to: at(place), away: [0, 0, FOOT_AWAY.first + FOOT_AWAY.next * index], told: tell.mm(place) }));
}

/** How far off the bar such a length is told, and each further one off that, mm. */
const FOOT_AWAY = { first: 100, next: 110 };

/** The bars that what moves is pushed over. */
export const throughBars = ({ step, moving }: Sliding): readonly string[] => [...new Set(step.motions.flatMap((motion) =>
  (motion.kind === 'slide' ? motion.closes : []).flatMap((each) => (each.is === 'sleeve' && !moving.includes(each.bar) ? [each.bar] : []))))];

/** Half of a bar's length, mm; 0 of what is none. */
export const halfOf = ({ shape }: Part): number => (shape.form === 'tube' ? shape.length / 2 : 0);
