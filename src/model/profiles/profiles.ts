import { round } from './round.ts';
import type { TubeProfile } from './tube-profile.ts';

/** Every outline a tube may have. */
export const PROFILES = { round } as const satisfies Readonly<Record<string, TubeProfile>>;

/** The profile of the kit's tubes, of the patterns wrapped on them and of their solids. */
export const KIT_PROFILE: TubeProfile = PROFILES.round;
