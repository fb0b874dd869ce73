import { dot, lengthOf, placed, plus, times, unit, type Model, type Part, type Vec3 } from '../../model/index.ts';
import type { Step } from '../../plan/index.ts';
import type { Mark, Scene, SceneBody, View } from '../types.ts';
import { turnedBy } from './directions.ts';
import { boxRound } from './extent.ts';
import { isHiddenBy } from './hidden-by.ts';
import { isTooSmall } from './too-small.ts';
import { mouthsOf, type Mouth } from './mouths.ts';
import { nearestOf } from './nearest.ts';
import type { Slide } from './on-the-way.ts';
import { panelLines } from './panel-lines.ts';
import { panelSign } from './panel-sign.ts';
import { partsShown } from './parts-shown.ts';
import { seenThrough } from './seen-through.ts';
import { stageHand, type StageHand } from './stage.ts';
import { viewOf } from './stand.ts';
import { sceneName, type StepGivens, type WorkScene } from './work-scene.ts';
import { tell } from '../told.ts';

/** A slide while its scene is made. */
export interface Sliding {
  readonly model: Model;
  readonly step: Step;
  readonly hand: StageHand;
  /** How far off its place each moving part stands. */
  readonly offsets: ReadonlyMap<string, Vec3>;
  /** Parts that are new in the step, and all that move. */
  readonly fresh: readonly string[];
  readonly moving: readonly string[];
}

/** What a kind of sliding work shows in its own way. */
export interface SlideTelling {
  /** How far off its place a moving part is drawn, of a whole way of so many mm. */
  readonly drawnOff: (way: number, step: Step) => number;
  /** Where on a part the count stands that says how many there are, in its own coordinates; in its middle when left out. */
  readonly countPlace?: (part: Part) => Vec3;
  /** Marks in the place of the counts. */
  readonly counts?: (sliding: Sliding) => readonly Mark[];
  /** A part that only stands there, where it is shown in another way; as it is when left out or null. */
  readonly standing?: (hand: StageHand, step: Step, id: string, view: View) => readonly SceneBody[] | null;
  /** What else is shown and pointed out. */
  readonly bodies?: (sliding: Sliding) => readonly SceneBody[];
  readonly marks?: (sliding: Sliding) => readonly Mark[];
  /** How the work stands when it has slid home, where that is read better from a side. */
  readonly home?: WorkScene['home'];
}

/** Drawn off by so many mm, or by the whole way where that is shorter. */
export const atMost = (off: number) => (way: number): number => Math.min(way, off);

/** Work by which parts are pushed, laid or dropped along a straight way: drawn off their places, an arrow on the way of each. */
export const slideWork = (telling: SlideTelling): WorkScene => ({
  scene: (givens) => slideScene(telling, givens, (slide) => telling.drawnOff(lengthOf(slide.by), givens.step)),
  moment: (givens, done) => slideScene(telling, givens, (slide) => lengthOf(slide.by) * (1 - done)),
  ...(telling.home === undefined ? {} : { home: telling.home }),
});

const wayOf = (step: Step, slide: Slide): Vec3 => turnedBy(step.standing.pose, slide.by);

/** Whether two slides go the same way. */
const isAlong = (one: Slide, other: Slide): boolean => lengthOf(plus(unit(one.by), times(unit(other.by), -1))) < 1e-6;

