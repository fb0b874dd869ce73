import type { Vec2 } from '../../model/index.ts';
import type { Mark as SceneMark, SceneBody, View } from '../../scene/index.ts';
import type { Body, DrawnPicture, LineDrawing, Stroke } from '../types.ts';
import { halfPlaneWindow } from '../kit/clip.ts';
import { clipDrawing } from './clip.ts';
import { cornersOf } from './corners.ts';
import { boundsOf, fitInto } from '../kit/fit.ts';
import { unit } from '../kit/geometry.ts';
import { fills } from './fills.ts';
import type { LineDrawer } from './line-drawer.ts';
import { paintsOf, type Paints } from './looks.ts';
import { planeOf, project } from './plane.ts';
import type { Mark } from '../kit/marks.ts';
import { plainPens } from '../kit/pens.ts';
import { toPicture } from '../kit/svg.ts';
import { paperGround } from './compose.ts';
import { strokes } from './strokes.ts';
import { threadsOnPaper } from './threads.ts';

const margin = 1;
/** Free paper between the two break lines, and how far they run past the part. */
const breakGap = 2;
const breakPast = 1.5;

/** What is told of a part beside it: its room, mm of paper, and its marks from the upper left corner of that. */
export interface Told {
  readonly width: number;
  readonly height: number;
  readonly marks: (at: Vec2) => readonly Mark[];
}

/**
 * One part alone at `scale` mm of paper to 1 mm, in a picture just large enough. Where it would be
 * wider than `widest` mm of paper, a piece is left out of its middle between two break lines (ISO 128-20:
 * continuous thin line with zigzags); its cross-section keeps its scale. `closing` are bodies in its openings;
 * what is told of it stands on its right. `threads` are those of its shank.
 */
export function composeAlone(body: Body, view: View, scale: number, lineDrawing: LineDrawer, widest = Infinity, closing: readonly SceneBody[] = [], told: Told | null = null, threads: readonly SceneMark[] = []): DrawnPicture {
  const drawing = shortened(lineDrawing([body, ...closing], view), body, view, scale, widest);
  const { min, max } = boundsOf(drawing.strokes.flatMap((stroke) => stroke.points));
  if (!Number.isFinite(min[0])) throw new Error(`part ${body.id}: it has no visible line to draw`);
  const [width, height] = [(max[0] - min[0]) * scale + 2 * margin, (max[1] - min[1]) * scale + 2 * margin];
  const room = { x: margin, y: margin, width: width - 2 * margin, height: height - 2 * margin };
  const fit = { ...fitInto({ min, max }, room, 1, [0.5, 0.5]), scale };
  const paints: Paints = new Map([[body.id, 'white'], ...paintsOf(closing)]);
  const paper = told === null ? { width, height } : { width: width + told.width, height: Math.max(height, told.height) };
  const down = paper.height - height;
  return toPicture(paper, [
    paperGround(paper), { mark: 'placed', at: [0, down], marks: [...fills(drawing, paints, fit), ...strokes(drawing, paints, fit, plainPens), ...threadsOnPaper(threads, planeOf(view), fit)] },
    ...(told === null ? [] : told.marks([width, (paper.height - told.height) / 2])),
  ]);
}

function shortened(drawing: LineDrawing, body: Body, view: View, scale: number, widest: number): LineDrawing {
  const { min, max } = drawing.bounds;
  const surplus = (max[0] - min[0]) - (widest - 2 * margin) / scale;
  const along = lengthwise(body, view);
  if (surplus <= 0 || Math.abs(along[0]) < 0.3) return drawing;
  return withBreak(drawing, along, surplus / Math.abs(along[0]), scale);
}

/** The way the body's longest own side runs on the view plane. */
function lengthwise(body: Body, view: View): Vec2 {
  const own = cornersOf(body.mesh, [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1]);
  const extents = [0, 1, 2].map((axis) => {
    const values = own.map((corner) => corner[axis] ?? 0);
    return values.reduce((a, b) => Math.max(a, b), -Infinity) - values.reduce((a, b) => Math.min(a, b), Infinity);
  });
  const longest = extents.indexOf(Math.max(...extents));
  const column = body.pose.slice(4 * longest, 4 * longest + 3);
  const way = unit(project(planeOf(view), [column[0] ?? 0, column[1] ?? 0, column[2] ?? 0])) ?? [1, 0];
  return way[0] < 0 ? [-way[0], -way[1]] : way;
}

/** Leaves `surplus` mm and the gap out of the middle and moves the far end up. */
function withBreak(drawing: LineDrawing, along: Vec2, surplus: number, scale: number): LineDrawing {
  const places = drawing.strokes.flatMap((stroke) => stroke.points);
  const lengths = places.map((p) => p[0] * along[0] + p[1] * along[1]);
  const [start, end] = [lengths.reduce((a, b) => Math.min(a, b), Infinity), lengths.reduce((a, b) => Math.max(a, b), -Infinity)];
  const gap = breakGap / scale;
  const left = (start + end - surplus - gap) / 2;
  const right = (start + end + surplus + gap) / 2;
  const near = clipDrawing(drawing, halfPlaneWindow({ normal: along, offset: left }));
  const far = clipDrawing(drawing, halfPlaneWindow({ normal: [-along[0], -along[1]], offset: -right }));
  const moved = (p: Vec2): Vec2 => [p[0] - along[0] * surplus, p[1] - along[1] * surplus];
  const kept = [...near.strokes, ...far.strokes.map((stroke) => ({ ...stroke, points: stroke.points.map(moved) }))];
  const sides = sidesAt(near.strokes, along, left);
  const breaks = sides ? [left, left + gap].map((at) => breakLine(along, at, sides, breakPast / scale)) : [];
  return { ...drawing, strokes: [...kept, ...breaks], regions: [] };
}

/** Least and greatest distance across, of the lines that end at the cut. */
function sidesAt(cut: readonly Stroke[], along: Vec2, at: number): readonly [number, number] | null {
  const ends = cut.flatMap((stroke) => stroke.points).filter((p) => Math.abs(p[0] * along[0] + p[1] * along[1] - at) < 1e-6 * Math.max(1, Math.abs(at)));
  const across = ends.map((p) => -p[0] * along[1] + p[1] * along[0]);
  return across.length > 1 ? [Math.min(...across), Math.max(...across)] : null;
}

/** A straight thin line across with one zigzag in its middle. */
function breakLine(along: Vec2, at: number, [low, high]: readonly [number, number], past: number): Stroke {
  const half = Math.min((high - low) / 2, 1.2 * past);
  const middle = (low + high) / 2;
  const corners: readonly (readonly [number, number])[] = [
    [low - past, 0], [middle - half / 2, 0], [middle - half / 4, half / 3], [middle + half / 4, -half / 3], [middle + half / 2, 0], [high + past, 0],
  ];
  const points = corners.map(([across, ahead]): Vec2 => [
    along[0] * (at + ahead) - along[1] * across,
    along[1] * (at + ahead) + along[0] * across,
  ]);
  return { weight: 'edge', points, closed: false };
}
