import { tubeKinds, type Kit, type TubeKind } from '../read/index.ts';
import { PROFILES } from './profiles/profiles.ts';
import type { TubeSection } from './profiles/tube-profile.ts';
import type { Shape } from './types.ts';

type TubeShape = Extract<Shape, { form: 'tube' }>;

/** A tube of some length, undrilled. */
export const tubeOf = ({ profile, outside, wall }: TubeKind, length: number): TubeShape => ({
  form: 'tube', length, outside, inside: outside - 2 * wall, holes: [], ...(profile === 'square' ? { profile } : {}),
});

const usual = (kit: Kit): TubeKind => {
  const [first] = tubeKinds(kit);
  if (first === undefined) throw new RangeError('a kit has at least one tube');
  return first;
};

/** A tube from the kit's usual stock, undrilled. */
export const tubeShape = (kit: Kit, length: number): TubeShape => tubeOf(usual(kit), length);

/** What a tube from the kit's usual stock carries. */
export function tubeSection(kit: Kit): TubeSection {
  const shape = tubeShape(kit, 1);
  return PROFILES[shape.profile ?? 'round'].section(shape);
}
