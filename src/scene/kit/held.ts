import type { PartKind } from '../../model/index.ts';
import { FASTENERS, type Step } from '../../plan/index.ts';
import type { Mark, SceneBody } from '../types.ts';
import { level } from './blocks.ts';
import { boxRound, type Box } from './extent.ts';
import { plateHolds } from './plate-holds.ts';
import type { StageHand } from './stage.ts';

/** Nobody holds work by these. */
const SMALL: ReadonlySet<SceneBody['kind']> = new Set<PartKind>([...FASTENERS, 'fitting']);
/** What reaches this near to the top of work is its upper edge, mm. */
const UPPER = 60;
/** Where the hands of one person are along it, and those of two. */
const HANDS = { one: [0.36, 0.64], two: [0.06, 0.94] } as const;

/** Two hands on each body that the second person holds in a step: on a flat panel clear of its holes, on all else on its upper edge. */
export const heldMarks = (hand: StageHand, { held }: Step): readonly Mark[] =>
  held.flatMap((ids) => onPanel(hand, ids) ?? handsAlong(ids.map((id) => hand.body(id, 'present'))));

/** Hands on a flat panel that is held by itself; null where anything else is. */
function onPanel(hand: StageHand, ids: readonly string[]): readonly Mark[] | null {
  const [panel, more] = ids.filter((id) => !SMALL.has(hand.part(id).kind));
  if (panel === undefined || more !== undefined) return null;
  const { shape } = hand.part(panel);
  return shape.form === 'plate' ? plateHolds(shape, hand.pose(panel)) : null;
}

/** Hands on the upper edge of bodies that are held as one: of one person, or one hand of each of two. */
export function handsAlong(bodies: readonly SceneBody[], people: keyof typeof HANDS = 'one'): readonly Mark[] {
  const held = bodies.filter(({ kind }) => kind !== 'tool' && !SMALL.has(kind)).map((body) => ({ kind: body.kind, box: boxRound([body]) }));
  const withEdges = held.filter(({ kind, box }) => kind !== 'panel' || !isLying(box));
  const longest = upperEdge((withEdges.length > 0 ? withEdges : held).map(({ box }) => box));
  if (longest === null) return [];
  const { min, max } = longest;
  const axis = max[0] - min[0] > max[1] - min[1] ? 0 : 1;
  const across = axis === 0 ? 1 : 0;
  return HANDS[people].map((share): Mark => ({ mark: 'hand', at: level(axis, min[axis] + share * (max[axis] - min[axis]), (min[across] + max[across]) / 2, max[2]), onto: [0, 0, -1] }));
}

/** A panel that lies has no upper edge: what carries it is held. */
const isLying = ({ min, max }: Box): boolean => max[2] - min[2] < Math.min(max[0] - min[0], max[1] - min[1]);

/** Of what is uppermost the longest. */
function upperEdge(boxes: readonly Box[]): Box | null {
  const top = Math.max(...boxes.map(({ max }) => max[2]));
  const long = ({ min, max }: Box): number => Math.max(max[0] - min[0], max[1] - min[1]);
  return boxes.filter(({ max }) => max[2] > top - UPPER).toSorted((one, other) => long(other) - long(one))[0] ?? null;
}
