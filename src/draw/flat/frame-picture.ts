import type { Pattern, Side, Vec2 } from '../../model/index.ts';
import type { Box, DrawnPicture } from '../types.ts';
import { linearDimension } from '../kit/dimension.ts';
import { cornersOf } from '../kit/geometry.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, circle, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import { tell } from '../../scene/index.ts';
import type { Hardware } from './section-series.ts';

const height = 66;
const cap = capHeights.step;
/** Room for the dimension over the drawings, mm of paper. */
const over = 12;
/** Panel shown on the inner side of the inside line and beyond the tube, mm. */
const inwards = 14;
const outwards = 12;
const between = 12;

/** Where the tubes of a frame lie on a panel that is folded round some of them: beside the lines marked first and how far from them, in a section and from above. */
export function framePicture(pattern: Pattern, tube: Hardware['tube'], width: number): DrawnPicture {
  const paper: Paper = { width, height };
  return toPicture(paper, frameMarks(pattern, tube, paper));
}

/** The marks of the picture, for the tests. Throws a RangeError where no side of the panel is folded. */
export function frameMarks(pattern: Pattern, tube: Hardware['tube'], paper: Paper): readonly Mark[] {
  const [first] = pattern.flaps;
  if (first === undefined) throw new RangeError('found a panel without flaps; would be right: one that is folded round a bar');
  const away = -first.line;
  const reach = inwards + away + tube.outside / 2 + outwards;
  const seams = SIDES.filter((side) => isShared(pattern, side)).flatMap((side) => gapOf(pattern, side) ?? []).slice(0, 1);
  const columns = 2 + seams.length;
  const wide = (paper.width - between * (columns - 1)) / columns;
  const scale = Math.min((wide - 4) / reach, (paper.height - over - 2) / (tube.outside + pattern.thickness));
  const shown: Shown = { pattern, tube, away, scale };
  return [
    ...section(shown, { x: (wide - reach * scale) / 2, y: 1, width: reach * scale, height: paper.height - 2 }),
    ...seams.flatMap((gap) => seamSection(shown, gap, { x: wide + between, y: 1, width: wide, height: paper.height - 2 })),
    ...fromAbove(shown, { x: (wide + between) * (columns - 1), y: 1, width: wide, height: paper.height - 2 }),
  ];
}

interface Shown {
  readonly pattern: Pattern;
  readonly tube: Hardware['tube'];
  /** From the line marked first to the tube's axis, mm. */
  readonly away: number;
  readonly scale: number;
}

/** The left side cut across, as the view from above shows it: beyond the tube the flap, on this side of it the inside line. */
function section(shown: Shown, box: Box): readonly Mark[] {
  const { pattern, tube, away, scale } = shown;
  const [at, radius, high] = [box.x + box.width - inwards * scale, (tube.outside / 2) * scale, pattern.thickness * scale];
  const face = box.y + over + 2 * radius;
  const centre: Vec2 = [at - away * scale, face - radius];
  const gap = away - tube.outside / 2;
  return [
    ...panelCut(shown, { x: box.x, y: face, width: box.width, height: high }), ...tubeCut(shown, centre),
    line(pens.newInside, [at, face - radius], [at, face]),
    ...linearDimension({ axis: 'x', told: tell.mm(gap), ends: [at, at - gap * scale], line: box.y + over - 4, feature: [face - radius, centre[1]], cap }),
  ];
}

/** A panel cut across, with its two skins; and a tube. */
function panelCut({ pattern, scale }: Shown, box: Box): readonly Mark[] {
  const [right, skin] = [box.x + box.width, pattern.skin * scale];
  return [area('panel', cornersOf(box)), outline(pens.cut, cornersOf(box)), ...[box.y + skin, box.y + box.height - skin].map((y) => line(pens.edge, [box.x, y], [right, y]))];
}

const tubeCut = ({ tube, scale }: Shown, centre: Vec2): readonly Mark[] =>
  [circle(centre, (tube.outside / 2) * scale, pens.cut, 'ink'), circle(centre, (tube.inside / 2) * scale, pens.cut, 'white')];

/** Between tubes and lines, so that it is seen, and between two panels that share a tube, less than that is wide, mm of paper. */
const apart = 1.9;
const panelsApart = 1.2;
/** Panel shown beyond the tubes from above, mm of paper. */
const beyond = 6;

