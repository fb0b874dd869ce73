import type { Scene } from '../../scene/index.ts';
import type { Box, DrawnPicture, LineDrawing } from '../types.ts';
import { drawArrow } from './arrows.ts';
import { coverOf } from './cover.ts';
import { drawRings, spotsOf } from './details.ts';
import { fills } from './fills.ts';
import { contentBounds, layOut, type Content, type Layout } from './layout.ts';
import { heldBack, type LineDrawer } from './line-drawer.ts';
import { paintsOf } from './looks.ts';
import { planeOf } from './plane.ts';
import { penFor, strokes } from './strokes.ts';
import { picture } from './svg.ts';

/** A picture's sides in mm of paper. */
export interface Paper {
  readonly width: number;
  readonly height: number;
}

/**
 * The finished picture of a scene: tint of the new parts, visible lines, and over them the rings of
 * details, dimension lines, arrows and texts, so set that no two texts overlap. Same input, same bytes.
 * @throws when the scene has nothing to draw or its marks do not fit on the paper.
 */
export function composePicture(scene: Scene, paper: Paper, lineDrawing: LineDrawer): DrawnPicture {
  const plane = planeOf(scene.view);
  const paints = paintsOf(scene.bodies);
  const drawing = lineDrawing(scene.bodies, scene.view, heldBack(scene.bodies));
  const bounds = contentBounds(drawing, scene.marks, plane);
  if (!Number.isFinite(bounds.least[0])) throw new Error(`scene ${scene.id}: no body or mark to draw; a picture needs at least one`);
  const spots = spotsOf(scene, plane, lineDrawing);
  const content = { plane, bounds, marks: scene.marks, spots, cover: coverOf(drawing, paints) };
  const layout = layOutOrFail(scene, content, paper);
  const { fit, rings, arrows, setting } = layout;
  const svg = picture(paper.width, paper.height, [
    fills(drawing, paints, fit),
    strokes(drawing, paints, fit, penFor(drawing, paints, fit)),
    ...arrows.map(drawArrow),
    ...rings.map((one) => drawRings(one, scene.marks, plane, paints)),
    ...setting.places.map((place) => place.draw()),
  ]);
  const labels = setting.places.map((place) => rounded(place.box));
  return { svg, ...paper, labels, newPartShares: newPartShares(scene, drawing) };
}

function layOutOrFail(scene: Scene, content: Content, paper: Paper): Layout {
  const layout = layOut(content, { x: 0, y: 0, ...paper });
  if (layout) return layout;
  throw new Error(
    `scene ${scene.id}: its ${scene.marks.length} marks do not fit on ${paper.width} mm × ${paper.height} mm without overlapping; ` +
      'give the picture more paper or the scene fewer marks',
  );
}

function newPartShares(scene: Scene, { visibleShare }: LineDrawing): Record<string, number> {
  const fresh = scene.bodies.filter((body) => body.look === 'new' && body.kind !== 'floor');
  return Object.fromEntries(fresh.map((body) => [body.id, visibleShare[body.id] ?? 0]));
}

function rounded(box: Box): Box {
  const round = (value: number): number => Math.round(value * 100) / 100;
  return { x: round(box.x), y: round(box.y), width: round(box.width), height: round(box.height) };
}
