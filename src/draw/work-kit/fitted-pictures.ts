import { cableEnds, cableTest, capFor, cappedTubes, type Model } from '../../model/index.ts';
import { sleeveEnds } from '../../scene/index.ts';
import { cableCutPicture, endPicture, knotSeries, wallPicture, type CableCut, type CappedTubes, type WallShown } from '../flat/index.ts';
import { lettersWritten } from '../post-kinds.ts';
import type { Paper } from '../picture/index.ts';
import type { DrawnPicture } from '../types.ts';

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

/** How the cables of a step are measured, cut, tied, drawn tight and looked at: all of it at each of their lengths, for where the loops come and how far it may give way hang on it. */
export const cableSheets = (model: Model, ids: readonly string[], paper: Paper): readonly DrawnPicture[] =>
  cablesOf(model, ids).flatMap((cable) => [cableCutPicture([cable], paper), knotSeries(cable, paper)]);

/** The cables by length, the longest first. */
function cablesOf({ parts }: Model, ids: readonly string[]): readonly CableCut[] {
  const lengths = parts.flatMap(({ id, shape }) => (shape.form === 'cable' && ids.includes(id) ? [Math.round(shape.length)] : []));
  return [...new Set(lengths)].sort((a, b) => b - a).map((length): CableCut =>
    ({ count: lengths.filter((each) => each === length).length, ...cableEnds(length), test: cableTest(length) }));
}
