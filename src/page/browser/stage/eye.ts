import { MathUtils, Vector3, type OrthographicCamera } from 'three';
import type { Box3 } from '../../../model/index.ts';

/** Where the model is looked at from: angles in rad, and how near against the whole model just filling the view. */
export interface Eye {
  /** From the front towards the right. */
  readonly round: number;
  /** From level upwards. */
  readonly up: number;
  readonly near: number;
}

/** The direction of the printed pictures. */
export const BOOKLET_EYE: Eye = { round: Math.atan2(0.5, 0.86), up: Math.atan2(0.62, Math.hypot(0.5, 0.86)), near: 1 };
export const FRONT_EYE: Eye = { round: 0, up: 0, near: 1 };
export const SIDE_EYE: Eye = { round: Math.PI / 2, up: 0, near: 1 };
export const TOP_EYE: Eye = { round: 0, up: Math.PI / 2 - 1e-4, near: 1 };

const STEEPEST = Math.PI / 2 - 1e-4;
const NEAREST = 12;
/** Share of the view that the model fills. */
const FILLED = 0.84;

export const turnedEye = (eye: Eye, round: number, up: number): Eye =>
  ({ ...eye, round: eye.round + round, up: MathUtils.clamp(eye.up + up, -STEEPEST, STEEPEST) });

export const nearerEye = (eye: Eye, by: number): Eye => ({ ...eye, near: MathUtils.clamp(eye.near * by, 0.5, NEAREST) });

/** Aims a camera at a box so that the whole of it is seen at `near` 1. `width` and `height` of the view are in pixels. */
export function aim(camera: OrthographicCamera, eye: Eye, box: Box3, width: number, height: number): void {
  const middle = new Vector3(...box.min).add(new Vector3(...box.max)).multiplyScalar(0.5);
  const half = new Vector3(...box.max).sub(new Vector3(...box.min)).multiplyScalar(0.5);
  const size = Math.max(1, half.length());
  const towards = new Vector3(Math.sin(eye.round) * Math.cos(eye.up), -Math.cos(eye.round) * Math.cos(eye.up), Math.sin(eye.up));
  camera.up.set(0, 0, 1);
  camera.position.copy(middle).addScaledVector(towards, 4 * size);
  camera.lookAt(middle);
  camera.near = size / 100;
  camera.far = 8 * size;
  camera.updateMatrixWorld();
  const reach = (column: 0 | 1): number => {
    const along = new Vector3().setFromMatrixColumn(camera.matrixWorld, column);
    return Math.abs(along.x) * half.x + Math.abs(along.y) * half.y + Math.abs(along.z) * half.z;
  };
  camera.zoom = eye.near * FILLED * Math.min(width / (2 * Math.max(1, reach(0))), height / (2 * Math.max(1, reach(1))));
  camera.updateProjectionMatrix();
}
