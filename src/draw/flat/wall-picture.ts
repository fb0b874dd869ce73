import type { Vec2 } from '../../model/index.ts';
import type { DrawnPicture } from '../types.ts';
import { linearDimension } from '../kit/dimension.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, figure, line, outline, ringedNumeral, toldWidth, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { ticked } from '../kit/right-wrong.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import { pencil } from './pencil.ts';
import { bareWall, crossAt, type WallHoles } from './bare-wall.ts';
import { clipFromAbove, postFromAbove, pulledFromAbove, reachFromAbove, wallFromAbove } from './bracket-from-above.ts';
import { CAME_OUT, CAME_OUT_MIDDLE, cameOut } from './came-out.ts';
import { FINDER_HIGH, finderMarks } from './finder-picture.ts';
import { LINES_HIGH, linesInWall } from './lines-in-wall.ts';
import { PULLED_HIGH, tiedAndPulled } from './tied-and-pulled.ts';
import { TIED_HIGH, tiedPost } from './tied-post.ts';
import { cordCutMarks, CUT_HIGH } from './cable/cut-picture.ts';
import type { FromBeside } from './fixed-beside.ts';
import { UNFIXED_HIGH, unfixedMarks } from './unfixed-picture.ts';
import { KIND_WIDTH, kindOfWall } from './wall-kind.ts';
import { BOARD, bore, HIGH, jawsOn, plateOn, plugIn, ringOf, SCALE, screw, screwPlaces, wallSection, type Bracket, type Fixing, type WallShown } from './wall-pieces.ts';
import { tell } from '../../scene/index.ts';

const cap = capHeights.step;
/** Thickness of wall shown where it is drilled and where it is not, mm. */
const DEEP = 84;
/** From the left of a small picture to what it shows; the height of a row of them and its middle, mm of paper. */
const INDENT = 4;
const ROW = { high: 54, middle: 29 } as const;

/** What is fixed, to what wall, with what pull it is tried, kg, how long the cord is that ties a post, mm, and where its holes are. */
export interface WallFixed {
  readonly bracket: Bracket;
  readonly wall: WallShown;
  readonly pull: number;
  readonly tie: number;
  readonly holes: WallHoles;
  readonly item: FromBeside;
}

/** What is done before the item comes to the wall, and after that. */
export interface AtWall<Each> {
  readonly before: readonly Each[];
  readonly after: readonly Each[];
}

/**
 * Where wires and pipes run, there no hole comes; how a finder tells of them; and that the item stands unfixed before no wall. Then a bracket fixed to a wall in small pictures one after the other: not a hollow wall but one that is full, the holes measured on the
 * bare wall, drilled, plugged, screwed on, pulled at by a cord that is cut before, and what is done where it comes out; and the item pushed into its brackets. Brackets that are on its posts are pushed to
 * the wall with it before they are screwed on. Then how each post is tied into its bracket, whose jaws are open to the room, and pulled at. A board, which holds nothing, under a cross.
 */
export function wallPictures(fixed: WallFixed, paper: Paper): AtWall<DrawnPicture> {
  const drawn = ({ marks, height }: Row): DrawnPicture => toPicture({ ...paper, height }, marks);
  const { before, after } = wallMarks(fixed, paper);
  return { before: before.map(drawn), after: after.map(drawn) };
}

/** The marks of a picture and the height that they take, mm of paper. */
interface Row {
  readonly marks: readonly Mark[];
  readonly height: number;
}

/** One of the small pictures: its width on paper and its marks, from its left edge and the middle of its row. */
interface Small {
  readonly width: number;
  readonly draw: (at: Vec2) => readonly Mark[];
}

