import { tubeKinds, type Kit, type Profile, type TubeKind } from '../read/index.ts';
import type { Shape } from './types.ts';

type TubeShape = Extract<Shape, { form: 'tube' }>;

/** What a tube's cross-section is good for. Areas mm², second moments mm⁴, section moduli mm³. */
export interface SectionValues {
  readonly area: number;
  readonly secondMoment: number;
  readonly sectionModulus: number;
}

/**
 * Section values about an axis through the middle: of a ring π(D⁴ − d⁴)/64, of a square tube (a⁴ − b⁴)/12, the modulus
 * being twice that over the width (any handbook of beams, for example Gere and Goodno, Mechanics of Materials, appendix).
 */
export function sectionValues({ profile, outside, wall }: Pick<TubeKind, 'profile' | 'outside' | 'wall'>): SectionValues {
  const inside = outside - 2 * wall;
  const [area, fourth]: readonly [number, number] = SHARES[profile];
  const secondMoment = fourth * (outside ** 4 - inside ** 4);
  return { area: area * (outside ** 2 - inside ** 2), secondMoment, sectionModulus: (2 * secondMoment) / outside };
}

/** Area and second moment of a full section of width 1. */
const SHARES: Readonly<Record<Profile, readonly [number, number]>> = {
  round: [Math.PI / 4, Math.PI / 64],
  square: [1, 1 / 12],
};

/** A tube of some length, undrilled. */
export const tubeOf = ({ profile, outside, wall }: TubeKind, length: number): TubeShape => ({
  form: 'tube', length, outside, inside: outside - 2 * wall, holes: [], ...(profile === 'square' ? { profile } : {}),
});

/** kg */
export const massOf = (tube: TubeKind, length: number): number => length * sectionValues(tube).area * tube.density;

const usual = (kit: Kit): TubeKind => {
  const [first] = tubeKinds(kit);
  if (first === undefined) throw new RangeError('a kit has at least one tube');
  return first;
};

/** A tube from the kit's usual stock, undrilled. */
export const tubeShape = (kit: Kit, length: number): TubeShape => tubeOf(usual(kit), length);

/** kg */
export const tubeMass = (kit: Kit, length: number): number => massOf(usual(kit), length);
