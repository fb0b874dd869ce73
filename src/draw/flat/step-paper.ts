import type { Paper } from '../kit/svg.ts';

/** Paper of a step picture, mm. */
export const stepPaper: Paper = { width: 170, height: 110 };
