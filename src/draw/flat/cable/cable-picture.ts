import type { Vec2 } from '../../../model/index.ts';
import { tell } from '../../../scene/index.ts';
import { linearDimension } from '../../kit/dimension.ts';
import { capHeights } from '../../kit/lettering.ts';
import { area, arrowhead, circle, figure, line, outline, ringedNumeral, type Mark } from '../../kit/marks.ts';
import { pens } from '../../kit/pens.ts';
import { toPicture, type Paper } from '../../kit/svg.ts';
import type { DrawnPicture } from '../../types.ts';
import { cord, doubled, knot, round, smooth } from './rope.ts';

/** Cables of one length: how many, how they are cut and tied, and how far each gives way under a mass when it is taut. Lengths in mm. */
export interface CableCut {
  readonly count: number;
  readonly cut: number;
  readonly between: number;
  readonly doubled: number;
  readonly test: { readonly mass: number; readonly most: number };
}

const cap = capHeights.step;
/** Height of the row of one length of cable, mm of paper. */
const ROW = 33;

/** How each length is cut, and where its two loops are tied. */
export function cableCutPicture(cables: readonly CableCut[], { width }: Paper): DrawnPicture {
  const paper = { width, height: 8 + ROW * cables.length };
  return toPicture(paper, cableCutMarks(cables, paper));
}

/** The marks of the picture, for the tests. */
export function cableCutMarks(cables: readonly CableCut[], { width }: Paper): readonly Mark[] {
  const [from, to] = [24, width - 6];
  return cables.flatMap(({ count, cut, between }, index) => {
    const y = 14 + ROW * index;
    const second = from + (to - from) * 0.66;
    return [
      figure(tell.times(count), [9, y + 9], capHeights.count, 700),
      ...cord([from, y], [to, y]),
      ...linearDimension({ axis: 'x', told: tell.mm(cut), ends: [from, to], line: y - 5, feature: y - 1.5, cap }),
      ...cord([from + 7, y + 18], [to - 18, y + 18]), ...tied([from + 6, y + 18], -1), ...tied([second, y + 18], 1),
      ...linearDimension({ axis: 'x', told: tell.mm(between), ends: [from, second], line: y + 12, feature: y + 16, cap }),
    ];
  });
}

/** A loop with its knot drawn home, small; it stands out to the left, or upwards from the cord. */
function tied([x, y]: Vec2, way: -1 | 1): readonly Mark[] {
  const ring = way < 0 ? round([x - 3, y], 3, 0, 2 * Math.PI) : smooth([x + 3, y], [x + 3, y + 4], [x, y + 6.5], [x - 3, y + 4], [x + 3, y]);
  const at: Vec2 = way < 0 ? [x + 2.4, y] : [x + 3, y];
  return [...cord(...ring), ...[-1.2, 0, 1.2].map((by) => line({ ...pens.motion, width: 1.2 }, [at[0] + by - 0.5, at[1] + 2], [at[0] + by + 0.5, at[1] - 2]))];
}

/** Eight frames: the loop's knot in three, the second loop, the end round the stud, drawn tight, made fast, and how tight is looked at. */
export function hitchPicture(cable: CableCut, paper: Paper): DrawnPicture {
  return toPicture(paper, hitchMarks(cable, paper));
}

/** The marks of the picture, for the tests. */
export function hitchMarks(cable: CableCut, { width, height }: Paper): readonly Mark[] {
  const [wide, high] = [width / 4, height / 2];
  const frames: readonly ((at: Vec2) => readonly Mark[])[] = [
    (at) => laidBack(at, cable.doubled), knotted, loopMade, secondLoop, roundStud, drawnTight, madeFast, ([x, y]) => pressed([x, y + 3], cable),
  ];
  return frames.flatMap((frame, index) => {
    const corner: Vec2 = [(index % 4) * wide, Math.floor(index / 4) * high];
    return [ringedNumeral(tell.number(index + 1), [corner[0] + 5, corner[1] + 6], capHeights.order, pens.edge), ...frame([corner[0] + wide / 2, corner[1] + high / 2])];
  });
}

/** The end laid back along the cord, so far. */
const laidBack = ([x, y]: Vec2, far: number): readonly Mark[] => [
  ...cord(...smooth([x - 18, y - 2], [x + 6, y - 2], [x + 13, y], [x + 15, y + 3], [x + 13, y + 6], [x + 6, y + 8], [x - 8, y + 8])),
  ...linearDimension({ axis: 'x', told: tell.mm(far), ends: [x - 8, x + 15], line: y + 17, feature: [y + 10, y + 6], cap }),
];

/** The doubled end in a loose knot, its bight standing out. */
function knotted([x, y]: Vec2): readonly Mark[] {
  const { marks, ends: [right, left] } = knot([x, y + 3], 12, doubled);
  return [
    ...doubled(...smooth(right, [right[0] + 3, right[1] - 5], [right[0] + 8, right[1] - 7])), ...bight([right[0] + 8, right[1] - 7], [1, -0.2]),
    ...doubled(...smooth(left, [left[0] - 3, left[1] - 5], [left[0] - 9, left[1] - 7])), ...marks,
  ];
}

