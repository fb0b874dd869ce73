import type { FlatPattern, Side, Vec2 } from '../../model/index.ts';
import { foldSection, patternWrap } from '../../model/index.ts';
import type { Box, DrawnPicture } from '../types.ts';
import { capHeights } from '../kit/lettering.ts';
import type { Mark } from '../kit/marks.ts';
import { area, arrowhead, circle, line, orderRadius, outline, ringedNumeral } from '../kit/marks.ts';
import { flapOn } from './panel-lines.ts';
import { pens } from '../kit/pens.ts';
import { stepPaper } from './step-paper.ts';
import type { Paper } from '../kit/svg.ts';
import { toPicture } from '../kit/svg.ts';
import type { Bounds, Fit } from '../kit/fit.ts';
import { allOnPaper, fittingScale, onPaper } from '../kit/fit.ts';
import { tell } from '../../scene/index.ts';

/** The tube the flap goes round and the pin that holds the tab; diameters and lengths in mm. */
export interface Hardware {
  readonly tube: { readonly outside: number; readonly inside: number };
  readonly pin: { readonly diameter: number; readonly length: number; readonly headDiameter: number; readonly headHeight: number };
}

/**
 * One picture of the row: the flap's closed section, its free end on the way from the picture before, and the
 * pin's place once the tab is pinned. Coordinates a (outwards from the tube's axis line), b (over the inner face).
 */
export interface FoldFrame {
  readonly outline: readonly Vec2[];
  readonly way: readonly Vec2[];
  readonly pin: Vec2 | null;
}

const margin = 1.5;
const between = 4;
/** Panel shown inside the folded tab's edge, mm. */
const insideShown = 22;
const waySteps = 10;
/** Tab turned back, pressed down, pinned: they need less room than the swinging flap, so they are drawn larger. */
const closingFrames = 3;
/** Share of the paper's height for the swinging flap. */
const swingShare = 0.62;
/** Clear height over the panel for the pin and its arrow, in panel thicknesses. */
const pinRoom = 4;

/** Whether the row ends with the tab on the panel, or pinned as well. */
export type SeriesEnd = 'folded' | 'pinned';

/**
 * Sections through one flap and its tube in the order of work: flat, crease by crease, the tab turned back,
 * pressed down, pinned; numbered from 1. The last three are drawn larger; the outside is on the right for the right and back
 * sides, on the left for the others. Throws a RangeError when the paper is too small.
 */
export function sectionSeries(pattern: FlatPattern, side: Side, hardware: Hardware, paper: Paper = stepPaper, until: SeriesEnd = 'pinned'): DrawnPicture {
  return toPicture(paper, seriesMarks(pattern, side, hardware, paper, until));
}

/** The marks of the picture, for the tests. */
export function seriesMarks(pattern: FlatPattern, side: Side, hardware: Hardware, paper: Paper, until: SeriesEnd = 'pinned'): readonly Mark[] {
  const mirrored = side === 'left' || side === 'front';
  const all = foldFrames(pattern, side).map((frame) => (mirrored ? mirror(frame) : frame));
  const swings = all.length - closingFrames;
  const frames = until === 'folded' ? all.slice(0, -1) : all;
  const inner = { x: margin, width: paper.width - 2 * margin };
  const split = paper.height * swingShare;
  const around: Around = { axis: [0, pattern.wrapRadius], thickness: pattern.thickness };
  return [
    ...groupMarks(around, hardware, frames.slice(0, swings), 1, { ...inner, y: margin, height: split - margin }),
    ...groupMarks(around, hardware, frames.slice(swings), swings + 1, { ...inner, y: split, height: paper.height - split - margin }),
  ];
}

/** Where the middle of the tube is in a section, and how thick the panel is, mm. */
export interface Around {
  readonly axis: Vec2;
  readonly thickness: number;
}

/** Sections of one scale in rows and columns, numbered from `first`. */
export function groupMarks(around: Around, hardware: Hardware, frames: readonly FoldFrame[], first: number, box: Box): readonly Mark[] {
  const extent = extentOf(frames, hardware, around);
  return cells(extent, frames.length, box).flatMap((cell, index): readonly Mark[] => {
    const frame = frames[index];
    if (!frame) return [];
    const view = middleView(extent, cell.drawing);
    return [
      { mark: 'view', name: `section-${first + index}`, scale: view.scale, marks: frameMarks(frame, view, hardware, around) },
      ringedNumeral(tell.number(first + index), cell.numeral, capHeights.order, pens.edge),
    ];
  });
}

/** Flat, every move of the fold, and the pinned flap. */
export function foldFrames(pattern: FlatPattern, side: Side): readonly FoldFrame[] {
  const flap = flapOn(pattern, side);
  const wrap = patternWrap(pattern, flap);
  const folded = wrap.path.hingeInside + wrap.tab;
  const start = -folded - insideShown;
  const moves = wrap.creases + 1;
  const sectionAt = (stage: number) => foldSection(wrap, stage, start);
  const tip = (stage: number): Vec2 => {
    const { hinge, heading } = sectionAt(stage).tab;
    return [hinge[0] + wrap.tab * Math.cos(heading), hinge[1] + wrap.tab * Math.sin(heading)];
  };
  const way = (move: number): readonly Vec2[] => (move === 0 ? [] : Array.from({ length: waySteps + 1 }, (_, step) => tip((move - 1 + step / waySteps) / moves)));
  const frames = Array.from({ length: moves + 1 }, (_, move): FoldFrame => ({ outline: sectionAt(move / moves).outline, way: way(move), pin: null }));
  const pinned: FoldFrame = { outline: sectionAt(1).outline, way: [], pin: [-folded + (flap.edge - flap.pinLine), pattern.thickness] };
  return [...frames, pinned];
}

