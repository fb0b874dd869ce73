import type { Kit } from '../read/index.ts';
import { KIT_PROFILE } from './profiles/profiles.ts';
import type { WrapGivens, WrapPath } from './profiles/tube-profile.ts';
import type { Flap, FlatPattern } from './types.ts';

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
  const path = KIT_PROFILE.wrapPath(givens);
  return { ...givens, creaseAngle: Math.max(...path.creases.map(({ turn }) => turn)), path };
}

/** Derives the wrap from the kit: its tube, its panel and the practice of the workshop. */
export function wrapOf(kit: Kit): Wrap {
  const { panel, practice, tube } = kit;
  return wrapFrom({
    radius: tube.outsideDiameter / 2 + practice.wrapClearance,
    thickness: panel.thickness,
    skin: panel.skin,
    neutralLayer: panel.neutralLayer,
    turnBack: practice.turnBack,
    creases: KIT_PROFILE.creases(practice.turnBack, panel.tightestCrease),
    tab: practice.tab,
  });
}

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
export const widestGap = (wrap: Wrap, clearance: number): number => KIT_PROFILE.widestGap(wrap, clearance);

/** Distances of the creases from the tube's axis line, outwards on the flat panel. */
export const creasePlaces = ({ path }: Wrap): readonly number[] => path.creases.map(({ at }) => at);

/** Distance of the half-cut from the tube's axis line, outwards on the flat panel. */
export const halfCutPlace = ({ path }: Wrap): number => path.halfCut;
