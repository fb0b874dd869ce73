import { placed, type CornerPlace, type Model, type Part, type Side, type Solids, type Vec3 } from '../../model/index.ts';
import type { Action, Motion, Step } from '../../plan/index.ts';
import { lengthOf, plus, times, turnedBy, unit } from '../directions.ts';
import { panelLines } from '../panel-lines.ts';
import { footStub, foldingOf, homePlace, postMarks, sleeveEnds, stageHand, type StageHand } from '../stage.ts';
import type { Mark, Scene, SceneBody } from '../types.ts';
import { STANDARD_VIEW } from '../views.ts';

type Slide = Extract<Motion, { kind: 'slide' }>;

/** How far off its place a moving part is drawn, mm; the whole way when left out. */
const DRAWN_OFF: Partial<Record<Action, number>> = {
  'push-tubes': 190,
  'close-frame': 190,
  'lay-frame': 210,
  'pin-ends': 75,
  'pin-middle': 75,
  'pin-posts': 85,
  'pin-panel': 75,
  'hold-panel': 110,
  'set-rails': 230,
};

/** The whole way of a slide, mm. */
export const wholeWay = (slide: Slide): number => lengthOf(slide.by);

/**
 * Parts pushed, laid or dropped along a straight way: drawn off their places, an arrow on the way of each.
 * `off` tells how far off its place a part stands, mm; as the picture draws it unless given.
 */
export function slideScene(model: Model, step: Step, solids: Solids, off: (slide: Slide) => number = (slide) => drawnOff(step, slide)): Scene {
  const hand = stageHand(model, step, solids, foldingOf(step.folded));
  const slides = step.motions.filter((motion): motion is Slide => motion.kind === 'slide');
  const offsets = new Map(slides.flatMap((slide) => {
    const offset = times(unit(wayOf(step, slide)), -off(slide));
    return slide.parts.map((id): [string, Vec3] => [id, offset]);
  }));
  const fresh = step.newParts.flatMap((group) => group.ids);
  const moving = slides.flatMap((slide) => slide.parts);
  const shown = [...new Set([...step.present, ...fresh, ...moving])].filter((id) => !pushesTubes(step) || !isAtRightEnd(hand.part(id)));
  return {
    id: `step:${step.number}`,
    bodies: [
      ...shown.map((id) => hand.body(id, lookOf(step, fresh, id), offsets.get(id))),
      ...(step.action === 'push-posts' ? fresh.flatMap((id) => postMarks(model, hand, id, offsets.get(id) ?? [0, 0, 0])) : []),
      ...linesOnPanel(model, hand, step, [...shown]),
      ...(step.action === 'push-posts' ? fresh.map((id) => footStub(model, hand, id)) : []),
      ...(step.action === 'set-rails' ? moving.map((id) => homePlace(hand, id)) : []),
    ],
    marks: [...arrowsOf(hand, step, slides), ...countsOf(hand, step, offsets), ...detailsOf(hand, step, offsets), ...footMark(model, hand, step, fresh)],
    view: STANDARD_VIEW,
  };
}

const wayOf = (step: Step, slide: Slide): Vec3 => turnedBy(step.standing.pose, slide.by);

function drawnOff(step: Step, slide: Slide): number {
  const way = lengthOf(slide.by);
  if (step.action === 'push-posts') return way * 0.34;
  if (pushesTubes(step)) return 170;
  return Math.min(way, DRAWN_OFF[step.action] ?? way);
}

/** Long tubes pushed into an end, not joints pushed onto tubes. */
const pushesTubes = ({ detail }: Step): boolean => detail.on === 'tubes' && detail.tubes === 'long';

/** The lines of the flaps that still lie flat, on whichever panel is shown. */
function linesOnPanel(model: Model, hand: StageHand, step: Step, shown: readonly string[]): readonly SceneBody[] {
  const panel = step.run === null ? undefined : shown.find((id) => hand.part(id).kind === 'panel');
  return panel === undefined ? [] : panelLines(model, hand, panel, step.folded);
}

