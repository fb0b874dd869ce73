import type { Kit, PanelKind, Practice } from '../read/index.ts';
import type { Flap, FlatPattern } from './types.ts';

/**
 * The numbers of one wrapped flap in cross-section. The panel lies inner face up; the tube's axis stands
 * at height `radius` over the inner face. All lengths mm on the flat panel, angles rad.
 */
export interface Wrap {
  /** Inner face to tube axis: D/2 + c. */
  readonly radius: number;
  readonly thickness: number;
  readonly skin: number;
  /** k of the panel: the layer at k·t from the inner face keeps its length. */
  readonly neutralLayer: number;
  readonly turnBack: number;
  readonly creases: number;
  readonly creaseAngle: number;
  /** Between neighbouring creases. */
  readonly spacing: number;
  /** From the tube's axis line outwards to the first crease, and from the last tangent point back to the last crease. */
  readonly half: number;
  /** From the last tangent point down the run to the half-cut. */
  readonly run: number;
  readonly tab: number;
  /** How far inside the tube's axis line the opened half-cut has its hinge once the tab lies flat. */
  readonly hingeInside: number;
}

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

/** What the kit and the workshop's practice say of a wrap. */
type WrapGivens = Pick<Wrap, 'radius' | 'thickness' | 'skin' | 'neutralLayer' | 'turnBack' | 'creases' | 'tab'>;

function wrapFrom(givens: WrapGivens): Wrap {
  const { radius, thickness, neutralLayer, turnBack, creases } = givens;
  const creaseAngle = wrapAngle(turnBack) / creases;
  const spacing = creaseSpacing(radius, thickness, neutralLayer, creaseAngle);
  return {
    ...givens,
    creaseAngle,
    spacing,
    half: spacing / 2,
    run: runToHalfCut(radius, thickness, turnBack),
    hingeInside: runToInnerFace(radius, turnBack) + thickness * Math.tan(turnBack / 2),
  };
}

/** The wrap of a panel round a tube of some outside diameter, by the practice of the workshop. */
export const wrapAround = (panel: Pick<PanelKind, 'thickness' | 'skin' | 'neutralLayer' | 'tightestCrease'>, practice: Practice, tube: number): Wrap => wrapFrom({
  radius: tube / 2 + practice.wrapClearance,
  thickness: panel.thickness,
  skin: panel.skin,
  neutralLayer: panel.neutralLayer,
  turnBack: practice.turnBack,
  creases: creaseCount(practice.turnBack, panel.tightestCrease),
  tab: practice.tab,
});

/** Derives the wrap from the kit: its usual tube and panel and the practice of the workshop. */
export const wrapOf = (kit: Kit): Wrap => wrapAround(kit.panel, kit.practice, kit.tube.outsideDiameter);

/** The wrap that a pattern's flap was drawn for. */
export const patternWrap = (pattern: FlatPattern, flap: Flap): Wrap => wrapFrom({
  radius: pattern.wrapRadius,
  thickness: pattern.thickness,
  skin: pattern.skin,
  neutralLayer: pattern.neutralLayer,
  turnBack: flap.turnBack,
  creases: flap.creases.length,
  tab: flap.edge - flap.halfCut,
});

/** Widest gap between tube and panel, mm: at the creases' inner corners, on facets that touch the circle r = D/2 + c. */
export const widestGap = (wrap: Wrap, clearance: number): number =>
  clearance + wrap.radius * (1 / Math.cos(wrap.creaseAngle / 2) - 1);

/** Distances of the creases from the tube's axis line, outwards on the flat panel. */
export const creasePlaces = (wrap: Wrap): readonly number[] =>
  Array.from({ length: wrap.creases }, (_, index) => wrap.half + index * wrap.spacing);

/** Distance of the half-cut from the tube's axis line, outwards on the flat panel. */
export const halfCutPlace = (wrap: Wrap): number =>
  wrap.half + (wrap.creases - 1) * wrap.spacing + wrap.half + wrap.run;
