import { placed, undone, type Model, type Part, type Vec3 } from '../../model/index.ts';
import { isClip } from '../../read/index.ts';
import { onBarPicture, type OnBar } from '../flat/index.ts';
import type { DrawnFlat } from './work-picture.ts';

type Tube = Part & { readonly shape: Extract<Part['shape'], { form: 'tube' }> };

/** Where on its bar lies what a step brings, measured from the joints at the bar's ends: of all that comes on one bar. Nothing where a bar ends in no joints. */
export const onBarsMeasured: DrawnFlat = ({ model, papers: { bench } }, { newParts }) => {
  const fresh = newParts.flatMap(({ ids }) => ids);
  const held = heldBy(model, fresh);
  const [first] = held;
  if (first === undefined) return [];
  const things = held.filter(({ bar }) => bar.id === first.bar.id).map(({ thing }) => thing);
  const measured = measuredOn(model, first.bar, things);
  return measured === null ? [] : [onBarPicture(measured, bench.width)];
};

/** Plates that are pinned to bars, and fittings that clip onto them. */
function heldBy({ connections, parts }: Model, fresh: readonly string[]): readonly { readonly thing: Part; readonly bar: Tube }[] {
  const part = (id: string): Part | undefined => parts.find((each) => each.id === id);
  return connections.flatMap((each) => {
    const [things, bars] = each.is === 'pin' ? [each.holds, each.holds] : each.is === 'hinge' ? [[each.hinge], each.leaves] : [[], []];
    const thing = things.filter((id) => fresh.includes(id)).map(part).find((found) => found !== undefined && found.shape.form !== 'tube');
    const bar = bars.map(part).find((found): found is Tube => found?.shape.form === 'tube');
    return thing === undefined || bar === undefined ? [] : [{ thing, bar }];
  });
}

/** Things on a bar between the mouths of its two joints; null where it ends in none. */
export function measuredOn({ connections, parts }: Model, bar: Tube, things: readonly Part[]): OnBar | null {
  const half = bar.shape.length / 2;
  const sockets = connections.flatMap((each) => (each.is === 'socket' && each.bar === bar.id ? [each] : []));
  const [one, other] = sockets.map(({ joint, depth }) => {
    const at = parts.find(({ id }) => id === joint)?.pose;
    return at !== undefined && placed(undone(bar.pose), placed(at, [0, 0, 0]))[0] < 0 ? -half + depth : half - depth;
  }).toSorted((a, b) => a - b);
  if (one === undefined || other === undefined) return null;
  const joint = parts.find(({ id }) => id === sockets[0]?.joint)?.shape;
  const socket = joint?.form === 'joint' || joint?.form === 'ported-joint' ? joint.joint.socketDiameter : bar.shape.outside;
  const unique = things.filter((thing, index) => things.findIndex(({ id }) => id === thing.id) === index);
  const spans = unique.map((thing) => spanOn(bar, thing)).map(({ from, to }) => ({ from: from - one, to: to - one })).toSorted((a, b) => a.from - b.from);
  return spans.length === 0 || spans.some(({ from, to }) => from < 0 || to > other - one) ? null : { between: other - one, things: spans, tube: bar.shape.outside, socket };
}

/** How far a plate or a clip reaches along a bar, from the bar's middle. */
function spanOn(bar: Part, { shape, pose }: Part): { readonly from: number; readonly to: number } {
  const along = (point: Vec3): number => placed(undone(bar.pose), placed(pose, point))[0];
  const [wide, high] = sidesOf(shape);
  const places = [-1, 1].flatMap((x) => [-1, 1].map((y) => along([(x * wide) / 2, (y * high) / 2, 0])));
  return { from: Math.min(...places), to: Math.max(...places) };
}

/** Sides of a plate, and the width of a clip along its bar, mm. */
function sidesOf(shape: Part['shape']): readonly [number, number] {
  if (shape.form === 'plate') return [shape.width, shape.height];
  if (shape.form !== 'fitting') return [0, 0];
  return isClip(shape.fitting) ? [shape.fitting.width, 0] : [0, 0];
}
