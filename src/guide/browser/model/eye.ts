import type { Vec } from './pose.ts';

/** Where the eye is: turns in rad, enlargement, and how far the middle of the picture is moved, in shares of the work's radius. */
export interface Eye {
  readonly around: number;
  readonly above: number;
  readonly scale: number;
  readonly aside: number;
  readonly upward: number;
}

/** The directions to the right, upwards and towards the eye. */
export interface Axes {
  readonly right: Vec;
  readonly up: Vec;
  readonly towards: Vec;
}

const STEEPEST = 1.45;
const MOST = 10;
const LEAST = 0.6;

export const eyeAt = ([x, y, z]: readonly number[]): Eye => ({
  around: Math.atan2(y || 0, x || 0),
  above: Math.atan2(z || 0, Math.hypot(x || 0, y || 0)),
  scale: 1,
  aside: 0,
  upward: 0,
});

/** The work turns on its foot like on a turntable, and tips towards the eye or away; it cannot be lost upside down. */
export const turned = ({ around, above, scale, aside, upward }: Eye, across: number, down: number): Eye => ({
  around: around - across,
  above: Math.min(STEEPEST, Math.max(-STEEPEST, above + down)),
  scale,
  aside,
  upward,
});

/** Enlarged about a place of the picture (shares of the radius from the middle), then moved. */
export function enlarged({ around, above, scale, aside, upward }: Eye, factor: number, [x, y]: readonly [number, number], [right, up]: readonly [number, number]): Eye {
  const larger = Math.min(MOST, Math.max(LEAST, scale * factor));
  const grown = larger / scale;
  return { around, above, scale: larger, aside: x + (aside - x) * grown + right, upward: y + (upward - y) * grown + up };
}

export function axesOf({ around, above }: Eye): Axes {
  const [ca, sa, cb, sb] = [Math.cos(around), Math.sin(around), Math.cos(above), Math.sin(above)];
  return { right: [-sa, ca, 0], up: [-sb * ca, -sb * sa, cb], towards: [cb * ca, cb * sa, sb] };
}
