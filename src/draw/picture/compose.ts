import { tell, type Scene } from '../../scene/index.ts';
import type { Vec2 } from '../../model/index.ts';
import type { Box, DrawnPicture, LineDrawing } from '../types.ts';
import { drawArrow } from './arrows.ts';
import { coverOf } from './cover.ts';
import { drawRings, spotsOf } from './details.ts';
import { fills } from './fills.ts';
import { handMarks } from './held.ts';
import { threadsOnPaper } from './threads.ts';
import { turnMarks, turnsOnPaper } from './turned-on.ts';
import { inkAcross } from './ink-across.ts';
import { contentBounds, layOut, type Content, type Layout } from './layout.ts';
import { heldBack, type LineDrawer } from './line-drawer.ts';
import { paintsOf } from './looks.ts';
import { planeOf, project } from './plane.ts';
import { pensFor, strokes } from './strokes.ts';
import { walkMarks, walkSign } from './walk-sign.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, labelBoxes, line, movedBox, orderRadius, ringedNumeral, type Mark } from '../kit/marks.ts';
import { onPaper } from '../kit/fit.ts';
import { pens } from '../kit/pens.ts';
import { crossed, ticked } from '../kit/right-wrong.ts';
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
  const { marks, labels, scale, newPartShares } = composed(scene, paper, lineDrawing);
  return { ...toPicture(paper, marks), labels: labels.map(roundBox), scale, newPartShares };
}

/** White over and under a drawing that is trimmed, mm. */
const TRIM = 6;

/** As much of a paper's height as a scene's drawing takes at the paper's width. */
export const trimmed = (scene: Scene, { width, height }: Paper, lineDrawing: LineDrawer): Paper =>
  ({ width, height: Math.min(height, Math.ceil(width / aspectOf(scene, lineDrawing)) + TRIM) });

/** White between a picture and the small ones before it, mm. */
const SMALL_GAP = 3;
/** The largest room of a small one, mm: less on paper for small pages, more on a page's, and most there where nothing else stands over the picture. */
const SMALL = { width: 81, height: 46, onPage: 54 } as const;
const ON_PAGE = { from: 160, height: 56 } as const;
const smallHigh = (width: number): number => (width >= ON_PAGE.from ? SMALL.onPage : SMALL.height);
/** Width of a column of small ones. */
const COLUMN = 52;
/** A drawing that is wider than this for its height, as a share, has the small ones over it on any paper. */
const WIDE = 1.5;

/** Where the small pictures and the main one stand on the whole paper. */
interface Arrangement {
  readonly whole: Paper;
  readonly main: Box;
  readonly smalls: readonly Box[];
  /** The line between them. */
  readonly between: readonly [Vec2, Vec2];
}

/**
 * A scene's picture after small ones: what is done before it. They stand beside it in a column, from above, or over a
 * wide drawing in a row, from the left; over all of it, in rows of their own, scenes that come before these; no higher than `most` together. As `composePicture`.
 */
export function composeAfter(first: readonly Scene[], smalls: readonly Scene[], scene: Scene, paper: PaperUnder, lineDrawing: LineDrawer): DrawnPicture {
  const rows = rowsOf(first, paper.width, lineDrawing);
  const left = leftUnder(rows, smalls.length === 0 ? 0 : smallHigh(paper.width) + SMALL_GAP, paper);
  const sheet = underRows(rows, afterSmalls(smalls, scene, left, first.length === 0, lineDrawing), lineDrawing);
  return pictureFrom(rows.length + smalls.length === 0 ? cutToInk(sheet) : sheet);
}

/** A sheet without the white beside what is drawn: it can be set larger then. */
function cutToInk(sheet: Sheet): Sheet {
  const { from, to } = inkAcross(sheet.marks, sheet.paper);
  if (from === 0) return sheet;
  const paper: Paper = { width: to - from, height: sheet.paper.height };
  return { ...sheet, paper, marks: [paperGround(paper), { mark: 'placed', at: [-from, 0], marks: sheet.marks }], labels: sheet.labels.map((box) => movedBox(box, [-from, 0])) };
}

/** Rows of scenes that come before a picture of its own: each scene of the first with the room that it has over one, the others side by side, the last the highest. As `composePicture`. */
export function composeRows(first: readonly Scene[], others: readonly (readonly Scene[])[], { width }: Paper, lineDrawing: LineDrawer): DrawnPicture {
  const filled = others.filter((row) => row.length > 0);
  const rows = [...rowsOf(first, width, lineDrawing), ...filled.slice(0, -1).map((scenes): SceneRow => ({ scenes, room: { width: SMALL.width, height: smallHigh(width) } }))];
  return pictureFrom(underRows(rows, rowSheet(filled.at(-1) ?? [], { width, height: firstOn(width).height }, lineDrawing), lineDrawing));
}

