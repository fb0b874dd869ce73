import { rod } from '../solids/round.ts';
import type { TubeProfile, TubeSection, TubeSize, WrapGivens, WrapPath } from './tube-profile.ts';

/** Area of a round tube's wall across, mm², from its diameters in mm. */
export const wallArea = (outside: number, inside: number): number =>
  (Math.PI / 4) * (outside ** 2 - inside ** 2);

/** Second moment of area of a round tube, mm⁴: π/64 (D⁴ − d⁴). */
export const secondMoment = (outside: number, inside: number): number =>
  (Math.PI / 64) * (outside ** 4 - inside ** 4);

/** Section modulus of a round tube, mm³: I / (D/2). */
export const sectionModulus = (outside: number, inside: number): number =>
  secondMoment(outside, inside) / (outside / 2);

/** Section modulus of a round tube with a hole right through both walls where it bends most, mm³: the walls' own part at (D − t)/2 left out. */
export const drilledSectionModulus = (outside: number, inside: number, hole: number): number => {
  const wall = (outside - inside) / 2;
  return (secondMoment(outside, inside) - 2 * hole * wall * ((outside - wall) / 2) ** 2) / (outside / 2);
};

/** Θ = π + β: the creases together turn the flap over the tube and down towards the inner face. */
export const wrapAngle = (turnBack: number): number => Math.PI + turnBack;

/** The fewest creases that keep each one no sharper than the panel allows. */
export const creaseCount = (turnBack: number, tightest: number): number =>
  Math.ceil(wrapAngle(turnBack) / tightest - 1e-9);

/** s = 2 (r + k t) tan(φ/2): facets that touch the circle of the neutral layer. */
export const creaseSpacing = (radius: number, thickness: number, neutralLayer: number, creaseAngle: number): number =>
  2 * (radius + neutralLayer * thickness) * Math.tan(creaseAngle / 2);

/** r cot(β/2): from the last tangent point along the run's inner face to where that line meets the panel's inner face. */
export const runToInnerFace = (radius: number, turnBack: number): number => radius / Math.tan(turnBack / 2);

/**
 * Length of the run to the half-cut. The half-cut turns on the outer skin, and the tab is a full thickness
 * high when it lies flat; so the cut stands t·tan(β/2) short of the place where the run's inner face would
 * meet the panel. (Two outer faces at thickness t over the panel and along the run meet there: closed form.)
 */
export const runToHalfCut = (radius: number, thickness: number, turnBack: number): number =>
  runToInnerFace(radius, turnBack) - thickness * Math.tan(turnBack / 2);

const creaseAngleOf = ({ turnBack, creases }: WrapGivens): number => wrapAngle(turnBack) / creases;

/** Creases alike, a spacing apart; half a spacing before the first, half a spacing and the run after the last. */
function wrapPath(givens: WrapGivens): WrapPath {
  const { radius, thickness, neutralLayer, turnBack, creases } = givens;
  const turn = creaseAngleOf(givens);
  const spacing = creaseSpacing(radius, thickness, neutralLayer, turn);
  const half = spacing / 2;
  return {
    creases: Array.from({ length: creases }, (_, index) => ({ at: half + index * spacing, turn })),
    halfCut: half + (creases - 1) * spacing + half + runToHalfCut(radius, thickness, turnBack),
    hingeInside: runToInnerFace(radius, turnBack) + thickness * Math.tan(turnBack / 2),
    bulge: (radius + thickness) / Math.cos(turn / 2),
  };
}

const sectionOf = ({ outside, inside }: TubeSize): TubeSection => ({
  area: wallArea(outside, inside),
  secondMoment: secondMoment(outside, inside),
  sectionModulus: sectionModulus(outside, inside),
  drilledModulus: (hole) => drilledSectionModulus(outside, inside, hole),
  bearingWidth: (pin) => pin,
});

/** A tube between two circles; the panel goes round it in facets that touch a circle a clearance outside. */
export const round: TubeProfile = {
  bar: rod,
  section: sectionOf,
  creases: creaseCount,
  wrapPath,
  // At the creases' inner corners.
  widestGap: (givens, clearance) => clearance + givens.radius * (1 / Math.cos(creaseAngleOf(givens) / 2) - 1),
};