function mirror({ outline: points, way, pin }: FoldFrame): FoldFrame {
  const flip = ([a, b]: Vec2): Vec2 => [-a, b];
  return { outline: points.map(flip), way: way.map(flip), pin: pin ? flip(pin) : null };
}

function extentOf(frames: readonly FoldFrame[], { tube }: Hardware, { axis, thickness }: Around): Bounds {
  const over = frames.flatMap(({ pin }) => (pin ? [[pin[0], pin[1] + pinRoom * thickness] as const] : []));
  const points = [...frames.flatMap((frame) => [...frame.outline, ...frame.way]), ...tubeReach(axis, tube.outside / 2), ...over];
  const [as, bs] = [points.map(([a]) => a), points.map(([, b]) => b)];
  return { min: [Math.min(...as), Math.min(...bs)], max: [Math.max(...as), Math.max(...bs)] };
}

/** Over the usual tube its top; all round one that does not stand over the root line. */
const tubeReach = ([a, b]: Vec2, radius: number): readonly Vec2[] =>
  (a === 0 ? [[0, b + radius]] : [[a - radius, b - radius], [a + radius, b + radius]]);

/** As large as the cell allows: nothing is measured here, so the scale may be any. */
function middleView({ min, max }: Bounds, { x, y, width, height }: Box): Fit {
  const scale = Math.min(width / (max[0] - min[0]), height / (max[1] - min[1]));
  return { scale, origin: [x + width / 2 - ((min[0] + max[0]) / 2) * scale, y + height / 2 + ((min[1] + max[1]) / 2) * scale] };
}

interface Cell {
  readonly drawing: Box;
  readonly numeral: Vec2;
}

/** Rows and columns at which the sections come out largest; fewer columns win a tie. */
function cells({ min, max }: Bounds, count: number, box: Box): readonly Cell[] {
  const size: Vec2 = [max[0] - min[0], max[1] - min[1]];
  const layouts = Array.from({ length: count }, (_, index) => layout(index + 1, count, box)).filter(({ room }) => room[0] > 0 && room[1] > 0);
  const scales = layouts.map(({ room }) => Math.min(room[0] / size[0], room[1] / size[1]));
  const best = layouts[scales.indexOf(Math.max(...scales))] ?? layout(count, count, box);
  fittingScale(size, best.room);
  return Array.from({ length: count }, (_, index) => cellAt(best, box, index));
}

interface Layout {
  readonly columns: number;
  readonly pitch: Vec2;
  readonly room: Vec2;
}

function layout(columns: number, count: number, box: Box): Layout {
  const rows = Math.ceil(count / columns);
  const pitch: Vec2 = [box.width / columns, box.height / rows];
  return { columns, pitch, room: [pitch[0] - numeralWidth() - between, pitch[1] - between] };
}

const numeralWidth = (): number => 2 * orderRadius(tell.number(1), capHeights.order) + 1;

function cellAt({ columns, pitch, room }: Layout, box: Box, index: number): Cell {
  const x = box.x + (index % columns) * pitch[0];
  const y = box.y + Math.floor(index / columns) * pitch[1];
  const radius = orderRadius(tell.number(1), capHeights.order);
  return {
    drawing: { x: x + numeralWidth(), y: y + between / 2, width: room[0], height: room[1] },
    numeral: [x + radius + 0.5, y + between / 2 + radius],
  };
}

function frameMarks(frame: FoldFrame, view: Fit, { tube, pin }: Hardware, around: Around): readonly Mark[] {
  const section = allOnPaper(view, frame.outline);
  const axis = onPaper(view, around.axis);
  return [
    area('core', section),
    outline(pens.cut, section),
    circle(axis, (tube.outside / 2) * view.scale, null, 'ink'),
    circle(axis, (tube.inside / 2) * view.scale, null, 'white'),
    ...wayMarks(allOnPaper(view, frame.way)),
    ...(frame.pin ? pinMarks(frame.pin, view, pin, around.thickness) : []),
  ];
}

/** White between the head of a way and the end that has gone it, mm of paper. */
const SHORT_OF = 5;

/** The free end's way as an arrow that stops short of the end, so that the head stands clear of the panel. */
function wayMarks(way: readonly Vec2[]): readonly Mark[] {
  const end = way.at(-1);
  if (end === undefined) return [];
  const clear = way.filter(([x, y], index) => index < way.length - 1 && Math.hypot(x - end[0], y - end[1]) > SHORT_OF);
  const [before, tip] = clear.slice(-2);
  if (tip === undefined || before === undefined) return [];
  return [line(pens.edge, ...clear), arrowhead(tip, [tip[0] - before[0], tip[1] - before[1]], 3)];
}

/** The pin through tab and panel, head on the tab, and an arrow down on it. */
function pinMarks([a, top]: Vec2, view: Fit, { diameter, length, headDiameter, headHeight }: Hardware['pin'], thickness: number): readonly Mark[] {
  const shank = Math.min(length, 2 * thickness);
  const box = (half: number, from: number, to: number) => allOnPaper(view, [[a - half, from], [a + half, from], [a + half, to], [a - half, to]]);
  const [x, y] = onPaper(view, [a, top + headHeight]);
  return [
    area('ink', box(diameter / 2, top - shank, top), box(headDiameter / 2, top, top + headHeight)),
    line(pens.motion, [x, y - 9], [x, y - 3.5]),
    arrowhead([x, y - 1], [0, 1], 3.5),
  ];
}
