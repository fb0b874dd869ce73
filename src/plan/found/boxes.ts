import type { Connection, Part, Pattern } from '../../model/index.ts';
import { boxFolded, isBox, wallPieces, wallsOf, type Folded } from './box-pieces.ts';
import { staysOut, type Piece } from './convex.ts';
import { hullBetween } from './folding.ts';
import type { Fold, FoldedFlap } from '../types.ts';
import type { Units } from './units.ts';

/** A pin of a corner tab. */
export type BoxPin = Extract<Connection, { is: 'panel-pin' }>;

/** A panel that is folded to a box before it is hung: walls turned up, corner tabs pinned. */
export interface Box {
  /** Its unit, which holds its pins too. */
  readonly unit: number;
  readonly part: Part;
  readonly pattern: Pattern;
  /** Its walls and corner tabs as they are when it is ready. */
  readonly folded: readonly FoldedFlap[];
  /** The pins of its corner tabs. */
  readonly pins: readonly BoxPin[];
}

export function boxesIn(units: Units, connections: readonly Connection[]): readonly Box[] {
  return units.all.flatMap((unit): readonly Box[] => {
    const [id = '', ...pins] = unit.parts;
    const part = units.parts.get(id);
    if (unit.is !== 'part' || part === undefined || !isBox(part.shape)) return [];
    const { pattern } = part.shape;
    return [{
      unit: unit.index, part, pattern, folded: flapsOf(part, boxFolded(pattern)),
      pins: connections.filter((each): each is BoxPin => each.is === 'panel-pin' && pins.includes(each.pin)),
    }];
  });
}

const flapsOf = ({ id }: Part, folded: Folded): readonly FoldedFlap[] =>
  Object.entries(folded).filter(([, stage]) => stage > 0).map(([flap, stage]) => ({ panel: id, flap, stage }));

/** So many stages make a quarter turn bulge by 0.03 mm at most, for a wall of 400 mm. */
const STAGES = 64;

/** Whether walls and corner tabs of a box can be folded as told: free of all of it that stands still, without gaps between stages. */
export function isFoldFree({ shape }: Part, folds: readonly Fold[], folded: readonly FoldedFlap[]): boolean {
  if (!isBox(shape)) return false;
  const { pattern } = shape;
  const before: Folded = Object.fromEntries(folded.map(({ flap, stage }) => [flap, stage]));
  const moving = new Set(folds.map(({ flap }) => flap));
  const at = (share: number): Folded => ({ ...before, ...Object.fromEntries(folds.map(({ flap, from, to }) => [flap, from + share * (to - from)])) });
  const walls = wallsOf(pattern);
  const swinging = (wall: typeof walls[number]): boolean => moving.has(wall.name) || wall.lugs.some(({ name }) => moving.has(name));
  const still = walls.filter((wall) => !swinging(wall)).map((wall) => wallPieces(pattern, wall, before));
  return walls.filter(swinging).every((wall) => {
    const ways = Array.from({ length: STAGES + 1 }, (_, index) => wallPieces(pattern, wall, at(index / STAGES)));
    return ways.slice(1).every((pieces, index) => isClear(ways[index] ?? [], pieces, still.flat()));
  });
}

const isClear = (before: readonly Piece[], after: readonly Piece[], still: readonly Piece[]): boolean =>
  after.every((piece, index) => hullBetween(before[index], piece).every((hull) => still.every((other) => staysOut(hull, [0, 0, 0], other))));
