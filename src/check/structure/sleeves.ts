import { dot, type Part } from '../../model/index.ts';
import { judge } from '../judge.ts';
import { wayOf } from './bearings.ts';
import { worst, type StructureCase, type StructureCheck } from './case.ts';
import { lengthOfBar, type BarLine, type Hold } from './skeleton.ts';

/** A ring on a bar from one place to another, mm from the bar's beginning, and how thick it stands out. */
export interface Ring {
  readonly joint: string;
  readonly from: number;
  readonly to: number;
  readonly depth: number;
}

/** The rings on a bar in order, whichever way round the joints sit. */
export const ringsOn = ({ model }: StructureCase, bar: BarLine): readonly Ring[] => bar.holds.filter(({ by }) => by === 'sleeve').flatMap((hold): readonly Ring[] => {
  const part = model.parts.find(({ id }) => id === hold.joint);
  return part === undefined ? [] : ringAt(part, bar, hold);
});

function ringAt(part: Part, bar: BarLine, { at, joint }: Hold): readonly Ring[] {
  const { shape } = part;
  if (shape.form === 'joint') return [ring(joint, at, dot(wayOf(part, [0, 0, 1]), bar.along), shape.joint.sleeveAbove, shape.joint.sleeveBelow, (shape.joint.sleeveDiameter - bar.outside) / 2)];
  if (shape.form !== 'ported-joint') return [];
  const sleeve = shape.joint.ports.find((port) => port.is === 'sleeve');
  if (sleeve?.is !== 'sleeve') return [];
  return [ring(joint, at, dot(wayOf(part, sleeve.axis), bar.along), sleeve.above, sleeve.below, (shape.joint.sleeveDiameter - bar.outside) / 2)];
}

const ring = (joint: string, at: number, way: number, above: number, below: number, depth: number): Ring =>
  ({ joint, depth, from: at - (way > 0 ? below : above), to: at + (way > 0 ? above : below) });

/** The grooves between neighbouring rings on one bar, mm; under 0 they run into each other. */
export const ringGaps = (given: StructureCase): readonly { readonly gap: number; readonly depth: number; readonly ids: readonly string[] }[] =>
  given.skeleton.bars.flatMap((bar) => {
    const rings = ringsOn(given, bar).toSorted((a, b) => a.from - b.from);
    return rings.slice(1).map((next, index) => ({ gap: next.from - (rings[index]?.to ?? 0), depth: next.depth, ids: [rings[index]?.joint ?? '', next.joint] }));
  });

/** The least gap between neighbouring joints on one bar, mm. */
export const ringsApart: StructureCheck = (given) => worst(ringGaps(given).map(({ gap, ids }) => judge({
  name: 'joints-apart', figure: gap, limit: 0, bound: 'least', unit: 'mm', source: 'geometry: sleeves one over the other (C)', parts: ids,
})));

/** How far a bar goes through the outer joints on it, mm; under 0 it ends inside or short of one. */
export const barReach: StructureCheck = (given) => worst(given.skeleton.bars.flatMap((bar) => {
  const rings = ringsOn(given, bar);
  if (rings.length === 0) return [];
  const free = [bar.holds[0]?.by === 'sleeve' ? Math.min(...rings.map(({ from }) => from)) : Infinity, bar.holds.at(-1)?.by === 'sleeve' ? lengthOfBar(bar) - Math.max(...rings.map(({ to }) => to)) : Infinity];
  const reach = Math.min(...free);
  return Number.isFinite(reach) ? [judge({
    name: 'post-reach', figure: Math.round(reach * 1e6) / 1e6, limit: 0, bound: 'least', unit: 'mm', source: 'geometry: a sleeve all on its post (C)', parts: [bar.id],
  })] : [];
}));
