import { cableEnds, cableTest, capFor, cappedTubes, jointPorts, type JointPorts, type Model } from '../../model/index.ts';
import { sleeveEnds } from '../../scene/index.ts';
import { cableCutPicture, endPicture, knotReminder, knotSeries, sleeveMarkPicture, wallPicture, type CableCut, type CappedTubes, type WallShown } from '../flat/index.ts';
import { lettersWritten } from '../post-kinds.ts';
import type { Paper } from '../picture/index.ts';
import type { DrawnPicture } from '../types.ts';
import type { DrawnFlat } from './work-picture.ts';

/** Sawn ends filed and capped: the tube as the kit has it, how many ends the item's pieces have, and which ends of which pieces are capped. */
export function endSheet(model: Model, paper: Paper): DrawnPicture {
  const { kit: { tube }, tubes } = model;
  const ends = 2 * tubes.reduce((sum, { count }) => sum + count, 0);
  const end = { outside: tube.outsideDiameter, inside: tube.outsideDiameter - 2 * tube.wall };
  return endPicture(end, capFor(model.kit, end), { filed: ends, capped: cappedKinds(model) }, paper);
}

/** The tubes that get caps: those with the same letter, marks and capped ends are one kind. */
function cappedKinds(model: Model): readonly CappedTubes[] {
  const [capped, written] = [cappedTubes(model), lettersWritten(model)];
  const kinds = new Map<string, CappedTubes>();
  for (const { id, shape } of model.parts) {
    const ends = capped.get(id);
    if (shape.form !== 'tube' || ends === undefined) continue;
    const kind = { letter: written.get(id) ?? '', length: shape.length, marks: sleeveEnds(model, id), first: ends.includes(-1), last: ends.includes(1) };
    const key = JSON.stringify(kind);
    kinds.set(key, { ...kind, count: (kinds.get(key)?.count ?? 0) + 1 });
  }
  return [...kinds.values()];
}

/** A bracket on its wall, and pulled at with so many kilograms; the bracket as the kit has it, a plain plate where it has none. */
export function wallSheet({ kit: { catalogue } }: Model, wall: WallShown, pull: number, paper: Paper): DrawnPicture {
  const bracket = catalogue.fittings.find((fitting) => fitting.is === 'wall-bracket') ?? { plate: 80, thickness: 4, reach: 60 };
  return wallPicture(bracket, wall, pull, paper);
}

/** Where a sleeve is drilled, measured from its end; nothing where a step drills through none. */
export const sleevesMeasured: DrawnFlat = ({ model, papers: { bench } }, { drillsFor }) => {
  const held = model.connections.find((each) => each.is === 'pin' && drillsFor.includes(each.pin) && jointHeld(model, each.holds) !== null);
  const joint = held?.is === 'pin' ? jointHeld(model, held.holds) : null;
  const sleeve = joint?.ports.find((port) => port.is === 'sleeve');
  return joint === null || sleeve?.is !== 'sleeve' ? [] : [sleeveMarkPicture({ sleeve, outside: joint.outside, tube: model.kit.tube.outsideDiameter }, bench.width)];
};

const jointHeld = ({ parts }: Model, held: readonly string[]): JointPorts | null => parts.flatMap(({ id, shape }) => (held.includes(id) ? jointPorts(shape) ?? [] : []))[0] ?? null;

/** How the cables of a step are measured and cut; how they are tied, drawn tight and looked at where cables are tied first, and where that was shown at later steps, with what hangs on their length. */
export const cableSheets: DrawnFlat = ({ model, plan, papers: { bench } }, step) => {
  const cables = cablesOf(model, step.newParts.flatMap(({ ids }) => ids));
  const first = plan.steps.find(({ action }) => action === step.action) ?? step;
  return cables.flatMap((cable, index) => [
    cableCutPicture([cable], bench),
    ...(step === first && index === 0 ? knotSeries(cable, bench) : [knotReminder(cable, first.number, bench)]),
  ]);
};

/** The cables by length, the longest first. */
function cablesOf({ parts }: Model, ids: readonly string[]): readonly CableCut[] {
  const lengths = parts.flatMap(({ id, shape }) => (shape.form === 'cable' && ids.includes(id) ? [Math.round(shape.length)] : []));
  return [...new Set(lengths)].sort((a, b) => b - a).map((length): CableCut =>
    ({ count: lengths.filter((each) => each === length).length, ...cableEnds(length), test: cableTest(length) }));
}
