import type { Shape } from '../../model/index.ts';

/** The nose of the drill over its chuck, mm: told from a pin by its breadth. */
export const NOSE: Shape = { form: 'pin', diameter: 34, length: 0.5, headDiameter: 46, headHeight: 58 };
