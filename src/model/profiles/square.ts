import { round } from './round.ts';
import type { TubeProfile, TubeSection, TubeSize } from './tube-profile.ts';

/**
 * Section values about an axis through the middle, across two faces: (a⁴ − b⁴)/12, the modulus being twice that over the
 * width (any handbook of beams, for example Gere and Goodno, Mechanics of Materials, appendix). A hole through the two
 * walls where it bends most takes their own part at (a − t)/2 away.
 */
function sectionOf({ outside, inside }: TubeSize): TubeSection {
  const secondMoment = (outside ** 4 - inside ** 4) / 12;
  const wall = (outside - inside) / 2;
  return {
    area: outside ** 2 - inside ** 2,
    secondMoment,
    sectionModulus: (2 * secondMoment) / outside,
    drilledModulus: (hole) => (2 * (secondMoment - 2 * hole * wall * ((outside - wall) / 2) ** 2)) / outside,
    bearingWidth: (pin) => pin,
  };
}

/** A tube between two squares, its faces across x and y. A panel goes round it as round a round one of its width. */
export const square: TubeProfile = {
  ...round,
  bar: (kernel, width, from, to) => kernel.Manifold.cube([width, width, to - from], true).translate(0, 0, (from + to) / 2),
  section: sectionOf,
};
