import { chained, dot, moved, outwards, turned, type PatternFlap, type Pose, type Shape, type Side, type Vec3 } from '../../model/index.ts';
import type { Step } from '../../plan/index.ts';
import type { SceneBody, View } from '../types.ts';
import { turnedBy } from './directions.ts';
import { boxRound, type Box } from './extent.ts';
import { foldedShape, foldsOf, type FoldedPanel, type StageHand } from './stage.ts';

/** The line round a wall that is left out: a strip of this width and height, mm. */
const STRIP = { width: 1.6, height: 0.3 };

/** A wall's upright part in its own plane: along its side and over the floor, mm, round from one foot to the other. */
type Outline = readonly (readonly [number, number])[];

/**
 * A box on its floor, so shown that one looks into its corners: of the walls towards the eye only the outlines, pale; the tabs
 * that are turned round the corners tinted. Null where the part is no box, or its tabs do not stand.
 */
export function openBox(hand: StageHand, { folded }: Step, id: string, { towardsEye }: View): readonly SceneBody[] | null {
  if (hand.part(id).shape.form !== 'folded') return null;
  const shape = foldedShape(hand.panel(id), foldsOf(id, folded));
  if (shape.form !== 'folded') return null;
  const { pattern, folding } = shape;
  const tabs = pattern.flaps.flatMap(({ lugs }) => lugs.map(({ name }) => name)).filter((name) => (folding[name] ?? 0) === 1);
  if (tabs.length === 0) return null;
  const pose = hand.pose(id);
  const near = pattern.flaps.filter(({ name, side }) => (folding[name] ?? 0) > 0 && dot(turnedBy(pose, outwards(side)), towardsEye) > 0);
  const piece = (of: string, split: Extract<Shape, { form: 'folded' }>['split'], look: SceneBody['look']): SceneBody => {
    const cut: FoldedPanel = { ...shape, ...(split === undefined ? {} : { split }) };
    return { ...hand.prop({ partId: id, id: of }, cut, pose, look), kind: hand.part(id).kind };
  };
  return [
    { ...piece('open', { flaps: [...near.map(({ name }) => name), ...tabs], piece: 'rest' }, 'present'), id },
    piece('tabs', { flaps: tabs, piece: 'flap' }, 'new'),
    ...near.flatMap((wall) => outlineBodies(hand, id, wall, boxRound([{ ...piece(wall.name, { flaps: [wall.name], piece: 'flap' }, 'pale'), pose: moved([0, 0, 0]) }]), pose)),
  ];
}

/** The outline of a wall on its outer face, as strips; the box is what it takes up in the panel's coordinates. */
function outlineBodies(hand: StageHand, id: string, wall: PatternFlap, { min, max }: Box, pose: Pose): readonly SceneBody[] {
  const out = Math.max(...[min, max].map((corner) => dot(corner, outwards(wall.side))));
  const ends = outlineOf(wall, max[2]);
  return ends.slice(1).map(([along, high], index) => {
    const [fromAlong, fromHigh] = ends[index] ?? [along, high];
    const strip: Shape = { form: 'strip', length: Math.hypot(along - fromAlong, high - fromHigh), width: STRIP.width, height: STRIP.height };
    const middle: Vec3 = [(along + fromAlong) / 2, -out, (high + fromHigh) / 2];
    const inFront = chained(moved(middle), turned([0, 1, 0], -Math.atan2(high - fromHigh, along - fromAlong)), turned([1, 0, 0], Math.PI / 2));
    return hand.prop({ partId: id, id: `outline-${wall.name}-${index + 1}` }, strip, chained(pose, turned([0, 0, 1], QUARTERS[wall.side]), inFront), 'pale');
  });
}

/** From the front, about the upright. */
const QUARTERS: Readonly<Record<Side, number>> = { front: 0, right: Math.PI / 2, back: Math.PI, left: -Math.PI / 2 };

/** From the floor up one end of a wall, along its top, and down the other; along it as one sees it from without. */
function outlineOf({ strips, edge, corner, side }: PatternFlap, top: number): Outline {
  const high = (at: number): number => Math.min(top - corner, Math.max(0, top - (edge - at)));
  const way = side === 'back' || side === 'left' ? -1 : 1;
  const flank = (end: 'start' | 'end', inwards: 1 | -1): Outline => [
    ...strips.flatMap((strip) => [[way * strip[end], high(strip.from)], [way * strip[end], high(strip.to)]] as const),
    [way * ((strips.at(-1)?.[end] ?? 0) + inwards * corner), top],
  ];
  return [...flank('end', -1), ...flank('start', 1).toReversed()];
}
