import type { View } from '../types.ts';

/** The one direction of all step pictures: from the front, a little from the right, from above. */
export const STANDARD_VIEW: View = { towardsEye: [0.5, -0.86, 0.62], up: [0, 0, 1] };