/** Paper of a scene, and how high it may be with all that stands over it, mm. */
export interface PaperUnder extends Paper {
  readonly most: number;
}

/** A scene with pictures over it has so much height at least, mm of paper. */
const LEAST = 54;

/** What is left of a scene's paper under rows of others. */
function leftUnder(rows: readonly SceneRow[], small: number, { width, height, most }: PaperUnder): Paper {
  const over = rows.reduce((sum, { room }) => sum + room.height + SMALL_GAP, small);
  return { width, height: Math.min(height, Math.max(LEAST, most - over)) };
}

/** Marks on a paper, before they are a picture. */
interface Sheet extends Pick<DrawnPicture, 'labels' | 'newPartShares' | 'enlargedShares'> {
  readonly paper: Paper;
  readonly marks: readonly Mark[];
  readonly scale: number;
}

const pictureFrom = ({ paper, marks, labels, ...rest }: Sheet): DrawnPicture => ({ ...toPicture(paper, marks), labels: labels.map(roundBox), ...rest });

/** Room of a scene in the row over a picture, mm of paper, and of one that stands there alone over a picture as wide as its page. */
const FIRST = { width: 110, height: 52, onPage: 58 } as const;
const firstOn = (width: number): Paper => ({ width: FIRST.width, height: width >= ON_PAGE.from ? FIRST.onPage : FIRST.height });
const ALONE: Paper = { width: 140, height: 66 };

/** A scene that is so much wider than it is high has a row of its own, so high at most. */
const FLAT: { readonly from: number; readonly height: number } = { from: 4, height: 30 };

/** Scenes that stand side by side, each in a room. */
interface SceneRow {
  readonly scenes: readonly Scene[];
  readonly room: Paper;
}

/** Side by side, and under these each by itself that is flat. */
function rowsOf(scenes: readonly Scene[], width: number, lineDrawing: LineDrawer): readonly SceneRow[] {
  const isFlat = (scene: Scene): boolean => aspectOf(scene, lineDrawing) > FLAT.from;
  const rows = [scenes.filter((scene) => !isFlat(scene)), ...scenes.filter(isFlat).map((scene) => [scene])].filter((row) => row.length > 0);
  return rows.map((row) => ({ scenes: row, room: roomFor(row, isFlat, width) }));
}

/** A sheet under rows of scenes that come before it. */
const underRows = (rows: readonly SceneRow[], sheet: Sheet, lineDrawing: LineDrawer): Sheet =>
  rows.toReversed().reduce((under, row) => underOneRow(row, under, lineDrawing), sheet);

function roomFor(row: readonly Scene[], isFlat: (scene: Scene) => boolean, width: number): Paper {
  if (row.every(isFlat)) return { width, height: FLAT.height };
  return row.length === 1 && width >= ON_PAGE.from ? ALONE : firstOn(width);
}

function underOneRow({ scenes, room }: SceneRow, sheet: Sheet, lineDrawing: LineDrawer): Sheet {
  const width = Math.min(room.width, (sheet.paper.width - SMALL_GAP * (scenes.length - 1)) / scenes.length);
  const down = room.height + SMALL_GAP;
  const level = down - SMALL_GAP / 2;
  const row = scenes.map((scene, index) => ({ at: [index * (width + SMALL_GAP), 0] as const, drawn: numbered(scene, { width, height: room.height }, lineDrawing) }));
  return {
    ...sheet,
    paper: { width: sheet.paper.width, height: sheet.paper.height + down },
    marks: [
      ...row.map(({ at, drawn }): Mark => ({ mark: 'placed', at, marks: drawn.marks })),
      { mark: 'placed', at: [0, down], marks: sheet.marks }, line(pens.dimension, [0, level], [sheet.paper.width, level]),
    ],
    labels: [...row.flatMap(({ at, drawn }) => drawn.labels.map((box) => movedBox(box, at))), ...sheet.labels.map((box) => movedBox(box, [0, down]))],
    newPartShares: row.reduce((best, { drawn }) => greater(best, drawn.newPartShares), sheet.newPartShares),
  };
}

