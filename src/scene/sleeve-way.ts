import { chained, dot, lengthOf, minus, moved, placed, plus, times, turned, unit, type Connection, type Model, type Pose, type Shape, type Solids, type Vec3 } from '../model/index.ts';
import type { Step } from '../plan/index.ts';
import { turnedBy } from './kit/directions.ts';
import { nearestOf } from './kit/nearest.ts';
import type { Slide } from './kit/on-the-way.ts';
import { longEnd, longEndTold, sleeveEnds, sleeveReach } from './kit/sleeve-ends.ts';
import { stageHand, type StageHand } from './kit/stage.ts';
import { STANDARD_VIEW } from './kit/views.ts';
import type { Mark, Scene, SceneBody, View } from './types.ts';
import type { WayUp } from './way-up.ts';

type Sleeve = Extract<Connection, { readonly is: 'sleeve' }>;

/** Joints change places where one comes so near to the other, mm. */
const NEAR = 1.5;
/** A way so steep (the sine) is up or down: what is slid on upside down is seen as it is. */
const STEEP = 0.7;
/** Before its mark the joint is drawn so far, mm; of the bar so much is shown before and behind the mark, and so much of what the joint holds. */
const SHOWN = { off: 36, behind: 74, before: 166, held: 74 } as const;
/** To the dimension of the long end. */
const ABOVE: Vec3 = [0, 0, 64];
/** The pencil mark: its width and thickness, mm. */
const MARK = { width: 4, thickness: 0.4 } as const;

/**
 * A joint on its way to its mark on a level bar, the long end of its sleeve where it must be; and the same work put on the wrong way
 * round, so that the short end is there. Null where no such joint is slid on, or its work would look the same both ways.
 */
export function sleeveWayScenes(model: Model, step: Step, solids: Solids): WayUp | null {
  const hand = stageHand(model, step, solids);
  const all = step.motions.flatMap((slide) => (slide.kind === 'slide' ? sleevesOf(slide).map((sleeve) => ({ slide, sleeve })) : []));
  const nearest = nearestOf(hand, all.map(({ sleeve }) => sleeve.joint));
  const own = all.find(({ sleeve }) => sleeve.joint === nearest);
  if (own === undefined) return null;
  const way = unit(turnedBy(step.standing.pose, own.slide.by));
  if (Math.abs(way[2]) > STEEP || longEnd({ shape: hand.part(own.sleeve.joint).shape, pose: hand.pose(own.sleeve.joint) }) === null) return null;
  const other = swapped(model, hand, own.slide, own.sleeve.joint);
  if (other === null) return null;
  const scene = (id: string, joint: string, turn: Pose): Scene => ({
    id: `${id}:${step.number}`,
    bodies: [...barRound(model, hand, own.sleeve), ...jointWith(model, hand, own.slide, joint, chained(moved(times(way, -SHOWN.off)), turn))],
    marks: [
      arrowAlong(placed(hand.pose(own.sleeve.joint), [0, 0, 0]), way, reachAt(hand, joint, turnedBy(turn, way))),
      ...longEndTold({ shape: hand.part(joint).shape, pose: chained(moved(times(way, -SHOWN.off)), turn, hand.pose(joint)) }, ABOVE),
    ],
    view: besideBar(hand, own.slide, own.sleeve, way),
  });
  return { right: scene('right', own.sleeve.joint, moved([0, 0, 0])), wrong: [scene('wrong', other.joint, other.turn)] };
}

const sleevesOf = ({ closes, parts }: Slide): readonly Sleeve[] =>
  closes.flatMap((each) => (each.is === 'sleeve' && parts.includes(each.joint) && !parts.includes(each.bar) ? [each] : []));

/** From beside the bar, so that both ends of the sleeve are seen: from where nothing that moves with the joint stands, a little from the reader's end. */
function besideBar(hand: StageHand, { parts }: Slide, { joint }: Sleeve, way: Vec3): View {
  const others = parts.filter((id) => hand.part(id).shape.form === 'tube');
  const at = (id: string): Vec3 => placed(hand.pose(id), [0, 0, 0]);
  const away = others.reduce((sum, id) => plus(sum, minus(at(joint), at(id))), [0, 0, 0] as Vec3);
  const square: Vec3 = unit([way[1], -way[0], 0]);
  const side = dot(square, away) < 0 ? times(square, -1) : square;
  const reader = dot(way, STANDARD_VIEW.towardsEye) < 0 ? times(way, -1) : way;
  return { towardsEye: plus(plus(times(side, 0.85), times(reader, 0.4)), [0, 0, 0.42]), up: [0, 0, 1] };
}

