import type { SceneBody, View } from '../../scene/index.ts';
import type { Body, LineDrawing } from '../types.ts';

/**
 * Draws the visible lines and regions of bodies in a view; the lines of the bodies `apart` (ids) come as strokes that
 * name them. Handed in, so that pictures can be tested without it.
 */
export type LineDrawer = (bodies: readonly Body[], view: View, apart?: ReadonlySet<string>) => LineDrawing;

/** Bodies whose lines are held back. */
export const heldBack = (bodies: readonly SceneBody[]): ReadonlySet<string> =>
  new Set(bodies.filter((body) => body.look === 'pale' || body.kind === 'floor').map((body) => body.id));
