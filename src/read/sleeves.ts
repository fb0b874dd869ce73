import { dimensionedText } from './dimensioned-text.ts';
import type { Working } from './item-values.ts';
import { messages } from './messages.ts';
import type { PlacedExpression } from './placed-expressions.ts';
import type { Face, Kit } from './types.ts';
import { quoted } from './yaml-source.ts';

/** One deck or frame of a piece in one size: the middle of its tubes over the floor in mm, and the sides that have one. */
export interface Level {
  readonly piece: string;
  readonly height: number;
  readonly sides: readonly Face[];
  /** The `top` or `level` that put it there. */
  readonly placed: PlacedExpression;
}

/** Two levels whose joints run into each other, and how far their tubes are apart, mm. The later one of the file is blamed. */
interface Clash {
  readonly blamed: Level;
  readonly other: Level;
  readonly apart: number;
}

/** Heights nearer to each other than this are the same, in mm: a rounding error, far below any saw cut. */
const SAME = 1e-6;

const corners: readonly (readonly [Face, Face])[] = [['left', 'front'], ['right', 'front'], ['left', 'back'], ['right', 'back']];

/**
 * Tells levels that share a post and stand so near that the sleeves of their corner joints overlap: the sleeve of the
 * lower one goes up, that of the upper one down. Gives the names of the pieces that are told of.
 */
export function sleeveFaults({ source, size, faults }: Working, { joint }: Kit, levels: readonly Level[]): ReadonlySet<string> {
  const least = joint.sleeveAbove + joint.sleeveBelow;
  const clashes = nearestOfEach(corners.flatMap((corner) => clashesAt(corner, levels, least)));
  for (const { blamed, other, apart } of clashes) {
    const found = messages.tubesApart(quoted(blamed.placed.expression.text), millimetres(apart), blamed.piece === other.piece ? null : other.piece);
    faults.push(source.fault(blamed.placed.path, messages.sleevesApart(millimetres(least)), messages.inSize(found, size)));
  }
  return new Set(clashes.flatMap(({ blamed, other }) => [blamed.piece, other.piece]));
}

function clashesAt(corner: readonly Face[], levels: readonly Level[], least: number): readonly Clash[] {
  const here = levels.map((level, order) => ({ level, order })).filter(({ level }) => level.sides.some((side) => corner.includes(side)))
    .toSorted((a, b) => a.level.height - b.level.height || a.order - b.order);
  return here.slice(1).flatMap((upper, index) => {
    const lower = here[index] ?? upper;
    const apart = upper.level.height - lower.level.height;
    if (apart >= least - SAME) return [];
    const [other, blamed] = upper.order > lower.order ? [lower.level, upper.level] : [upper.level, lower.level];
    return [{ blamed, other, apart }];
  });
}

/** Of the clashes between the same two pieces the nearest one: the others have the same cause. */
function nearestOfEach(clashes: readonly Clash[]): readonly Clash[] {
  const nearest = new Map<string, Clash>();
  for (const clash of clashes.toSorted((a, b) => a.apart - b.apart)) {
    const pair = `${clash.blamed.piece} ${clash.other.piece}`;
    if (!nearest.has(pair)) nearest.set(pair, clash);
  }
  return [...nearest.values()];
}

const millimetres = (value: number): string => dimensionedText({ value, dimension: 'length' });