/** The middle of the panel in the ring of the tubes, with the lines beside those that it is folded round, their distance drawn larger than to scale. Under a tube that it shares another panel begins. */
function fromAbove({ pattern, tube, away }: Shown, box: Box): readonly Mark[] {
  const room = insetBox({ ...box, y: box.y + over, height: box.height - over }, 1);
  const [long, short] = [lineOut(pattern, 'left'), lineOut(pattern, 'back')];
  const scale = Math.min((room.width / 2 - apart - beyond) / (long + tube.outside), (room.height / 2 - apart - beyond) / (short + tube.outside));
  const [x, y] = [room.x + room.width / 2, room.y + room.height / 2];
  const gap = apart;
  const thick = tube.outside * scale;
  const ring = (by: number): readonly Vec2[] => cornersOf({ x: x - long * scale - by, y: y - short * scale - by, width: 2 * (long * scale + by), height: 2 * (short * scale + by) });
  const out = gap + thick + beyond;
  const shared = SIDES.filter((side) => isShared(pattern, side));
  const [left, right, top, bottom] = [x - long * scale, x + long * scale, y - short * scale, y + short * scale];
  const lines: Readonly<Record<Side, readonly [Vec2, Vec2]>> = {
    left: [[left, bottom], [left, top]], right: [[right, bottom], [right, top]], front: [[left, bottom], [right, bottom]], back: [[left, top], [right, top]],
  };
  const folded = SIDES.filter((side) => pattern.flaps.some((flap) => flap.side === side));
  const measured = folded.includes('left') || !folded.includes('right') ? { line: left, way: -1 } : { line: right, way: 1 };
  return [
    area('panel', ring(out)), outline(pens.ring, ring(out)),
    area('fresh', ring(gap + thick)), outline(pens.cut, ring(gap + thick)),
    area('panel', ring(gap)), outline(pens.cut, ring(gap)),
    ...shared.flatMap((side) => betweenPanels(side, [x, y], { axis: [long * scale + gap + thick / 2, short * scale + gap + thick / 2], from: [long * scale + gap + thick, short * scale + gap + thick], to: [long * scale + out, short * scale + out] })),
    ...folded.map((side) => line(pens.newInside, ...lines[side])),
    ...linearDimension({ axis: 'x', told: tell.mm(away - tube.outside / 2), ends: [measured.line, measured.line + measured.way * gap], line: box.y + over - 4, feature: top - gap, cap }),
  ];
}

const SIDES: readonly Side[] = ['left', 'right', 'front', 'back'];
const ACROSS: Readonly<Record<Side, Side>> = { left: 'right', right: 'left', front: 'back', back: 'front' };

/** From the middle of a panel to the line marked on a side, or where it would be on one that is not folded; bars of opposite sides lie alike. */
function lineOut({ flaps, max }: Pattern, side: Side): number {
  const flap = flaps.find((each) => each.side === side) ?? flaps.find((each) => each.side === ACROSS[side]);
  return flap === undefined ? max[side === 'left' || side === 'right' ? 0 : 1] : flap.root + flap.line;
}

/** Whether a panel ends under the middle of a bar of that side, where another one begins. */
function isShared({ flaps, min, max }: Pattern, side: Side): boolean {
  const across = flaps.find((each) => each.side === ACROSS[side]);
  if (across === undefined || flaps.some((each) => each.side === side)) return false;
  return { left: -min[0], right: max[0], front: -min[1], back: max[1] }[side] < across.root;
}

/** How far apart the two panels are that share a tube of a side, mm; null where no flap across it tells. */
function gapOf(pattern: Pattern, side: Side): number | null {
  const across = pattern.flaps.find((each) => each.side === ACROSS[side]);
  return across === undefined ? null : 2 * (across.root - { left: -pattern.min[0], right: pattern.max[0], front: -pattern.min[1], back: pattern.max[1] }[side]);
}

/** The gap in a section is drawn so wide at least, mm of paper. */
const GAP_SHOWN = 4;

/** Two panels cut across under the tube that they share: how far their edges are apart, under its middle. */
function seamSection(shown: Shown, gap: number, box: Box): readonly Mark[] {
  const { pattern, tube, scale } = shown;
  const [x, radius, high] = [box.x + box.width / 2, (tube.outside / 2) * scale, pattern.thickness * scale];
  const face = box.y + over + 2 * radius;
  const half = Math.max(GAP_SHOWN, gap * scale) / 2;
  const low = face + high;
  return [
    ...[box.x, x + half].flatMap((left) => panelCut(shown, { x: left, y: face, width: box.width / 2 - half, height: high })),
    ...tubeCut(shown, [x, face - radius]),
    ...linearDimension({ axis: 'x', told: tell.mm(gap), ends: [x - half, x + half], line: low + 8, feature: low, cap }),
  ];
}

/** Half sides, mm of paper: to the axes of the tubes, to their far edges, to the edge of what is shown. */
interface Halves {
  readonly axis: Vec2;
  readonly from: Vec2;
  readonly to: Vec2;
}

/** The gap between two panels: open beyond the ends of the tube that lies on it, dashed under that. */
function betweenPanels(side: Side, [x, y]: Vec2, { axis, from, to }: Halves): readonly Mark[] {
  const isUpright = side === 'left' || side === 'right';
  const way = side === 'right' || side === 'front' ? 1 : -1;
  const at = (by: number, along: number): Vec2 => (isUpright ? [x + way * axis[0] + by, y + along] : [x + along, y + way * axis[1] + by]);
  const half = panelsApart / 2;
  const [near, far] = isUpright ? [from[1], to[1]] : [from[0], to[0]];
  return [
    ...([-1, 1] as const).flatMap((end) => [area('white', [at(-half, end * near), at(half, end * near), at(half, end * (far + 0.3)), at(-half, end * (far + 0.3))]), ...[-half, half].map((by) => line(pens.cut, at(by, end * near), at(by, end * far)))]),
    ...[-half, half].map((by) => line(pens.hidden, at(by, -near), at(by, near))),
  ];
}

const insetBox = ({ x, y, width, height }: Box, by: number): Box => ({ x: x + by, y: y + by, width: width - 2 * by, height: height - 2 * by });