/** The far end of a frame, which is not yet to be seen when long tubes are pushed into the near one. */
const isAtRightEnd = ({ kind, place }: Part): boolean =>
  (kind === 'joint' && place.at === 'corner' && place.corner.x === 'right') || (kind === 'short-tube' && isOn(place, 'right'));

const isOn = (place: Part['place'], side: Side): boolean => place.at === 'side' && place.side === side;

function lookOf(step: Step, fresh: readonly string[], id: string): SceneBody['look'] {
  const moves = step.motions.some((motion) => motion.kind === 'slide' && motion.parts.includes(id));
  const carried = moves && ['close-frame', 'push-posts', 'set-rails'].includes(step.action);
  return fresh.includes(id) || carried ? 'new' : 'present';
}

/** From where a part's leading end is drawn to where it ends up. */
function arrowsOf(hand: StageHand, step: Step, slides: readonly Slide[]): Mark[] {
  return slides.flatMap((slide) => leaders(hand, step, slide).map((part): Mark => {
    const way = unit(wayOf(step, slide));
    const off = drawnOff(step, slide);
    return { mark: 'arrow', path: arrowPath(hand, step, part, way, off) };
  }));
}

/** One arrow a moving part, but for a whole frame or a pile of pins: there the nearest ones stand for all. */
function leaders(hand: StageHand, step: Step, slide: Slide): readonly Part[] {
  const parts = slide.parts.map((id) => hand.part(id));
  switch (step.action) {
    case 'lay-frame': return parts.filter(({ kind, place }) => (kind === 'long-tube' && isOn(place, 'front')) || (kind === 'short-tube' && isOn(place, 'right')));
    case 'close-frame': return parts.filter((part) => meetsTube(hand, step, part));
    case 'set-rails': return parts.filter(({ shape }) => shape.form === 'tube');
    case 'pin-posts': return parts.filter(({ kind, place }) => kind === 'joint-pin' || (place.at === 'sleeve' && isSame(place.corner, nearCorner(hand, step))));
    default: return parts;
  }
}

/** Whether a part is a joint that is pushed onto a long tube: a frame may have none on its side. */
const meetsTube = (hand: StageHand, step: Step, { kind, place }: Part): boolean =>
  kind === 'joint' && place.at === 'corner' && step.present.some((id) => {
    const other = hand.part(id);
    return other.kind === 'long-tube' && isOn(other.place, place.corner.y);
  });

const isSame = (one: CornerPlace, other: CornerPlace | null): boolean => one.x === other?.x && one.y === other.y;

/** The corner of the post of this side that is nearer to the eye. */
function nearCorner(hand: StageHand, step: Step): CornerPlace | null {
  const posts = step.present.filter((id) => {
    const { kind, place } = hand.part(id);
    return kind === 'post' && place.at === 'corner' && place.corner.y === step.side;
  });
  const near = nearestOf(hand, posts);
  const place = near === undefined ? undefined : hand.part(near).place;
  return place?.at === 'corner' ? place.corner : null;
}

/** An arrow beside a post, not on it, mm. */
const BESIDE_POST: Vec3 = [0, 0, 75];
/** White between an arrow and what it comes from or goes to, mm. */
const GAP = 10;

/** From the foremost place of a part drawn `off` its place to the mouth of what it goes into. */
function arrowPath(hand: StageHand, step: Step, { id, shape, kind }: Part, way: Vec3, off: number): readonly [Vec3, Vec3] {
  const origin = placed(hand.pose(id), [0, 0, 0]);
  const on = (distance: number): Vec3 => plus(origin, times(way, distance));
  switch (shape.form) {
    case 'pin': return [on(shape.length - off), kind === 'panel-pin' ? origin : on(-2)];
    case 'joint': return [on(shape.joint.stop + shape.joint.socketDepth + GAP - off), on(shape.joint.stop - GAP)];
    case 'tube': {
      if (step.action === 'lay-frame' || step.action === 'set-rails') return [on(-off), origin];
      const half = shape.length / 2;
      if (step.action === 'push-posts') return [plus(on(-half - off), BESIDE_POST), plus(on(-half - off * 0.25), BESIDE_POST)];
      return [on(half + GAP - off), on(half - socketDepth(hand, step) - GAP)];
    }
    default: return [on(-off), origin];
  }
}

