import { dot, minus, plus, times, type Vec3 } from '../../model/index.ts';

export const middle = (a: Vec3, b: Vec3): Vec3 => times(plus(a, b), 0.5);

/** How far along a line from `from` a point lies, mm; `along` of length 1. */
export const alongLine = (from: Vec3, along: Vec3, at: Vec3): number => dot(minus(at, from), along);

export const isParallel = (a: Vec3, b: Vec3): boolean => Math.abs(dot(a, b)) > 0.99;
