import type { Vec3 } from '../../model/index.ts';
import type { View } from '../types.ts';

/** The direction of step pictures: from the front, a little from the right, from above. */
export const STANDARD_VIEW: View = { towardsEye: [0.5, -0.86, 0.62], up: [0, 0, 1] };

/** To the right on paper in the standard view, in space. */
export const ACROSS_PAPER: Vec3 = [0.86, 0.5, 0];

/** The same from behind, for what is hidden from the front: the worker has walked half round. */
export const BEHIND_VIEW: View = { towardsEye: [-0.5, 0.86, 0.62], up: [0, 0, 1] };

/** The same from the left, for what is hidden from the right. */
export const LEFT_VIEW: View = { towardsEye: [-0.5, -0.86, 0.62], up: [0, 0, 1] };