function afterSmalls(smalls: readonly Scene[], scene: Scene, paper: Paper, isFirst: boolean, lineDrawing: LineDrawer): Sheet {
  if (smalls.length === 0) return { paper, ...composed(scene, paper, lineDrawing) };
  const isLarge = isFirst && paper.width >= ON_PAGE.from;
  const arranged = isLarge || aspectOf(scene, lineDrawing) > WIDE ? inRow(smalls.length, paper, isLarge ? ON_PAGE.height : smallHigh(paper.width)) : inColumn(smalls.length, paper);
  const main = composed(scene, arranged.main, lineDrawing);
  const placed = [{ at: arranged.main, drawn: main }, ...smalls.flatMap((small, index) => {
    const box = arranged.smalls[index];
    return box === undefined ? [] : [{ at: box, drawn: numbered(small, box, lineDrawing) }];
  })];
  return {
    paper: arranged.whole,
    marks: [
      paperGround(arranged.whole),
      ...placed.map(({ at: { x, y }, drawn }): Mark => ({ mark: 'placed', at: [x, y], marks: drawn.marks })),
      line(pens.dimension, ...arranged.between),
    ],
    labels: placed.flatMap(({ at: { x, y }, drawn }) => drawn.labels.map((box) => movedBox(box, [x, y]))),
    scale: main.scale,
    newPartShares: placed.reduce<DrawnPicture['newPartShares']>((best, { drawn }) => greater(best, drawn.newPartShares), {}),
  };
}

/** What stands beside a scene: another one, or what is drawn flat on a paper. */
export type Aside = Scene | { readonly flat: (paper: Paper) => readonly Mark[] };

/** A scene with what it hides or shows too small enlarged on its right, in a room of its own, and over both scenes that come before that. As `composePicture`. */
export function composeBeside(first: readonly Scene[], scene: Scene, closeUp: Aside, paper: PaperUnder, room: Paper, lineDrawing: LineDrawer): DrawnPicture {
  const rows = rowsOf(first, paper.width, lineDrawing);
  return pictureFrom(underRows(rows, beside(scene, closeUp, leftUnder(rows, 0, paper), room, lineDrawing), lineDrawing));
}

/** What stands beside a scene, alone. */
export const composeAside = (aside: Aside, paper: Paper, lineDrawing: LineDrawer): DrawnPicture => ('flat' in aside ? toPicture(paper, aside.flat(paper)) : composePicture(aside, paper, lineDrawing));

function beside(scene: Scene, closeUp: Aside, paper: Paper, room: Paper, lineDrawing: LineDrawer): Sheet {
  const main = composed(scene, { width: paper.width - room.width - SMALL_GAP, height: paper.height }, lineDrawing);
  const height = Math.min(room.height, paper.height);
  const enlarged = 'flat' in closeUp ? flatly(closeUp.flat({ width: room.width, height })) : composed(closeUp, { width: room.width, height }, lineDrawing);
  const at: Vec2 = [paper.width - room.width, (paper.height - height) / 2];
  return {
    paper,
    marks: [paperGround(paper), { mark: 'placed', at: [0, 0], marks: main.marks }, { mark: 'placed', at, marks: enlarged.marks }],
    labels: [...main.labels, ...enlarged.labels.map((box) => movedBox(box, at))],
    scale: main.scale,
    newPartShares: main.newPartShares,
    enlargedShares: enlarged.newPartShares,
  };
}

/** Flat marks as a scene's are composed; they bring no part. */
const flatly = (marks: readonly Mark[]): Pick<Composed, 'marks' | 'labels' | 'newPartShares'> => ({ marks, labels: labelBoxes(marks), newPartShares: {} });

/** A scene with its number in the upper left corner, where it has one. */
function numbered(scene: Scene, { width, height }: Paper, lineDrawing: LineDrawer): Composed {
  if (scene.number === undefined) return composed(scene, { width, height }, lineDrawing);
  const told = tell.number(scene.number);
  const radius = orderRadius(told, capHeights.order);
  const across = 2 * radius + 1;
  const drawn = composed(scene, { width: width - across, height }, lineDrawing);
  const marks: readonly Mark[] = [{ mark: 'placed', at: [across, 0], marks: drawn.marks }, ringedNumeral(told, [radius + 0.5, radius + 0.5], capHeights.order)];
  return { ...drawn, marks, labels: [...drawn.labels.map((box) => movedBox(box, [across, 0])), { x: 0.5, y: 0.5, width: 2 * radius, height: 2 * radius }] };
}

