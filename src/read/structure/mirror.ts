import type { Triple } from './types.ts';

/** Across the plane x = 0 or y = 0. */
export const mirrored = ([x, y, z]: Triple, plane: 'x' | 'y'): Triple => (plane === 'x' ? [-x, y, z] : [x, -y, z]);
