import type { Profile } from '../../read/index.ts';
import { round } from './round.ts';
import { square } from './square.ts';
import type { TubeProfile } from './tube-profile.ts';

/** Every outline a tube may have. */
export const PROFILES: Readonly<Record<Profile, TubeProfile>> = { round, square };
