import type { View } from '../../scene/index.ts';
import type { Body, LineDrawing } from '../types.ts';

/** Draws the visible lines and regions of bodies in a view. Handed in, so that pictures can be tested without it. */
export type LineDrawer = (bodies: readonly Body[], view: View) => LineDrawing;