/** The marks of the pictures, for the tests. */
export function wallMarks({ bracket, wall, pull, tie, holes, item }: WallFixed, paper: Paper): AtWall<Row> {
  const { fixing } = wall;
  if (fixing === null) return { before: [{ marks: refused(bracket, [paper.width / 2, paper.height / 2]), height: paper.height }], after: [] };
  const upper = [measuredOut(wall, holes), drilledInto(bracket, wall, fixing), ...(fixing.plug === null ? [] : [plugged(bracket, wall, fixing)])];
  const [screws, pulled, pushed] = [screwedOn(bracket, wall, fixing), pulledOut(bracket, wall, pull, holes), pushedIn(bracket, wall, holes)];
  const lower = holes.areOnPosts ? [pushed, screws, pulled] : [screws, pulled, pushed];
  const [screwAt, pullAt] = [screws, pulled].map((each) => 1 + upper.length + lower.indexOf(each)) as [number, number];
  const [tieAt, count] = [1 + upper.length + lower.length, holes.apart.length + 1];
  const row = (smalls: readonly Small[], number: number): Row => ({ marks: inRow(smalls, number, [KIND_WIDTH - INDENT, ROW.middle]), height: ROW.high });
  const cord: Row = { marks: cordCutMarks({ count, cut: tie }, paper.width), height: CUT_HIGH };
  const out: Row = { marks: cameOut({ bracket, wall, holes, pullAt, drillAt: 2 }, [KIND_WIDTH - INDENT, CAME_OUT_MIDDLE]), height: CAME_OUT };
  const first: readonly Row[] = [
    { marks: linesInWall(wall), height: LINES_HIGH }, { marks: finderMarks(wall), height: FINDER_HIGH }, { marks: unfixedMarks(wall, item), height: UNFIXED_HIGH },
    { marks: [...kindOfWall(wall, [INDENT / 2, ROW.middle]), ...inRow(upper, 1, [KIND_WIDTH, ROW.middle])], height: ROW.high },
  ];
  const last: readonly Row[] = [{ marks: tiedPost(wall, tieAt), height: TIED_HIGH }, { marks: tiedAndPulled({ bracket, wall, pull, count, item, tieAt, screwAt }), height: PULLED_HIGH }];
  const fixedOn = row(lower, 1 + upper.length);
  return holes.areOnPosts ? { before: first, after: [cord, fixedOn, out, ...last] } : { before: [...first, cord, fixedOn, out], after: last };
}

/** Small pictures beside each other, numbered from `first`. */
const inRow = (smalls: readonly Small[], first: number, [left, y]: Vec2): readonly Mark[] => smalls.flatMap(({ draw }, index) => {
  const before = smalls.slice(0, index);
  const x = left + before.reduce((sum, { width }) => sum + width, 0);
  return [ringedNumeral(tell.number(first + index), [x + 4.5, y - (HIGH * SCALE) / 2 - 5], capHeights.order, pens.edge), ...draw([x, y])];
});

/** The bare wall, nothing in front of it: where each hole is. */
const measuredOut = (wall: WallShown, { heights: [upper, lower], apart }: WallHoles): Small => ({ width: 62, draw: ([x, y]) => {
  const bare = bareWall(wall, { heights: [upper, lower], apart }, { left: x + INDENT + 2, wide: 36, y, beyond: 17 });
  const { right, top, floor, columns, rows } = bare;
  const last = columns.at(-1) ?? right;
  return [
    ...bare.marks, ...columns.flatMap((column) => rows.flatMap((row) => crossAt([column, row]))),
    ...apart.flatMap((each, index) => linearDimension({ axis: 'x', told: tell.mm(each), ends: [columns[index] ?? right, columns[index + 1] ?? right], line: top - 3.5, feature: top + 3, cap })),
    ...linearDimension({ axis: 'y', told: tell.mm(lower), ends: [floor, rows[1]], line: right + 7.2, feature: [right, last + 2.5], cap }),
    ...linearDimension({ axis: 'y', told: tell.mm(upper), ends: [floor, rows[0]], line: right + 14.4, feature: [right + 8.4, last + 2.5], cap }),
    ...pencil([last + 0.2, rows[1]]),
  ];
} });

/** The bit in the upper hole, as deep as it goes; the lower one is drilled. */
const drilledInto = (bracket: Bracket, wall: WallShown, fixing: Fixing): Small => ({ width: 44, draw: ([x, y]) => {
  const { hole } = fixing;
  const face: Vec2 = [x + INDENT + 4 + DEEP * SCALE, y];
  const [[, high]] = screwPlaces(bracket, face);
  const half = (hole.diameter * SCALE) / 2;
  const bottom = face[0] - hole.depth * SCALE;
  const rod = ringOf({ x: bottom, y: high - half, width: hole.depth * SCALE + 8, height: 2 * half });
  const chuck = ringOf({ x: face[0] + 5, y: high - 3, width: 7, height: 6 });
  const bit = tell.diameter(hole.diameter);
  const top = y - (HIGH * SCALE) / 2;
  return [
    ...wallSection(wall, face, DEEP), ...screwPlaces(bracket, face).flatMap((place) => bore(fixing, place)),
    area('ink', rod), area('panel', chuck), outline(pens.cut, chuck),
    line(pens.motion, [face[0] + 11, high + 7], [face[0] + 5, high + 7]), arrowhead([face[0] + 2, high + 7], [-1, 0], 4),
    ...linearDimension({ axis: 'x', told: tell.mm(hole.depth), ends: [bottom, face[0]], line: top - 3.5, feature: high, cap }),
    figure(bit, [face[0] + 3 + toldWidth(bit, cap, 400) / 2, top - 3], cap),
  ];
} });

