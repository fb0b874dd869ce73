import type { Folding } from './types.ts';

export const WRAPPED: Folding = { left: 1, right: 1, front: 1, back: 1 };
export const FLAT: Folding = { left: 0, right: 0, front: 0, back: 0 };
