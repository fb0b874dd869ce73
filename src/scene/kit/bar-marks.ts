import { chained, moved, placed, type Model, type Part, type Shape, type Vec3 } from '../../model/index.ts';
import { tell } from '../told.ts';
import type { Look, Mark, SceneBody } from '../types.ts';
import { nearestOf } from './nearest.ts';
import { sleeveEnds } from './sleeve-ends.ts';
import type { Sliding } from './slide.ts';
import type { StageHand } from './stage.ts';

/** A pencil mark on a bar is a band of this width and thickness, mm. */
const MARK = { width: 4, ring: 2.4, thickness: 0.4 };

/** Two rings near the foot of a bar tell it from the other end, mm from the foot. */
export const FOOT_RINGS: readonly [number, number] = [6, 12];

/** The pencil marks of a bar: its foot, and the near ends of the sleeves, moved with the bar. */
export function barMarks(sliding: Pick<Sliding, 'model' | 'hand' | 'offsets'>, barId: string): readonly SceneBody[] {
  const { model, hand, offsets } = sliding;
  const { shape } = hand.part(barId);
  if (shape.form !== 'tube') return [];
  const offset = offsets.get(barId) ?? [0, 0, 0];
  const ends = sleeveEnds(model, barId).map((height): BarMark => ({ height, mark: bandOn(shape, MARK.width), look: 'present' }));
  return [...ringsOf(model, barId, shape), ...ends].map((mark, index) => onBar(hand, barId, mark, `mark-${index + 1}`, offset));
}

/** The rings at a bar's foot where it will stand, up to so many mm from its end. */
export function footRingsHome({ model, hand }: Sliding, barId: string, upTo: number): readonly SceneBody[] {
  const { shape } = hand.part(barId);
  if (shape.form !== 'tube') return [];
  return ringsOf(model, barId, shape).filter(({ height }) => height < upTo).map((mark, index) => onBar(hand, barId, mark, `home-ring-${index + 1}`, [0, 0, 0]));
}

type Tube = Extract<Shape, { form: 'tube' }>;

/** A band round a bar, so far from its foot, mm. */
interface BarMark {
  readonly height: number;
  readonly mark: Shape;
  readonly look: Look;
}

function ringsOf(model: Model, barId: string, shape: Tube): readonly BarMark[] {
  const larger = ringsLarger(shape.length, sleeveEnds(model, barId)[0] ?? shape.length);
  return FOOT_RINGS.map((height) => ({ height: height * larger, mark: bandOn(shape, MARK.ring * larger), look: 'drawn' }));
}

const bandOn = ({ outside }: Tube, length: number): Shape => ({ form: 'tube', length, outside: outside + 2 * MARK.thickness, inside: outside, holes: [] });

const onBar = (hand: StageHand, barId: string, { height, mark, look }: BarMark, id: string, offset: Vec3): SceneBody =>
  hand.prop({ partId: barId, id }, mark, chained(moved(offset), hand.pose(barId), moved([height - halfOf(hand.part(barId)), 0, 0])), look);

/** The rings of a long bar are drawn larger and farther apart, so that both are seen, but never as far as its first sleeve. */
const ringsLarger = (long: number, free: number): number => Math.max(1, Math.min(long / SEEN_UP_TO, (RINGS_TAKE * free) / FOOT_RINGS[1]));

/** A bar so long, mm, is drawn with its rings as they are; they take this share of what is free at its foot at most. */
const SEEN_UP_TO = 500;
const RINGS_TAKE = 0.6;

/** The mark on a bar that stands at a joint when it is pushed home, mm from its foot: of the joints that it goes through in this step the one nearest its foot. Null where that is at its end. */
export function markReached({ model, step }: Sliding, barId: string): number | null {
  const through = step.motions.flatMap((motion) => (motion.kind === 'slide' ? motion.closes : [])).flatMap((each) => (each.is === 'sleeve' && each.bar === barId ? [each.joint] : []));
  const [first = 0] = sleeveEnds(model, barId, through);
  return first > 0 ? first : null;
}

/** How far a bar stands out of the joint at its mark, told beside the nearer one; nothing where it ends in that. */
export function footMark(sliding: Sliding, barIds: readonly string[]): readonly Mark[] {
  const bar = nearestOf(sliding.hand, barIds);
  const mark = bar === undefined ? null : markReached(sliding, bar);
  return bar === undefined || mark === null ? [] : fromFoot(sliding.hand, bar, [mark]);
}

/** Distances from a bar's foot to places along it, mm, one length over the other. */
export function fromFoot(hand: StageHand, bar: string, places: readonly number[]): readonly Mark[] {
  const half = halfOf(hand.part(bar));
  const at = (height: number): Vec3 => placed(hand.pose(bar), [height - half, 0, 0]);
  return places.filter((place) => place > 0).map((place, index): Mark => ({ mark: 'length', from: at(0), to: at(place), away: [0, 0, FOOT_AWAY.first + FOOT_AWAY.next * index], told: tell.mm(place), dots: true }));
}

/** How far off the bar such a length is told, and each further one off that, mm. */
const FOOT_AWAY = { first: 100, next: 110 };

/** The bars that what moves is pushed over. */
export const throughBars = ({ step, moving }: Sliding): readonly string[] => [...new Set(step.motions.flatMap((motion) =>
  (motion.kind === 'slide' ? motion.closes : []).flatMap((each) => (each.is === 'sleeve' && !moving.includes(each.bar) ? [each.bar] : []))))];

/** Half of a bar's length, mm; 0 of what is none. */
export const halfOf = ({ shape }: Part): number => (shape.form === 'tube' ? shape.length / 2 : 0);
