import { capFor, openEnds, type Model } from '../../model/index.ts';
import { endPicture, wallPicture, type WallShown } from '../flat/index.ts';
import type { Paper } from '../picture/index.ts';
import type { DrawnPicture } from '../types.ts';

/** Sawn ends filed and capped: the tube as the kit has it, how many ends the item's pieces have, and how many of them stay open and are capped. */
export function endSheet(model: Model, paper: Paper): DrawnPicture {
  const { kit: { tube }, tubes } = model;
  const caps = openEnds(model).reduce((sum, { count }) => sum + count, 0);
  const ends = 2 * tubes.reduce((sum, { count }) => sum + count, 0);
  return endPicture({ outside: tube.outsideDiameter, inside: tube.outsideDiameter - 2 * tube.wall }, capFor(model.kit, tube.outsideDiameter), { filed: ends, capped: caps }, paper);
}

/** A bracket on its wall, and pulled at with so many kilograms; the bracket as the kit has it, a plain plate where it has none. */
export function wallSheet({ kit: { catalogue } }: Model, wall: WallShown, pull: number, paper: Paper): DrawnPicture {
  const bracket = catalogue.fittings.find((fitting) => fitting.is === 'wall-bracket') ?? { plate: 80, thickness: 4, reach: 60 };
  return wallPicture(bracket, wall, pull, paper);
}
