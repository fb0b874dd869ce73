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
import { pensFor, strokes } from './strokes.ts';
import { area, line, movedBox, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { roundBox, toPicture, type Paper } from '../kit/svg.ts';
import { cornersOf } from '../kit/geometry.ts';

/** White all over a picture. */
export const paperGround = ({ width, height }: Paper): Mark => area('white', cornersOf({ x: 0, y: 0, width, height }));

/**
 * The finished picture of a scene: tint of the new parts, visible lines, and over them the rings of
 * details, dimension lines, arrows and texts, so set that no two texts overlap. Same input, same bytes.
 * @throws when the scene has nothing to draw or its marks do not fit on the paper.
 */
export function composePicture(scene: Scene, paper: Paper, lineDrawing: LineDrawer): DrawnPicture {
  const { marks, labels, newPartShares } = composed(scene, paper, lineDrawing);
  return { ...toPicture(paper, marks), labels: labels.map(roundBox), newPartShares };
}

/** White between pictures under one another, mm, and the largest room of a small one over another. */
const ROW_GAP = 3;
const SMALL: Paper = { width: 81, height: 46 };

/**
 * A scene's picture with small ones in a row over it, from the left: what is done before it. As `composePicture`.
 */
export function composeUnder(smalls: readonly Scene[], scene: Scene, paper: Paper, lineDrawing: LineDrawer): DrawnPicture {
  if (smalls.length === 0) return composePicture(scene, paper, lineDrawing);
  const small = { width: Math.min(SMALL.width, (paper.width - ROW_GAP * (smalls.length - 1)) / smalls.length), height: SMALL.height };
  const down = small.height + ROW_GAP;
  const [main, ...others] = [scene, ...smalls].map((each, index) => composed(each, index === 0 ? paper : small, lineDrawing));
  const placed = [{ at: [0, down] as const, drawn: main }, ...others.map((drawn, index) => ({ at: [index * (small.width + ROW_GAP), 0] as const, drawn }))];
  const whole = { width: paper.width, height: paper.height + down };
  return {
    ...toPicture(whole, [
      paperGround(whole),
      ...placed.map(({ at, drawn }): Mark => ({ mark: 'placed', at, marks: drawn?.marks ?? [] })),
      line(pens.dimension, [0, small.height + ROW_GAP / 2], [others.length * (small.width + ROW_GAP) - ROW_GAP, small.height + ROW_GAP / 2]),
    ]),
    labels: placed.flatMap(({ at, drawn }) => (drawn?.labels ?? []).map((box) => roundBox(movedBox(box, at)))),
    newPartShares: main?.newPartShares ?? {},
  };
}

/** A scene set on paper, before it is a picture of its own. */
interface Composed {
  readonly marks: readonly Mark[];
  readonly labels: readonly Box[];
  readonly newPartShares: DrawnPicture['newPartShares'];
}

function composed(scene: Scene, paper: Paper, lineDrawing: LineDrawer): Composed {
  const plane = planeOf(scene.view);
  const paints = paintsOf(scene.bodies);
  const drawing = lineDrawing(scene.bodies, scene.view, heldBack(scene.bodies));
  const bounds = contentBounds(drawing, scene.marks, plane);
  if (!Number.isFinite(bounds.least[0])) throw new Error(`scene ${scene.id}: no body or mark to draw; a picture needs at least one`);
  const spots = spotsOf(scene, plane, lineDrawing);
  const content = { plane, bounds, marks: scene.marks, spots, cover: coverOf(drawing, paints) };
  const layout = layOutOrFail(scene, content, paper);
  const { fit, rings, arrows, setting } = layout;
  const marks: readonly Mark[] = [
    paperGround(paper),
    ...fills(drawing, paints, fit),
    ...strokes(drawing, paints, fit, pensFor(drawing, paints, fit)),
    ...arrows.flatMap(drawArrow),
    ...rings.flatMap((one) => drawRings(one, scene.marks, plane, paints)),
    ...setting.places.flatMap((place) => place.draw()),
  ];
  return { marks, labels: setting.places.map((place) => place.box), newPartShares: newPartShares(scene, drawing) };
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
