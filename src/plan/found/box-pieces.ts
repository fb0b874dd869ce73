import { alongSide, bendTurnsAt, chainSection, columnOf, facetPose, plus, times, type Lug, type Pattern, type PatternFlap, type Shape, type Vec3 } from '../../model/index.ts';
import { chainPieces, facetsBetween, raisedAt } from './chains.ts';
import type { Piece } from './convex.ts';
import { convexParts, hullOf } from './hull.ts';
import { prism } from './prisms.ts';

/** How far each wall and each corner tab is folded, by its name: 0 flat to 1. */
export type Folded = Readonly<Record<string, number>>;

/** What stands by itself of a panel: its middle part; of a box its walls, turned up, and their corner tabs. In panel coordinates. */
export const boxPieces = (pattern: Pattern): readonly Piece[] => [...floorPieces(pattern), ...wallsOf(pattern).flatMap((wall) => wallPieces(pattern, wall, boxFolded(pattern)))];

const floorPieces = ({ base, thickness }: Pattern): readonly Piece[] => convexParts(base).map((outline) => prism(outline, -thickness, 0, (u, v, w) => [u, v, w]));

/** Whether a shape is a panel that is folded to a box before it is hung. */
export const isBox = (shape: Shape): shape is Extract<Shape, { form: 'folded' }> => shape.form === 'folded' && wallsOf(shape.pattern).length > 0;

/** The flaps that are turned up before the panel is hung. */
export const wallsOf = ({ flaps }: Pattern): readonly PatternFlap[] => flaps.filter(({ wall }) => wall > 0);

/** How far the walls and corner tabs of a box are folded when it is ready to be hung. */
export const boxFolded = (pattern: Pattern): Folded =>
  Object.fromEntries(wallsOf(pattern).flatMap((wall) => [[wall.name, raisedAt(wall)], ...wall.lugs.map(({ name }) => [name, 1])] as const));

/** A wall without its rim, and its corner tabs, at any stage of folding. */
export function wallPieces(pattern: Pattern, wall: PatternFlap, folded: Folded): readonly Piece[] {
  const stage = folded[wall.name] ?? 0;
  return [
    ...chainPieces(pattern, wall, wall.strips.slice(0, 1))(stage),
    ...wall.lugs.flatMap((lug) => lugPieces(pattern, wall, lug, stage, folded[lug.name] ?? 0)),
  ];
}

/** A corner tab bends in the plane square to its wall's height, and goes along with the wall. */
export function lugPieces(pattern: Pattern, wall: PatternFlap, lug: Lug, wallStage: number, stage: number): readonly Piece[] {
  const turns = bendTurnsAt(lug.bends, [...lug.bends.keys()], stage);
  const pose = facetPose(pattern, wall, lug.from, 0, wallStage);
  const axis = (column: number): Vec3 => columnOf(pose, column);
  const along = times(alongSide(wall.side), lug.end);
  return facetsBetween(lug.bends, lug.bends[0]?.at ?? 0, lug.edge).map(([from, to]) =>
    prism(hullOf(chainSection(pattern, lug.bends, turns, from, to)), 0, lug.to - lug.from, (u, v, w) =>
      plus(axis(3), plus(times(along, u), plus(times(axis(2), v), times(axis(0), w))))));
}
