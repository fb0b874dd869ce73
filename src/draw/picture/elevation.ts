import type { Vec2, Vec3 } from '../../model/index.ts';
import type { SceneBody, View } from '../../scene/index.ts';
import type { LineDrawing } from '../types.ts';
import { halfPlaneWindow, type Window } from '../kit/clip.ts';
import type { Fit } from '../kit/fit.ts';
import type { Mark } from '../kit/marks.ts';
import { clipDrawing } from './clip.ts';
import { fills } from './fills.ts';
import type { LineDrawer } from './line-drawer.ts';
import { paintsOf, type Paints } from './looks.ts';
import { planeOf, project, type Plane } from './plane.ts';
import { pensFor, strokes } from './strokes.ts';

/** Bodies as they are seen from one side, before they are on paper. */
export interface Elevation {
  readonly plane: Plane;
  readonly paints: Paints;
  readonly drawing: LineDrawing;
}

/** Bodies drawn as they are seen along a view. */
export const elevationOf = (bodies: readonly SceneBody[], view: View, draw: LineDrawer): Elevation =>
  ({ plane: planeOf(view), paints: paintsOf(bodies), drawing: draw(bodies, view) });

/** What of it lies in a window of its plane. */
export const clippedTo = (elevation: Elevation, window: Window): Elevation => withDrawing(elevation, clipDrawing(elevation.drawing, window));

/** What of it lies no farther to the left (`way` −1) or right than a place of its plane, mm. */
export const cropped = (elevation: Elevation, x: number, way: number): Elevation => clippedTo(elevation, halfPlaneWindow({ normal: [way, 0], offset: way * x }));

/** The same with its top moved aside, so far for each mm of height over the floor. */
export const leant = (elevation: Elevation, floor: number, lean: number): Elevation => reshaped(elevation, ([x, y]) => [x + lean * (y - floor), y]);

/** The same with each place of its plane moved to another. */
export function reshaped(elevation: Elevation, moved: (place: Vec2) => Vec2): Elevation {
  const { drawing } = elevation;
  return withDrawing(elevation, {
    ...drawing,
    strokes: drawing.strokes.map((stroke) => ({ ...stroke, points: stroke.points.map(moved) })),
    regions: drawing.regions.map(({ body, rings }) => ({ body, rings: rings.map((ring) => ring.map(moved)) })),
  });
}

const withDrawing = (elevation: Elevation, drawing: LineDrawing): Elevation =>
  ({ ...elevation, drawing });

/** Its marks on paper. */
export const elevationMarks = ({ drawing, paints }: Elevation, fit: Fit): readonly Mark[] =>
  [...fills(drawing, paints, fit), ...strokes(drawing, paints, fit, pensFor(drawing, paints, fit))];

/** Where a place falls on its plane, mm. */
export const onPlane = ({ plane }: Elevation, place: Vec3): Vec2 => project(plane, place);

/** How far it reaches to the left (`way` −1) or right at a height, mm; as far as anywhere where it has nothing there. */
export function reachAt({ drawing: { strokes: all, bounds } }: Elevation, height: number, way: number): number {
  const crossings = all.flatMap(({ points }) => points.slice(1).flatMap(([x, y], index) => {
    const [fromX, fromY] = points[index] ?? [x, y];
    return (fromY <= height) === (y <= height) ? [] : [fromX + ((height - fromY) / (y - fromY)) * (x - fromX)];
  }));
  if (crossings.length === 0) return way > 0 ? bounds.max[0] : bounds.min[0];
  return way > 0 ? Math.max(...crossings) : Math.min(...crossings);
}
