import { flatHoles, type FlatPattern, type Vec2 } from '../../model/index.ts';
import type { Box, DrawnPicture } from '../types.ts';
import { linearDimension } from '../kit/dimension.ts';
import { capHeights } from '../kit/lettering.ts';
import { cornersOf } from '../kit/geometry.ts';
import { hatching } from '../kit/hatching.ts';
import { area, arrowhead, circle, figure, line, outline, toldWidth, type Mark } from '../kit/marks.ts';
import { earlier, pens } from '../kit/pens.ts';
import { ticked } from '../kit/right-wrong.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import { tell } from '../../scene/index.ts';
import { cornerMark, holeKinds, holeMark, type HoleKind, type Skinned } from './hole-marks.ts';
import { markedFace } from './marked-face.ts';
import { notchHole } from './panel-lines.ts';
import { plate, tapeRound, woodMarks } from './punched-section.ts';
import { punchTool } from './punch-tool.ts';
import { ringMarks } from './ring.ts';

/** Paper of the picture, mm. */
export const punchHeight = 62;
const cap = capHeights.step;
const headRow = 11;
/** Room over the panel for the punch, and under it for its way out. */
const above = 15;
const below = 9;
/** Half of the section's width, and of the punch's, mm of paper. */
const half = 17;
const rod = 1.9;

/**
 * How each kind of hole of a panel is punched, beside its sign on the panel's drawing: the section at a large scale,
 * how deep, what stops the punch there; of the round corners of the notches where they are, from the blank's edges.
 */
export function punchPicture(pattern: FlatPattern, width: number): DrawnPicture {
  const paper: Paper = { width, height: punchHeight };
  return toPicture(paper, punchMarks(pattern, paper));
}

/** The same of a panel without such corners, from the face that is up: the marked one, or the other. */
export const holesPunched = (panel: Punched, width: number): DrawnPicture => toPicture({ width, height: punchHeight }, holeSections(panel, width, 'up'));

/** Its marks; the sign stands up from the marked face, or down where that is the far one. */
export const holeSections = (panel: Punched, width: number, sign: 'up' | 'down'): readonly Mark[] =>
  kindMarks(panel, { width, height: punchHeight }, Math.max(FEWEST, holeKinds(panel.holes).length), sign);

/** A panel and its holes, mm. */
interface Punched extends Skinned {
  readonly holes: readonly HoleKind[];
}

/** A single kind takes no more room than one of so many. */
const FEWEST = 3;

/** The marks of the picture, for the tests. */
export function punchMarks(pattern: FlatPattern, paper: Paper): readonly Mark[] {
  const holes = flatHoles(pattern);
  const columns = holeKinds(holes).length + 2;
  const wide = Math.max(FEWEST, columns);
  return [
    ...kindMarks({ ...pattern, holes }, paper, wide), ...cornerHole(pattern, cell(paper, wide, columns - 2), cell(paper, wide, columns - 1)),
    // Where no other hole tells it, that the corners too are punched right through, on a board.
    ...(columns < wide && !holes.some(({ depth }) => depth === null) ? punched({ depth: null, diameter: 2 * pattern.notchRadius }, pattern, cell(paper, wide, columns), 'up') : []),
  ];
}

const cell = ({ width, height: high }: Paper, columns: number, index: number): Box => ({ x: (index * width) / columns, y: 1, width: width / columns, height: high - 2 });

const kindMarks = (panel: Punched, paper: Paper, columns: number, sign: 'up' | 'down' = 'up'): readonly Mark[] => holeKinds(panel.holes).flatMap((kind, index) => {
  const box = cell(paper, columns, index);
  return [...heading(holeMark(kind, signPlace(box), 1.4, pens.motion), kind, kind.count, box), ...punched(kind, panel, box, sign)];
});

const signPlace = ({ x, y }: Box): Vec2 => [x + 6, y + headRow / 2];

/** The sign of a kind of hole, its diameter and how many there are, in a row. */
function heading(sign: readonly Mark[], { diameter }: Pick<HoleKind, 'diameter'>, count: number, box: Box): readonly Mark[] {
  const [size, times] = [tell.diameter(diameter), tell.times(count)];
  const [x, y] = signPlace(box);
  const [first, second] = [toldWidth(size, cap, 400), toldWidth(times, capHeights.count, 700)];
  return [...sign, figure(size, [x + 5 + first / 2, y], cap), figure(times, [x + 8 + first + second / 2, y], capHeights.count, 700)];
}