/** Plugs pushed in, flush with the wall. */
const plugged = (bracket: Bracket, wall: WallShown, fixing: Fixing): Small => ({ width: 29, draw: ([x, y]) => {
  const face: Vec2 = [x + 1 + 62 * SCALE, y];
  return [
    ...wallSection(wall, face, 62), ...screwPlaces(bracket, face).flatMap((place) => [...bore({ ...fixing, hole: { ...fixing.hole, depth: 56 } }, place), ...plugIn(place, 50 * SCALE, (fixing.hole.diameter * SCALE) / 2)]),
    ...screwPlaces(bracket, face).flatMap(([px, py]) => [line(pens.motion, [px + 11, py], [px + 4, py]), arrowhead([px + 1, py], [-1, 0], 4)]),
  ];
} });

/** The plate with its screws in, and their size. */
const screwedOn = (bracket: Bracket, wall: WallShown, fixing: Fixing): Small => ({ width: 44, draw: ([x, y]) => {
  const face: Vec2 = [x + INDENT + 4 + DEEP * SCALE, y];
  return [
    ...wallSection(wall, face, DEEP), ...plateOn(bracket, face),
    ...screwPlaces(bracket, face).flatMap((place) => screw(fixing, face[0] + bracket.thickness * SCALE, place)), ...screwDimensions(bracket, fixing, face),
  ];
} });

/** Each pulled straight out with so many kilograms: it holds. */
const pulledOut = (bracket: Bracket, wall: WallShown, pull: number, holes: WallHoles): Small => ({
  width: 57, draw: ([x, y]) => pulledFromAbove(bracket, wall, { pull, count: holes.apart.length + 1, by: 'web', hasPost: holes.areOnPosts }, [x + INDENT + 2, y]),
});

/** Seen from above: the post is pushed into its bracket until it clicks; or the bracket that is on the post is pushed to the wall with it, over its holes. */
const pushedIn = (bracket: Bracket, wall: WallShown, { areOnPosts }: WallHoles): Small => ({ width: 31, draw: ([x, y]) => {
  const before: Vec2 = [x + INDENT + 3, y - (HIGH * SCALE) / 4];
  const after: Vec2 = [before[0], y + (HIGH * SCALE) / 4];
  const [reach, way] = [reachFromAbove(bracket), 8.5];
  const off = areOnPosts ? way : 0;
  return [
    ...[before, after].flatMap((face) => wallFromAbove(wall, face)),
    ...clipFromAbove([before[0] + off, before[1]], reach), ...postFromAbove([before[0] + reach + way, before[1]]),
    ...clipFromAbove(after, reach), ...postFromAbove([after[0] + reach, after[1]]), ...ticked([after[0] + reach + 9, after[1] + 1]),
    line(pens.motion, [before[0] + reach + way + 1, before[1] - 7.4], [before[0] + reach + way - 3, before[1] - 7.4]), arrowhead([before[0] + reach + way - 7, before[1] - 7.4], [-1, 0], 4),
  ];
} });

/** The screw's length and diameter. */
function screwDimensions({ plate, thickness }: Bracket, { screw: { diameter, length } }: Fixing, [x, y]: Vec2): readonly Mark[] {
  const [, [, deep]] = screwPlaces({ plate }, [x, y]);
  const low = y + (HIGH * SCALE) / 2;
  const face = x + thickness * SCALE;
  const sizes = tell.diameter(diameter);
  return [
    ...linearDimension({ axis: 'x', told: tell.mm(length), ends: [face - length * SCALE, face], line: low + 7, feature: deep, cap }),
    figure(sizes, [face + 3 + toldWidth(sizes, cap, 400) / 2, low + 5], cap),
  ];
}

/** The same on a board, crossed out. */
function refused(bracket: Bracket, [x, y]: Vec2): readonly Mark[] {
  const wall: WallShown = { kind: 'board', fixing: null };
  const [wide, high] = [46, 40];
  return [
    ...wallSection(wall, [x, y], BOARD), ...plateOn(bracket, [x, y]), ...jawsOn(bracket, [x, y]),
    ...screwPlaces(bracket, [x, y]).flatMap((place) => screw({ hole: { diameter: 6, depth: BOARD }, screw: { diameter: 6, length: 40 }, plug: null }, x + bracket.thickness * SCALE, place)),
    line({ ...pens.motion, width: 2 }, [x - wide, y - high], [x + wide, y + high]),
    line({ ...pens.motion, width: 2 }, [x - wide, y + high], [x + wide, y - high]),
  ];
}