/** `off` tells how far off its place a part stands, mm. */
function slideScene(telling: SlideTelling, { model, step, solids }: StepGivens, off: (slide: Slide) => number): Scene {
  const hand = stageHand(model, step, solids);
  const view = viewOf(model, step);
  const slides = step.motions.filter((motion): motion is Slide => motion.kind === 'slide');
  // What comes the same way keeps its distances.
  const offOf = (slide: Slide): number => Math.max(...slides.filter((other) => other === slide || isAlong(other, slide)).map(off));
  const offsets = new Map(slides.flatMap((slide) => {
    const offset = times(unit(wayOf(step, slide)), -offOf(slide));
    return slide.parts.map((id): [string, Vec3] => [id, offset]);
  }));
  const fresh = step.newParts.flatMap((group) => group.ids);
  const moving = slides.flatMap((slide) => slide.parts);
  const sliding: Sliding = { model, step, hand, offsets, fresh, moving };
  const shown = partsShown(step);
  const isNew = (id: string): boolean => fresh.includes(id) || moving.includes(id);
  const mouths = slides.map((slide) => mouthsOf({ hand, slide, way: unit(wayOf(step, slide)), off: offOf(slide) }));
  const joined = new Set(slides.flatMap(({ closes }) => closes.flatMap((each) => (each.is === 'pin' ? each.holds : []))));
  const places = mouths.flat().map(({ path: [, to] }) => to);
  const through = (id: string): readonly SceneBody[] | null => (joined.has(id) ? null : seenThrough(hand, id, places, view));
  const stands = (id: string): readonly SceneBody[] => telling.standing?.(hand, step, id, view) ?? through(id) ?? [hand.body(id, 'present', offsets.get(id))];
  const bodies = shown.flatMap((id) => (isNew(id) ? [hand.body(id, 'new', offsets.get(id))] : stands(id)));
  return {
    id: sceneName(step),
    bodies: [...bodies, ...linesOnPanels(sliding, shown), ...(telling.bodies?.(sliding) ?? [])],
    marks: [
      ...mouths.flat().map(({ path }): Mark => ({ mark: 'arrow', path })),
      ...(telling.counts ?? countsOf(telling))(sliding), ...(telling.marks?.(sliding) ?? []), ...enlarged(mouths.flat(), bodies, view),
    ],
    view,
  };
}

/** The lines of the flaps that still lie flat, on whichever panels are shown; the sign of the marked face on flat panels that come. */
const linesOnPanels = ({ step, hand, offsets, fresh }: Sliding, shown: readonly string[]): readonly SceneBody[] => shown.flatMap((id) => {
  switch (hand.part(id).kind) {
    case 'panel': return panelLines(hand, id, step.folded, offsets.get(id));
    case 'flat-panel': return fresh.includes(id) ? panelSign(hand, id, offsets.get(id), true) : [];
    default: return [];
  }
});

/** What comes too small to be seen is shown once more, enlarged: where it comes farthest out, least stands before it; a mouth that a bar's end goes into only where one sees into it, nothing under a panel that comes. */
function enlarged(mouths: readonly Mouth[], bodies: readonly SceneBody[], view: View): readonly Mark[] {
  const { min, max } = boxRound(bodies);
  const middle = times(plus(min, max), 0.5);
  const outwards = ({ path: [, to] }: Mouth): number => Math.hypot(...acrossView(view, plus(to, times(middle, -1))));
  const coming = bodies.filter(({ kind, look }) => kind === 'flat-panel' && look === 'new');
  const isSeen = ({ opens, path: [, to] }: Mouth): boolean => (opens === undefined || dot(opens, view.towardsEye) > 0) && !isHiddenBy(coming, to, view);
  const [outermost] = mouths.filter((mouth) => isTooSmall(mouth.wide, bodies) && isSeen(mouth)).sort((a, b) => outwards(b) - outwards(a));
  if (outermost === undefined) return [];
  const [lead, to] = outermost.path;
  const way = plus(to, times(lead, -1));
  const from = plus(lead, times(unit(way), -(outermost.back ?? 0)));
  return [{ mark: 'detail', at: times(plus(from, to), 0.5), radius: lengthOf(plus(to, times(from, -1))) / 2 + outermost.wide }];
}

/** What is left of a direction when it is seen from the eye. */
function acrossView({ towardsEye }: View, direction: Vec3): Vec3 {
  const eye = unit(towardsEye);
  return plus(direction, times(eye, -(direction[0] * eye[0] + direction[1] * eye[1] + direction[2] * eye[2])));
}

/** How many there are of each new kind, beside the one nearest to the eye. */
const countsOf = ({ countPlace }: SlideTelling) => ({ model, hand, step, offsets }: Sliding): readonly Mark[] =>
  step.newParts.filter((group) => group.ids.length > 1).flatMap(({ ids }): Mark[] => {
    const id = nearestOf(hand, ids, viewOf(model, step));
    if (id === undefined) return [];
    const place = plus(placed(hand.pose(id), countPlace?.(hand.part(id)) ?? [0, 0, 0]), offsets.get(id) ?? [0, 0, 0]);
    return [{ mark: 'label', at: place, told: tell.times(ids.length) }];
  });
