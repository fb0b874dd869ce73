import type { Step } from '../../plan/index.ts';
import type { Mark, Scene, SceneBody } from '../types.ts';
import { level } from './blocks.ts';
import { boxRound, type Box } from './extent.ts';
import { CLEAR_OF_WORK, SMALL, type HandRoom } from './hand-room.ts';
import { handsOnBars } from './hands-on-bars.ts';
import { plateHolds } from './plate-holds.ts';
import type { StageHand } from './stage.ts';

type Hand = Extract<Mark, { mark: 'hand' }>;

/** What reaches this near to the top of work is its upper edge, mm. */
const UPPER = 60;
/** Where the hands are along it, and whose they are: both of the second person or of the first, or one of each of the two. */
const HANDS = {
  one: [{ share: 0.36, person: 2 }, { share: 0.64, person: 2 }],
  first: [{ share: 0.36, person: 1 }, { share: 0.64, person: 1 }],
  two: [{ share: 0.06, person: 1 }, { share: 0.94, person: 2 }],
} as const;

/**
 * Hands on each body that the second person holds in a step, two or one: on a flat panel clear of its holes; on all else on its
 * upper edge, or, where they would be in the way of the work there, where bars are free.
 */
export const heldMarks = (stage: StageHand, { held }: Step, { view }: Scene, room: HandRoom, hands: 1 | 2): readonly Mark[] => held.flatMap((ids) => {
  const onIt = onPanel(stage, ids);
  if (onIt !== null) return onIt;
  const usual = handsAlong(ids.map((id) => stage.body(id, 'present')));
  const clear = usual.every(({ at }) => room.farFromWork(at) >= CLEAR_OF_WORK) ? usual : handsOnBars(stage, ids, room, view);
  return clear.toSorted((one, other) => room.farFromWork(other.at) - room.farFromWork(one.at)).slice(0, hands);
});

/** Hands on a flat panel that is held by itself; null where anything else is. */
function onPanel(hand: StageHand, ids: readonly string[]): readonly Hand[] | null {
  const [panel, more] = ids.filter((id) => !SMALL.has(hand.part(id).kind));
  if (panel === undefined || more !== undefined) return null;
  const { shape } = hand.part(panel);
  return shape.form === 'plate' ? plateHolds(shape, hand.pose(panel), shape.holes.map(({ at }) => at)) : null;
}

/** Hands on the upper edge of bodies that are held as one: both of the second person or of the first, or one hand of each of the two. */
export function handsAlong(bodies: readonly SceneBody[], people: keyof typeof HANDS = 'one'): readonly Hand[] {
  const held = bodies.filter(({ kind }) => kind !== 'tool' && !SMALL.has(kind)).map((body) => ({ kind: body.kind, box: boxRound([body]) }));
  const withEdges = held.filter(({ kind, box }) => kind !== 'panel' || !isLying(box));
  const longest = upperEdge((withEdges.length > 0 ? withEdges : held).map(({ box }) => box));
  if (longest === null) return [];
  const { min, max } = longest;
  const axis = max[0] - min[0] > max[1] - min[1] ? 0 : 1;
  const across = axis === 0 ? 1 : 0;
  return HANDS[people].map(({ share, person }): Hand => ({ mark: 'hand', at: level(axis, min[axis] + share * (max[axis] - min[axis]), (min[across] + max[across]) / 2, max[2]), onto: [0, 0, -1], person }));
}

/** A panel that lies has no upper edge: what carries it is held. */
const isLying = ({ min, max }: Box): boolean => max[2] - min[2] < Math.min(max[0] - min[0], max[1] - min[1]);

/** Of what is uppermost the longest. */
function upperEdge(boxes: readonly Box[]): Box | null {
  const top = Math.max(...boxes.map(({ max }) => max[2]));
  const long = ({ min, max }: Box): number => Math.max(max[0] - min[0], max[1] - min[1]);
  return boxes.filter(({ max }) => max[2] > top - UPPER).toSorted((one, other) => long(other) - long(one))[0] ?? null;
}
