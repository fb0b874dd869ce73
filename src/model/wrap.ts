import type { Kit, PanelKind, Practice } from '../read/index.ts';
import { PROFILES } from './profiles/profiles.ts';
import type { WrapGivens, WrapPath } from './profiles/tube-profile.ts';
import type { Flap, FlatPattern } from './types.ts';

/** A panel goes round a square tube as round a round one of its width. */
const ROUND = PROFILES.round;

/**
 * The numbers of one wrapped flap in cross-section. The panel lies inner face up; the tube's axis stands
 * at height `radius` over the inner face. All lengths mm on the flat panel, angles rad.
 */
export interface Wrap extends WrapGivens {
  readonly skin: number;
  readonly tab: number;
  /** The sharpest turn of a crease. */
  readonly creaseAngle: number;
  readonly path: WrapPath;
}

function wrapFrom(givens: Omit<Wrap, 'creaseAngle' | 'path'>): Wrap {
  const path = ROUND.wrapPath(givens);
  return { ...givens, creaseAngle: Math.max(...path.creases.map(({ turn }) => turn)), path };
}

/** The wrap of a panel round a tube of some outside diameter, by the practice of the workshop. */
export const wrapAround = (panel: Pick<PanelKind, 'thickness' | 'skin' | 'neutralLayer' | 'tightestCrease'>, practice: Practice, tube: number): Wrap => wrapFrom({
  radius: tube / 2 + practice.wrapClearance,
  thickness: panel.thickness,
  skin: panel.skin,
  neutralLayer: panel.neutralLayer,
  turnBack: practice.turnBack,
  creases: ROUND.creases(practice.turnBack, panel.tightestCrease),
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

/** Widest gap between tube and panel, mm. */
export const widestGap = (wrap: Wrap, clearance: number): number => ROUND.widestGap(wrap, clearance);

/** Distances of the creases from the tube's axis line, outwards on the flat panel. */
export const creasePlaces = ({ path }: Wrap): readonly number[] => path.creases.map(({ at }) => at);

/** Distance of the half-cut from the tube's axis line, outwards on the flat panel. */
export const halfCutPlace = ({ path }: Wrap): number => path.halfCut;
