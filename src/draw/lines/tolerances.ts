/**
 * The small lengths of the drawing, all in mm. The factors were found by trial on a scene with a
 * diagonal of 2.5 m and grow with the scene: float32 meshes are as coarse as they are large.
 */
export interface Tolerances {
  /** A line is hidden where it lies deeper than this under a face, measured square to the face. */
  readonly behind: number;
  /** Faces end this much inside their contour, so that a line along the contour stays. */
  readonly contourInset: number;
  /** Faces reach this much over their inner edges, so that nothing shines through between them. */
  readonly innerGrowth: number;
  /** Shorter visible pieces are dropped. */
  readonly sliver: number;
  /** Ends nearer than this to each other or to a line are joined. */
  readonly snap: number;
  /** How far beside a line the drawing looks to see which body is there, where no other line is nearer. */
  readonly probe: number;
  /** A line this deep under the faces on both its sides is no line of the picture. */
  readonly buried: number;
  /** A point nearer than this to the straight line between its neighbours is dropped. */
  readonly straight: number;
  /** Coordinates leave as multiples of this: a power of ten. */
  readonly rounding: number;
}

const trialDiagonal = 2500;

/** Tolerances for a scene whose bounding box has this diagonal (mm). */
export function tolerancesFor(diagonal: number): Tolerances {
  const scale = diagonal > 0 ? diagonal / trialDiagonal : 1;
  return {
    behind: 5e-3 * scale,
    contourInset: 5e-4 * scale,
    innerGrowth: 1e-7 * scale,
    sliver: 0.02 * scale,
    snap: 0.06 * scale,
    probe: 0.1 * scale,
    buried: 0.05 * scale,
    straight: 0.02 * scale,
    rounding: 10 ** (Math.floor(Math.log10(scale)) - 3),
  };
}

/** A face is seen when the component of its unit normal towards the eye is greater than this. */
export const leastFacing = 2e-5;

/** Cosine of 0.3°: faces that differ less in direction are one flat face. */
export const flatCosine = 0.99998629;

/** Cosine of 30.5°: edges that turn less are smooth, so cylinders of 12 sides and more read as round. */
export const smoothCosine = 0.86162916;

/** Sine of 5°: bodies that cross at a lesser angle touch. */
export const leastCrossing = 0.08715574;

/** Points of a mesh nearer than this share of its diagonal are one point. */
export const weldShare = 1e-6;

/** Triangles lower than this share of the mesh's diagonal have no direction of their own. */
export const sliverShare = 5e-5;

/** Bodies that enter each other by less than this share of the larger one's diagonal touch. */
export const touchShare = 1e-6;
