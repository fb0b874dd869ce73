import type { Vec3 } from './types.ts';

export const plus = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const minus = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const times = (a: Vec3, factor: number): Vec3 => [a[0] * factor, a[1] * factor, a[2] * factor];
export const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Vec3, b: Vec3): Vec3 => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
export const lengthOf = (a: Vec3): number => Math.hypot(a[0], a[1], a[2]);
export const unit = (a: Vec3): Vec3 => times(a, 1 / lengthOf(a));

/** A direction without the dust that turning it left. */
export const tidy = ([x, y, z]: Vec3): Vec3 => [x, y, z].map((value) => Math.round(value * 1e12) / 1e12 + 0) as unknown as Vec3;

/** What of a direction stands square to another, as a unit vector; null when they are parallel. */
export function squareTo(direction: Vec3, to: Vec3): Vec3 | null {
  const rest = minus(direction, times(to, dot(direction, to)));
  return lengthOf(rest) < 1e-6 ? null : unit(rest);
}