/** The panel cut through a hole with the punch in it, from the face that it is made from: that is up, and the sign tells whether it is the one with the marks. */
function punched({ depth, diameter }: Pick<HoleKind, 'depth' | 'diameter'>, { thickness, skin }: Skinned, box: Box, sign: 'up' | 'down'): readonly Mark[] {
  const scale = (box.height - headRow - above - below) / thickness;
  const middle = box.x + box.width / 2;
  const top = box.y + headRow + above;
  const bottom = top + thickness * scale;
  const tip = depth === null ? bottom + 2.5 : top + depth * scale;
  const up = top - above + 4;
  const wide = Math.max(rod, Math.min((diameter * scale) / 2, half / 2));
  return [
    ...(depth === null ? woodMarks({ x: middle - half - 2, y: bottom, width: 2 * half + 4, height: below - 2 }) : []),
    ...plate({ x: middle - half, y: top, width: 2 * half, height: bottom - top }, skin * scale),
    ...punchTool([middle, tip], wide, top),
    line(pens.motion, [middle - wide - 6, up], [middle - wide - 6, top - 6]),
    arrowhead([middle - wide - 6, top - 3.8], [0, 1], 3.5),
    ...markedFace([middle + half - 5.5, sign === 'up' ? top : bottom], sign),
    ...(depth === null ? [] : [...tapeRound(middle, wide, top), ...depths(depth, thickness, { middle, top, bottom, tip })]),
  ];
}

/** How deep the punch goes, and how thick the panel is. */
const depths = (depth: number, thickness: number, { middle, top, bottom, tip }: { readonly middle: number; readonly top: number; readonly bottom: number; readonly tip: number }): readonly Mark[] => [
  line(pens.dimension, [middle - half - 5, tip], [middle - rod, tip]),
  ...linearDimension({ axis: 'y', told: tell.mm(depth), ends: [tip, top], line: middle - half - 4, feature: middle - half, cap, upright: true }),
  ...linearDimension({ axis: 'y', told: tell.mm(thickness), ends: [bottom, top], line: middle + half + 3 + toldWidth(tell.mm(thickness), cap, 400), feature: middle + half, cap, upright: true }),
];

/** The round corner of a notch, from the nearest edges of the blank; enlarged beside that, how the cuts come to touch it: it lies in what falls off. */
function cornerHole(pattern: FlatPattern, box: Box, beside: Box): readonly Mark[] {
  const [x, y] = notchHole(pattern, [-1, -1]);
  const radius = pattern.notchRadius;
  const [across, up] = [x + pattern.blank[0] / 2, y + pattern.blank[1] / 2];
  const left = box.x + 15;
  const bottom = box.y + box.height - 11;
  const scale = Math.min((box.width - 22) / across, (box.height - headRow - 16) / up);
  const at: Vec2 = [left + across * scale, bottom - up * scale];
  const [right, top] = [at[0] + 5, at[1] - 5];
  const waste = cornersOf({ x: left, y: at[1] - radius * scale, width: (across + radius) * scale, height: (up + radius) * scale });
  const ring = { radius: Math.min(RING.radius, beside.width / 2 - 3), at: [beside.x + beside.width / 2, beside.y + headRow + RING.radius + 4] as Vec2 };
  return [
    ...heading([cornerMark(signPlace(box))], { diameter: 2 * radius }, 4, box),
    area('panel', [[left, bottom], [right, bottom], [right, top], [left, top]]), ...hatched(waste), outline(earlier(pens.cut), waste),
    line(pens.cut, [left, top], [left, bottom], [right, bottom]),
    circle(at, 2, pens.edge, 'white'), cornerMark(at),
    ...linearDimension({ axis: 'x', told: tell.mm(across), ends: [left, at[0]], line: bottom + 7, feature: bottom, cap }),
    ...linearDimension({ axis: 'y', told: tell.mm(up), ends: [bottom, at[1]], line: left - 3, feature: left, cap }),
    ...ringMarks({ name: 'notch-corner', at: [0, 0], centre: ring.at, radius: ring.radius, scale: ring.radius / (RING.shown * radius) }, { scale, origin: at }, ({ scale: by, origin: [cx, cy] }) => touched([cx, cy], radius * by, ring.radius)),
    ...ticked([ring.at[0] + ring.radius - 1, ring.at[1] + ring.radius + 1], 1.2),
  ];
}

/** The ring round the enlarged corner, mm of paper, and how many radii of the hole it shows from the middle. */
const RING = { radius: 17, shown: 2.4 } as const;

/** The hole in what falls off, its sides on the lines of the two cuts, which end there; a far edge of the ring is so far. */
function touched([x, y]: Vec2, radius: number, far: number): readonly Mark[] {
  const quarter = Array.from({ length: 9 }, (_, step): Vec2 => [x + radius * Math.cos((Math.PI * step) / 16), y - radius * Math.sin((Math.PI * step) / 16)]);
  const [from, to] = [[x + radius, y + far] as Vec2, [x - far, y - radius] as Vec2];
  const waste: readonly Vec2[] = [from, ...quarter, to, [x - far, y + far]];
  return [
    area('panel', cornersOf({ x: x - far, y: y - far, width: 2 * far, height: 2 * far })), ...hatched(waste), circle([x, y], radius, pens.edge, 'white'),
    line({ ...pens.cut, width: 0.8 }, from, ...quarter, to),
  ];
}

/** What falls off. */
const hatched = (ring: readonly Vec2[]): readonly Mark[] => [area('white', ring), ...hatching(ring, PITCH).map(([from, to]) => line(earlier(pens.edge), from, to))];
const PITCH = 2.2;
