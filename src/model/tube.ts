import { tubeKinds, type Kit, type TubeKind } from '../read/index.ts';
import { PROFILES } from './profiles/profiles.ts';
import type { TubeSection } from './profiles/tube-profile.ts';
import { placed } from './pose.ts';
import type { Part, Shape, Vec3 } from './types.ts';

/** Both sawn ends of a tube where it stands, mm; null for what is no tube. */
export function endsOfTube({ shape, pose }: Pick<Part, 'shape' | 'pose'>): readonly [Vec3, Vec3] | null {
  if (shape.form !== 'tube') return null;
  return [placed(pose, [-shape.length / 2, 0, 0]), placed(pose, [shape.length / 2, 0, 0])];
}

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
