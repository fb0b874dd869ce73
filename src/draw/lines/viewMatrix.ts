import { Matrix4, Vector3 } from 'three';
import type { View } from '../../scene/index.ts';

const spareUps = [[0, 1, 0], [0, 0, 1], [1, 0, 0]] as const;

/**
 * The rotation from the scene to the view plane: x to the right, y upwards, z towards the eye (mm).
 * Looking along `up`, the y axis of the scene points upwards instead.
 * @throws when the direction to the eye has no length.
 */
export function viewMatrix(view: View): Matrix4 {
  const eye = new Vector3(...view.towardsEye);
  if (!(eye.length() > 0) || !Number.isFinite(eye.length())) {
    throw new Error(`view: towardsEye is (${view.towardsEye.join(', ')}), expected a direction from the work to the eye`);
  }
  eye.normalize();
  const right = [view.up, ...spareUps]
    .map((up) => new Vector3(...up).normalize().cross(eye))
    .find((across) => across.length() > 1e-6) ?? new Vector3(1, 0, 0);
  right.normalize();
  const up = new Vector3().crossVectors(eye, right);
  return new Matrix4().makeBasis(right, up, eye).transpose();
}