/** Scenes side by side, each with its number. As `composePicture`. */
export const composeRow = (scenes: readonly Scene[], paper: Paper, lineDrawing: LineDrawer): DrawnPicture => pictureFrom(rowSheet(scenes, paper, lineDrawing));

function rowSheet(scenes: readonly Scene[], paper: Paper, lineDrawing: LineDrawer): Sheet {
  const width = (paper.width - SMALL_GAP * (scenes.length - 1)) / scenes.length;
  const placed = scenes.map((scene, index) => ({ at: [index * (width + SMALL_GAP), 0] as const, drawn: numbered(scene, { width, height: paper.height }, lineDrawing) }));
  return {
    paper,
    marks: [paperGround(paper), ...placed.map(({ at, drawn }): Mark => ({ mark: 'placed', at, marks: drawn.marks }))],
    labels: placed.flatMap(({ at, drawn }) => drawn.labels.map((box) => movedBox(box, at))),
    scale: Math.min(...placed.map(({ drawn }) => drawn.scale)),
    newPartShares: {},
  };
}

/** Room beside each of such scenes for its sign. */
const SIGN = 12;

/** Scenes side by side at one scale, the first ticked, the others crossed. As `composePicture`. */
export function composeRightWrong(right: Scene, wrong: readonly Scene[], paper: Paper, lineDrawing: LineDrawer): DrawnPicture {
  const share = paper.width / (wrong.length + 1);
  const room: Paper = { width: share - SIGN, height: paper.height };
  const largest = [right, ...wrong].map((scene) => ({ scene, drawn: composed(scene, room, lineDrawing) }));
  const scale = Math.min(...largest.map(({ drawn }) => drawn.scale));
  const parts = largest.map(({ scene, drawn }, index) => {
    const [width, height] = [(room.width * scale) / drawn.scale, (room.height * scale) / drawn.scale];
    return { at: [index * share + (room.width - width) / 2, (room.height - height) / 2] as const, drawn: drawn.scale === scale ? drawn : composed(scene, { width, height }, lineDrawing) };
  });
  const sign = (index: number): Vec2 => [(index + 1) * share - SIGN / 2, paper.height - SIGN / 2];
  return {
    ...toPicture(paper, [
      paperGround(paper),
      ...parts.map(({ at, drawn }): Mark => ({ mark: 'placed', at, marks: drawn.marks })),
      ...ticked(sign(0)), ...wrong.flatMap((_, index) => crossed(sign(index + 1))),
    ]),
    labels: parts.flatMap(({ at, drawn }) => drawn.labels.map((box) => roundBox(movedBox(box, at)))),
    newPartShares: {},
  };
}

/** What a step has made, with a tick close before it; no higher than it needs to be. As `composePicture`. */
export function composeDone(scene: Scene, { width, height }: Paper, lineDrawing: LineDrawer): DrawnPicture {
  const most = trimmed(scene, { width: width - SIGN, height }, lineDrawing);
  const room: Paper = { width: Math.min(most.width, Math.ceil(most.height * aspectOf(scene, lineDrawing)) + TRIM), height: most.height };
  const left = (width - SIGN - room.width) / 2;
  const { marks, labels, scale } = composed(scene, room, lineDrawing);
  const at: Vec2 = [left + SIGN, 0];
  const whole: Paper = { width, height: room.height };
  const drawn = toPicture(whole, [paperGround(whole), { mark: 'placed', at, marks }, ...ticked([left + SIGN / 2, room.height / 2])]);
  return { ...drawn, labels: labels.map((box) => roundBox(movedBox(box, at))), scale, newPartShares: {} };
}

/** Of each part the greater share. */
const greater = (one: DrawnPicture['newPartShares'], other: DrawnPicture['newPartShares']): DrawnPicture['newPartShares'] =>
  ({ ...one, ...Object.fromEntries(Object.entries(other).map(([id, share]) => [id, Math.max(share, one[id] ?? 0)])) });

/** Width of a scene's drawing over its height. */
function aspectOf(scene: Scene, lineDrawing: LineDrawer): number {
  const { min, max } = contentBounds([lineDrawing(scene.bodies, scene.view, heldBack(scene.bodies))], scene.marks, planeOf(scene.view));
  return (max[0] - min[0]) / (max[1] - min[1]);
}

function inRow(count: number, paper: Paper, high: number): Arrangement {
  const width = Math.min(SMALL.width, (paper.width - SMALL_GAP * (count - 1)) / count);
  const down = high + SMALL_GAP;
  const level = down - SMALL_GAP / 2;
  return {
    whole: { width: paper.width, height: paper.height + down },
    main: { ...paper, x: 0, y: down },
    smalls: Array.from({ length: count }, (_, index): Box => ({ x: index * (width + SMALL_GAP), y: 0, width, height: high })),
    between: [[0, level], [count * (width + SMALL_GAP) - SMALL_GAP, level]],
  };
}