/** The rounded end of two cords side by side. */
const bight = ([x, y]: Vec2, [along, up]: Vec2): readonly Mark[] => [...doubled([x, y], [x + 3 * along, y + 3 * up]), circle([x + 4 * along, y + 4 * up], 1.5, { ...pens.motion, width: 0.35 }, 'white')];

/** The knot drawn home: a loop. */
const loopMade = ([x, y]: Vec2): readonly Mark[] => [
  ...cord(...smooth([x - 17, y], [x - 3, y])), ...cord([x - 12, y + 2.5], [x - 3, y + 1.2]),
  ...cord(...smooth([x, y - 0.8], [x + 5, y - 4], [x + 12, y - 3.5], [x + 15, y], [x + 12, y + 3.5], [x + 5, y + 4], [x, y + 0.8])), ...drawnHome([x - 1.5, y + 0.4]),
];

const drawnHome = ([x, y]: Vec2): readonly Mark[] => {
  const ring: readonly Vec2[] = round([x, y], 3.4, 0, 2 * Math.PI);
  return [area('white', ring), outline(pens.cut, ring), ...[-1.4, 0.4].map((by) => line(pens.edge, ...smooth([x + by - 1, y + 2.8], [x + by, y], [x + by + 1.8, y - 2.8])))];
};

/** The same knot in the cord, a stud below it. */
const standing = ([x, y]: Vec2): readonly Mark[] => [...cord([x - 6, y - 22], [x - 6, y - 8]), ...drawnHome([x - 6, y - 7]), ...cord(...smooth([x - 4, y - 6], [x + 1, y - 8], [x + 4, y - 6], [x + 2, y - 3], [x - 4, y - 6]))];

const stud = ([x, y]: Vec2): readonly Mark[] => [circle([x, y + 16], 5, pens.cut, 'panel'), circle([x, y + 16], 2.6, pens.edge, 'core')];

const secondLoop = (at: Vec2): readonly Mark[] => [...standing(at), ...cord([at[0] - 6, at[1] - 4], [at[0] - 6, at[1] + 4]), ...stud(at)];

/** The end goes down, round the stud and up to the loop. */
const roundTo = ([x, y]: Vec2, ...up: readonly Vec2[]): readonly Mark[] => cord(...smooth([x - 6, y - 4], [x - 5.8, y + 14], [x - 4, y + 20], [x, y + 22], [x + 4, y + 20], ...up));

const roundStud = (at: Vec2): readonly Mark[] => {
  const [x, y] = at;
  return [...stud(at), ...roundTo(at, [x + 5.5, y + 14], [x + 5, y + 2]), ...standing(at), line(pens.motion, [x + 11, y + 14], [x + 11, y + 2]), arrowhead([x + 11, y - 1], [0, -1], 3.5)];
};

/** A point inside the loop: the end goes behind its lower cord and over its upper one. */
const inside = ([x, y]: Vec2): Vec2 => [x + 0.5, y - 5.4];

/** Up through the loop and drawn down. */
const drawnTight = (at: Vec2): readonly Mark[] => {
  const [x, y] = at;
  return [
    ...stud(at), ...roundTo(at, [x + 4, y + 8], inside(at)), ...standing(at), ...cord(...smooth(inside(at), [x + 2.5, y - 9.5], [x + 7, y - 8], [x + 10, y + 1], [x + 11, y + 9])),
    line(pens.motion, [x + 15, y], [x + 15, y + 14]), arrowhead([x + 15, y + 18], [0, 1], 4.5),
  ];
};

/** Two hitches round all cords under the loop. */
const madeFast = (at: Vec2): readonly Mark[] => {
  const [x, y] = at;
  const turn = (low: number): readonly Mark[] => cord(...smooth([x + 5, low - 2], [x - 2, low + 1], [x - 8, low], [x - 8.5, low + 2.5], [x - 2, low + 3.5], [x + 5, low + 1.5]));
  return [
    ...stud(at), ...roundTo(at, [x + 3, y + 10], inside(at)), ...standing(at), ...cord(...smooth(inside(at), [x + 3, y - 9.5], [x + 6, y - 6], [x + 5, y + 1])),
    ...turn(y + 1), ...turn(y + 7), ...cord([x + 5, y + 8], [x + 13, y + 12]),
  ];
};

/** A mass hung on the middle, and how far it may come down. */
const pressed = ([x, y]: Vec2, { test: { mass, most } }: CableCut): readonly Mark[] => {
  const [top, low] = [y - 16, y];
  const weight: readonly Vec2[] = [[x - 4, low + 6], [x + 4, low + 6], [x + 5, low + 15], [x - 5, low + 15]];
  return [
    line(pens.centre, [x - 18, top], [x + 18, top]),
    ...cord([x - 18, top], [x, low], [x + 18, top]), circle([x - 18, top], 2.2, pens.cut, 'panel'), circle([x + 18, top], 2.2, pens.cut, 'panel'),
    line(pens.motion, [x, low], [x, low + 6]), area('panel', weight), outline(pens.cut, weight),
    figure(tell.mass(mass), [x, low + 20], cap, 700),
    ...linearDimension({ axis: 'y', told: tell.mm(most), ends: [top, low], line: x - 13, feature: [x - 12, x - 1], cap }),
  ];
};