/** How far a joint's sleeve reaches from its middle along a way, mm. */
const reachAt = (hand: StageHand, joint: string, way: Vec3): number => sleeveReach({ shape: hand.part(joint).shape, pose: hand.pose(joint) }, times(way, -1));

/** The joint that comes to stand where another one does when their work is turned half round on the spot. */
function swapped(model: Model, hand: StageHand, slide: Slide, own: string): { readonly joint: string; readonly turn: Pose } | null {
  const joints = heldWith(model, slide, own).filter((id) => sleevesOf(slide).some(({ joint }) => joint === id));
  const at = (id: string): Vec3 => placed(hand.pose(id), [0, 0, 0]);
  const middle = times(joints.map(at).reduce(plus, [0, 0, 0]), 1 / joints.length);
  const turn = chained(moved(middle), turned([0, 0, 1], Math.PI), moved(times(middle, -1)));
  const joint = joints.find((id) => lengthOf(minus(placed(turn, at(id)), at(own))) < NEAR);
  return joint === undefined ? null : { joint, turn };
}

/** All that moves with a part because it is put together with it. */
function heldWith({ connections }: Model, { parts }: Slide, first: string): readonly string[] {
  const held = new Set([first]);
  for (const id of held) {
    for (const each of connections) {
      if ((each.is === 'socket' || each.is === 'sleeve') && (each.bar === id || each.joint === id)) [each.bar, each.joint].filter((one) => parts.includes(one)).forEach((one) => held.add(one));
    }
  }
  return [...held];
}

/** The bar as far as it is shown, with the mark at which the near end of the joint will stand. */
function barRound(model: Model, hand: StageHand, { bar, joint }: Sleeve): readonly SceneBody[] {
  const { shape } = hand.part(bar);
  const [fromFoot] = sleeveEnds(model, bar, [joint]);
  if (shape.form !== 'tube' || fromFoot === undefined) return [];
  const mark = fromFoot - shape.length / 2;
  const [from, to] = [Math.max(-shape.length / 2, mark - SHOWN.behind), Math.min(shape.length / 2, mark + SHOWN.before)];
  const band: Shape = { form: 'tube', length: MARK.width, outside: shape.outside + 2 * MARK.thickness, inside: shape.outside, holes: [] };
  return [
    hand.prop({ tool: `piece-of-${bar}` }, { ...shape, length: to - from, holes: [] }, chained(hand.pose(bar), moved([(from + to) / 2, 0, 0])), 'present'),
    hand.prop({ tool: 'mark' }, band, chained(hand.pose(bar), moved([mark, 0, 0])), 'drawn'),
  ];
}

/** A joint and the ends of what it holds, moved. */
function jointWith({ connections }: Model, hand: StageHand, { parts }: Slide, joint: string, by: Pose): readonly SceneBody[] {
  const body = hand.body(joint, 'new');
  return [{ ...body, pose: chained(by, body.pose) }, ...connections.flatMap((each): readonly SceneBody[] => {
    if (each.is !== 'socket' || each.joint !== joint || !parts.includes(each.bar)) return [];
    const { shape } = hand.part(each.bar);
    if (shape.form !== 'tube') return [];
    const way = turnedBy(hand.pose(each.bar), [1, 0, 0]);
    const end = Math.sign(dot(minus(placed(hand.pose(joint), [0, 0, 0]), placed(hand.pose(each.bar), [0, 0, 0])), way));
    const length = Math.min(shape.length, SHOWN.held);
    return [hand.prop({ tool: `piece-of-${each.bar}` }, { ...shape, length, holes: [] }, chained(by, hand.pose(each.bar), moved([(end * (shape.length - length)) / 2, 0, 0])), 'present')];
  })];
}

/** Over the bar, from the sleeve's end to its mark. */
function arrowAlong(home: Vec3, way: Vec3, reach: number): Mark {
  const from = plus(home, times(way, reach - SHOWN.off + 4));
  return { mark: 'arrow', path: [from, plus(from, times(way, SHOWN.off))] };
}