function inColumn(count: number, paper: Paper): Arrangement {
  const height = Math.min(smallHigh(paper.width), (paper.height - SMALL_GAP * (count - 1)) / count);
  const across = COLUMN + SMALL_GAP / 2;
  return {
    whole: paper,
    main: { x: COLUMN + SMALL_GAP, y: 0, width: paper.width - COLUMN - SMALL_GAP, height: paper.height },
    smalls: Array.from({ length: count }, (_, index): Box => ({ x: 0, y: index * (height + SMALL_GAP), width: COLUMN, height })),
    between: [[across, 0], [across, count * (height + SMALL_GAP) - SMALL_GAP]],
  };
}

/** A scene set on paper, before it is a picture of its own. */
interface Composed {
  readonly marks: readonly Mark[];
  readonly labels: readonly Box[];
  readonly scale: number;
  readonly newPartShares: DrawnPicture['newPartShares'];
}

/** A scene that is seen from another side than the one before has the walk round the work on its left. */
function composed(scene: Scene, paper: Paper, lineDrawing: LineDrawer): Composed {
  const { walk, ...still } = scene;
  if (walk === undefined) return composedStill(scene, paper, lineDrawing);
  const drawn = composedStill(still, { width: paper.width - walkSign.width, height: paper.height }, lineDrawing);
  return {
    ...drawn,
    marks: [paperGround(paper), { mark: 'placed', at: [walkSign.width, 0], marks: drawn.marks }, { mark: 'placed', at: [0, 0], marks: walkMarks(walk) }],
    labels: [...drawn.labels.map((box) => movedBox(box, [walkSign.width, 0])), { x: 0, y: 0, ...walkSign }],
  };
}

function composedStill(scene: Scene, paper: Paper, lineDrawing: LineDrawer): Composed {
  const plane = planeOf(scene.view);
  const paints = paintsOf(scene.bodies);
  const drawing = lineDrawing(scene.bodies, scene.view, heldBack(scene.bodies));
  const bounds = contentBounds([drawing], scene.marks, plane);
  if (!Number.isFinite(bounds.min[0])) throw new Error(`scene ${scene.id}: no body or mark to draw; a picture needs at least one`);
  const spots = spotsOf(scene, plane, lineDrawing);
  const content = { plane, bounds, marks: scene.marks, spots, cover: coverOf(drawing, paints) };
  const layout = layOutOrFail(scene, content, paper);
  const { fit, rings, arrows, hands, setting } = layout;
  const marks: readonly Mark[] = [
    paperGround(paper),
    ...fills(drawing, paints, fit),
    ...strokes(drawing, paints, fit, pensFor(drawing, paints, fit)),
    ...scene.marks.flatMap((mark) => (mark.mark === 'axis' ? [line(pens.centre, ...[mark.from, mark.to].map((at) => onPaper(fit, project(plane, at))))] : [])),
    ...threadsOnPaper(scene.marks, plane, fit),
    ...turnsOnPaper(scene.marks, plane, fit).flatMap(turnMarks),
    ...hands.flatMap(handMarks),
    ...arrows.flatMap(drawArrow),
    ...rings.flatMap((one) => drawRings(one, scene.marks, plane, paints)),
    ...setting.places.flatMap((place) => place.draw()),
  ];
  return { marks, labels: setting.places.map((place) => place.box), scale: fit.scale, newPartShares: newPartShares(scene, drawing) };
}

function layOutOrFail(scene: Scene, content: Content, paper: Paper): Layout {
  const layout = layOut(content, { ...paper, x: 0, y: 0 });
  if (layout) return layout;
  throw new Error(
    `scene ${scene.id}: its ${scene.marks.length} marks do not fit on ${paper.width} mm × ${paper.height} mm without overlapping; ` +
      'give the picture more paper or the scene fewer marks',
  );
}

function newPartShares(scene: Scene, { visibleShare }: LineDrawing): Record<string, number> {
  // What is drawn on a part counts with it.
  const fresh = scene.bodies.filter((body) => body.look === 'new' && body.kind !== 'floor' && (body.kind !== 'tool' || body.partId === null));
  return Object.fromEntries(fresh.map((body) => [body.id, visibleShare(body.id)]));
}
