import { chained, dot, moved, placed, plus, times, undone, type Pose, type Shape, type Vec2, type Vec3 } from '../../model/index.ts';
import type { Mark, Scene, SceneBody, View } from '../types.ts';
import { turnedBy } from './directions.ts';
import { plateHolds } from './plate-holds.ts';
import { stageHand } from './stage.ts';
import { viewOf } from './stand.ts';
import { seriesName, type StepGivens } from './work-scene.ts';

/** Tools on a panel so long, mm; on a longer one, whose picture has a smaller scale, they are drawn as much larger. */
const LONG = 400;
/** How far over the panel the drill's bit waits, how long it is, the drill over it; how far over it a pin waits, drawn stouter than it is, so that it is seen; an arrow over them: its length, and how far it stands off; mm. */
const BIT = { over: 60, length: 50, wide: 34, high: 90 } as const;
const PIN = { over: 104, diameter: 14, length: 88, wide: 40, high: 14 } as const;
const ARROW = { long: 90, off: 8 } as const;

/**
 * A flat panel and its tubes, which a step drills through in several places: the first hole, its pin, and only then the
 * others, so that the panel stays where it is (common practice, no source). One that the second person holds is held, clear
 * of all holes, until that pin is in; nobody's hands are near the others. None where a step drills through no panel.
 */
export function firstHolePinned(givens: StepGivens): readonly Scene[] {
  const { model, step, solids } = givens;
  const hand = stageHand(model, step, solids);
  const pinned = model.connections.flatMap((each) => (each.is === 'pin' && step.drillsFor.includes(each.pin) ? [each] : []));
  const held = [...new Set(pinned.flatMap(({ holds }) => holds))];
  const panel = held.map((id) => hand.part(id)).find(({ shape }) => shape.form === 'plate');
  const [first, ...others] = pinned.map(({ pin }) => pin);
  if (panel?.shape.form !== 'plate' || first === undefined || others.length === 0) return [];
  const diameter = model.kit.jointPin.diameter;
  const larger = Math.max(1, Math.max(panel.shape.width, panel.shape.height) / LONG);
  const tool = (name: string, at: string, over: number, of: typeof BIT | typeof PIN): Moving => {
    const pose = hand.pose(at);
    const shape: Shape = { form: 'pin', diameter: larger * ('diameter' in of ? of.diameter : diameter), length: larger * of.length, headDiameter: larger * of.wide, headHeight: larger * of.high };
    const top = larger * (over + of.high + ARROW.off);
    return {
      body: hand.prop({ tool: `${name}-${at}` }, shape, chained(pose, moved([0, 0, larger * over])), 'new'),
      arrow: { mark: 'arrow', path: [top + larger * ARROW.long, top].map((high) => placed(pose, [0, 0, high])) },
    };
  };
  const drill = (at: string): Moving => tool('bit', at, BIT.over, BIT);
  const steps: readonly { readonly still: readonly SceneBody[]; readonly moving: readonly Moving[] }[] = [
    { still: [], moving: [drill(first)] },
    { still: [], moving: [tool('pin', first, PIN.over, PIN)] },
    { still: [tool('pin', first, 0, PIN).body], moving: others.map(drill) },
  ];
  const [hands, view] = [step.held.length === 0 ? [] : plateHolds(panel.shape, hand.pose(panel.id), [holeOf(panel.shape, hand.pose(panel.id), hand.pose(first))]), viewOn(givens, panel.shape, hand.pose(panel.id))];
  return steps.map(({ still, moving }, index) => ({
    id: seriesName(step, index + 1), number: index + 1, view,
    bodies: [...held.map((id) => hand.body(id, 'present')), ...still, ...moving.map(({ body }) => body)],
    marks: [...(still.length === 0 ? hands : []), ...moving.map(({ arrow }) => arrow)],
  }));
}

/** Where a pin goes through a panel, in its own coordinates, mm. */
function holeOf({ holes }: Extract<Shape, { form: 'plate' }>, panel: Pose, pin: Pose): Vec2 {
  const [x, y] = placed(undone(panel), placed(pin, [0, 0, 0]));
  return holes.map(({ at }) => at).toSorted((a, b) => Math.hypot(a[0] - x, a[1] - y) - Math.hypot(b[0] - x, b[1] - y))[0] ?? [x, y];
}

interface Moving {
  readonly body: SceneBody;
  readonly arrow: Mark;
}

/** On the panel's face, its long side across the paper, from the side that the step is seen from. */
function viewOn({ model, step }: StepGivens, { width, height }: Extract<Shape, { form: 'plate' }>, panel: Pose): View {
  const view = viewOf(model, step);
  const [long, short, out] = (width >= height ? AXES : [AXES[1], AXES[0], AXES[2]]).map((axis) => towards(turnedBy(panel, axis), view.towardsEye)) as [Vec3, Vec3, Vec3];
  return { ...view, towardsEye: plus(plus(times(out, 1), times(short, 0.6)), times(long, 0.2)) };
}

const AXES: readonly [Vec3, Vec3, Vec3] = [[1, 0, 0], [0, 1, 0], [0, 0, 1]];

const towards = (way: Vec3, eye: Vec3): Vec3 => times(way, dot(way, eye) < 0 ? -1 : 1);
