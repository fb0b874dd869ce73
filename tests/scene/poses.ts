import { Matrix3, Matrix4, Quaternion, Vector3 } from 'three';
import { asMatrix, type Pose, type Vec3 } from '../../src/model/index.ts';

export const vector = (at: Vec3): Vector3 => new Vector3(...at);

export const linear = (pose: Pose): Matrix3 => new Matrix3().setFromMatrix4(asMatrix(pose));

/** Greatest difference between two lists of numbers. */
const farthest = (one: readonly number[], other: readonly number[]): number =>
  Math.max(...one.map((value, index) => Math.abs(value - (other[index] ?? Number.NaN))));

/** How far a pose is from rigid: its turn times its transpose from one, and its determinant from 1. */
export function stretch(pose: Pose): number {
  const turn = linear(pose);
  const square = turn.clone().multiply(turn.clone().transpose());
  const bottom = farthest([3, 7, 11, 15].map((index) => pose[index] ?? Number.NaN), [0, 0, 0, 1]);
  return Math.max(farthest(square.elements, new Matrix3().elements), Math.abs(turn.determinant() - 1), bottom);
}

/** The motion that takes one pose to another: another = motion · one. */
export const between = (one: Pose, another: Pose): Pose => asMatrix(another).multiply(asMatrix(one).invert()).toArray();

/** A rigid motion as a turn of `angle` about a line along `axis` through `through`. */
export function asTurn(motion: Pose): { readonly axis: Vector3; readonly angle: number; readonly through: Vector3 } {
  const [shift, turn, scale] = [new Vector3(), new Quaternion(), new Vector3()];
  new Matrix4().fromArray([...motion]).decompose(shift, turn, scale);
  const angle = 2 * Math.acos(Math.min(1, Math.abs(turn.w)));
  const axis = new Vector3(turn.x, turn.y, turn.z).multiplyScalar(turn.w < 0 ? -1 : 1).normalize();
  const across = shift.clone().sub(axis.clone().multiplyScalar(axis.dot(shift)));
  const through = across.clone().add(axis.clone().cross(across).multiplyScalar(1 / Math.tan(angle / 2))).multiplyScalar(0.5);
  return { axis, angle, through };
}