/** Depth of the socket that a deck tube goes into, mm. */
function socketDepth(hand: StageHand, step: Step): number {
  const joint = step.present.map((id) => hand.part(id).shape).find((shape) => shape.form === 'joint');
  return joint?.form === 'joint' ? joint.joint.socketDepth : 0;
}

function countsOf(hand: StageHand, step: Step, offsets: ReadonlyMap<string, Vec3>): Mark[] {
  if (step.action === 'pin-ends' || step.action === 'pin-middle') return pinOrder(hand, step, offsets);
  return step.newParts.filter((group) => group.ids.length > 1).flatMap(({ kind, ids }): Mark[] => {
    const id = nearestOf(hand, ids);
    if (id === undefined) return [];
    const place = plus(placed(hand.pose(id), kind === 'post' ? [halfLength(hand, id) * 0.4, 0, 0] : [0, 0, 0]), offsets.get(id) ?? [0, 0, 0]);
    return [{ mark: 'label', at: place, text: `×${ids.length}` }];
  });
}

const halfLength = (hand: StageHand, id: string): number => {
  const { shape } = hand.part(id);
  return shape.form === 'tube' ? shape.length / 2 : 0;
};

/** Pins are put in one after the other: numbered from the first of the side. */
function pinOrder(hand: StageHand, step: Step, offsets: ReadonlyMap<string, Vec3>): Mark[] {
  return step.newParts.flatMap((group) => group.ids).map((id) => {
    const { place } = hand.part(id);
    const number = place.at === 'tab' ? place.index : 1;
    return { mark: 'order', at: plus(placed(hand.pose(id), [0, 0, 12]), offsets.get(id) ?? [0, 0, 0]), text: String(number) };
  });
}

/** The one nearest to the eye. */
function nearestOf(hand: StageHand, ids: readonly string[]): string | undefined {
  const [ex, ey, ez] = STANDARD_VIEW.towardsEye;
  const depth = (id: string): number => {
    const [x, y, z] = placed(hand.pose(id), [0, 0, 0]);
    return x * ex + y * ey + z * ez;
  };
  return [...ids].sort((a, b) => depth(b) - depth(a) || a.localeCompare(b))[0];
}

/** A panel pin is shown once more, enlarged. */
function detailsOf(hand: StageHand, step: Step, offsets: ReadonlyMap<string, Vec3>): Mark[] {
  const small = step.newParts.find((group) => group.kind === 'panel-pin');
  if (small === undefined) return [];
  const id = nearestOf(hand, small.ids);
  if (id === undefined) return [];
  const middle = plus(placed(hand.pose(id), [0, 0, 0]), times(offsets.get(id) ?? [0, 0, 0], 0.5));
  return [{ mark: 'detail', at: middle, radius: 60 }];
}

/** How far a post will stand out at its foot, told beside the nearer one. */
function footMark(model: Model, hand: StageHand, step: Step, fresh: readonly string[]): Mark[] {
  const post = step.action === 'push-posts' ? nearestOf(hand, fresh) : undefined;
  const shape = post === undefined ? undefined : hand.part(post).shape;
  if (post === undefined || shape?.form !== 'tube') return [];
  const at = (height: number): Vec3 => placed(hand.pose(post), [height - shape.length / 2, 0, 0]);
  const [first = 0] = sleeveEnds(model, post);
  return [{ mark: 'length', from: at(0), to: at(first), away: [0, 0, 110], text: String(Math.round(first * 2) / 2) }];
}
