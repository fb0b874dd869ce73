import type { Vec2 } from '../../model/index.ts';
import type { DrawnPicture } from '../types.ts';
import { linearDimension } from '../kit/dimension.ts';
import { cutFace } from '../kit/cut-face.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, circle, figure, line, outline, ringedNumeral, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import { tell } from '../../scene/index.ts';

/** A tube, mm. */
export interface TubeEnd {
  readonly outside: number;
  readonly inside: number;
}

/** A plug with a head, mm. */
interface Cap {
  readonly diameter: number;
  readonly thickness: number;
  readonly plug: number;
}

/** How much of an edge the file takes off, mm. */
const BROKEN = 1;
/** Length of tube shown, and of the fibres that stand out of a rough end, mm of paper. */
const SHOWN = 30;
const FIBRE = 4;
/** Radius of the ring with the wall enlarged, mm of paper, and how many times it is enlarged. */
const RING = 19;
const ENLARGED = 4.5;
const cap = capHeights.step;
/** How many ends are filed, and which tubes are capped. */
export interface EndCounts {
  readonly filed: number;
  readonly capped: readonly CappedTubes[];
}

/** Tubes capped alike: what is written on them, their length and marks, mm from the first end (the foot of a post), and whether that end and the other get a cap. */
export interface CappedTubes {
  readonly letter: string;
  readonly count: number;
  readonly length: number;
  readonly marks: readonly number[];
  readonly first: boolean;
  readonly last: boolean;
}

/** Sections side by side: a rough end filed wet inside and out, its edges enlarged and, where ends are capped, the cap pushed in; under the first how many ends, under the last which tubes at which ends. */
export function endPicture(tube: TubeEnd, own: Cap, ends: EndCounts, paper: Paper): DrawnPicture {
  return toPicture(paper, endMarks(tube, own, ends, paper));
}

/** The marks of the picture, for the tests. */
export function endMarks(tube: TubeEnd, own: Cap, ends: EndCounts, paper: Paper): readonly Mark[] {
  const columns = ends.capped.length > 0 ? 3 : 2;
  const wide = paper.width / columns;
  const y = paper.height / 2;
  const [first = 0, second = 0, third] = Array.from({ length: columns }, (_, column) => column * wide);
  return [
    ...[first, second, ...(third === undefined ? [] : [third])].map((x, index) => ringedNumeral(tell.number(index + 1), [x + 5, 6], capHeights.order, pens.edge)),
    ...filed(tube, [first + 4, y]),
    figure(tell.times(ends.filed), [first + wide / 2, paper.height - 5], capHeights.count, 700),
    ...enlarged(tube, [second + wide / 2, y]),
    ...(third === undefined ? [] : [...capped(tube, own, [third + 3, y]), ...wholeTubes(ends.capped, third + wide, paper.height)]),
  ];
}

/** Size of a whole tube drawn small, mm of paper, from row to row, and the room for its letter and count. */
const SMALL = { long: 26, wide: 3.2, row: 8.5, told: 24 } as const;
/** Rings near the first end of a marked tube, mm of paper: a sign, to no scale. */
const RINGS = [1, 2];
/** A cap drawn small, mm of paper: its head, and how far it stands off the end that it goes into. */
const SMALL_CAP = { head: 1.2, plug: 2, off: 1.4 } as const;

/** Under each other each kind of capped tube with its marks and its caps at their ends, what is written on it and how many there are. */
const wholeTubes = (capped: EndCounts['capped'], right: number, height: number): readonly Mark[] => capped.flatMap((kind, index) => {
  const y = height - 5 - (capped.length - 1 - index) * SMALL.row;
  const end = right - SMALL.told - SMALL_CAP.off - SMALL_CAP.plug - SMALL_CAP.head;
  const start = end - SMALL.long;
  const ring: readonly Vec2[] = [[start, y - SMALL.wide / 2], [end, y - SMALL.wide / 2], [end, y + SMALL.wide / 2], [start, y + SMALL.wide / 2]];
  const rings = kind.marks.length === 0 ? [] : [...RINGS, ...kind.marks.map((at) => (at / kind.length) * SMALL.long)];
  return [
    area('panel', ring), outline(pens.edge, ring),
    ...rings.map((at) => line(pens.edge, [start + at, y - SMALL.wide / 2], [start + at, y + SMALL.wide / 2])),
    ...(kind.first ? smallCap([start, y], -1) : []), ...(kind.last ? smallCap([end, y], 1) : []),
    figure(tell.letters(`${kind.letter} ×${kind.count}`.trim()), [right - SMALL.told / 2, y], capHeights.count, 700),
  ];
});

/** A cap on its way into an end, to the left (−1) or to the right of the tube; its head is no wider than the tube. */
function smallCap([x, y]: Vec2, side: -1 | 1): readonly Mark[] {
  const at = (out: number, up: number): Vec2 => [x + side * out, y + up];
  const { head, plug, off } = SMALL_CAP;
  const wide = SMALL.wide / 2;
  const ring = [at(off, -0.8), at(off + plug, -0.8), at(off + plug, -wide), at(off + plug + head, -wide), at(off + plug + head, wide), at(off + plug, wide), at(off + plug, 0.8), at(off, 0.8)];
  return [area('fresh', ring), outline(pens.edge, ring)];
}

/** Both walls of a tube cut lengthwise, from a point on its axis to the right; `broken` mm of paper off the edges of its end. */
function walls({ outside, inside }: TubeEnd, [x, y]: Vec2, broken: number): readonly Mark[] {
  const end = x + SHOWN;
  return [-1, 1].flatMap((side) => cutFace([
    [x, y + (side * outside) / 2], [end - broken, y + (side * outside) / 2], [end, y + side * (outside / 2 - broken)],
    [end, y + side * (inside / 2 + broken)], [end - broken, y + (side * inside) / 2], [x, y + (side * inside) / 2],
  ]));
}

/** Fibres stand out of the end; the file lies on the edge and goes to and fro, wetted from a bowl of water. */
function filed(tube: TubeEnd, [x, y]: Vec2): readonly Mark[] {
  const end = x + SHOWN;
  const top = y - tube.outside / 2;
  const fibres = [-1, 1].flatMap((side) => [0.2, 0.5, 0.8].map((share): Mark => {
    const at = y + side * (tube.inside / 2 + share * (tube.outside - tube.inside) / 2);
    return line(pens.edge, [end, at], [end + FIBRE, at + side * (share - 0.5) * 4]);
  }));
  const along = (by: number, over: number): Vec2 => [end + (by - over) * Math.SQRT1_2 - 0.8, top + (by + over) * Math.SQRT1_2 + 0.8];
  const file = [along(-15, 0), along(15, 0), along(15, -3), along(-15, -3)];
  return [
    ...walls(tube, [x, y], 0), ...fibres,
    area('white', file), outline(pens.cut, file),
    line(pens.motion, along(-9, -6), along(9, -6)), arrowhead(along(-12, -6), [-1, -1], 3.5), arrowhead(along(12, -6), [1, 1], 3.5),
    ...water([end - 16, top - 15]),
  ];
}

/** Half the width and the height of a bowl, mm of paper. */
const BOWL = { half: 8, high: 7.5 } as const;

/** A bowl of water under a tap that drips: no oil, no glue. */
function water([x, y]: Vec2): readonly Mark[] {
  const bowl: readonly Vec2[] = Array.from({ length: 13 }, (_, step): Vec2 => {
    const angle = (Math.PI * step) / 12;
    return [x - BOWL.half * Math.cos(angle), y + BOWL.high * Math.sin(angle) ** 0.6];
  });
  const level = y + 2;
  const waves: readonly Vec2[] = Array.from({ length: 25 }, (_, step): Vec2 => [x - BOWL.half + 0.6 + ((2 * BOWL.half - 1.2) * step) / 24, level + 0.7 * Math.sin((step * Math.PI) / 4)]);
  const filled: readonly Vec2[] = [...waves, ...bowl.filter(([, at]) => at > level).reverse()];
  return [area('fresh', filled), line(pens.motion, ...waves), line({ ...pens.motion, width: 0.9 }, ...bowl), ...drop([x, y - 3.4]), ...tap([x, y - 8.6])];
}

/** A tap from the left, its mouth over a place: pipe, spout and handle. */
function tap([x, y]: Vec2): readonly Mark[] {
  const pipe: readonly Vec2[] = [[x - 1.6, y], [x - 1.6, y - 3.2], [x - 8.6, y - 3.2], [x - 8.6, y - 6.4], [x + 0.4, y - 6.4], [x + 1.6, y - 5.2], [x + 1.6, y]];
  return [
    area('white', pipe), outline(pens.cut, pipe),
    line({ ...pens.motion, width: 1.2 }, [x - 4.2, y - 6.4], [x - 4.2, y - 8.4]), line({ ...pens.motion, width: 1.6 }, [x - 7.1, y - 8.6], [x - 1.3, y - 8.6]),
  ];
}

function drop([x, y]: Vec2): readonly Mark[] {
  const sides = Array.from({ length: 17 }, (_, index): Vec2 => {
    const angle = (Math.PI / 4) + (index / 16) * (1.5 * Math.PI) - Math.PI / 2;
    return [x + 1.5 * Math.cos(angle), y + 1.5 * Math.sin(angle)];
  });
  const ring: readonly Vec2[] = [[x, y - 3.2], ...sides];
  return [area('white', ring), outline(pens.motion, ring)];
}

/** The end of one wall, both edges broken, how far dimensioned. */
function enlarged({ outside, inside }: TubeEnd, [x, y]: Vec2): readonly Mark[] {
  const half = Math.min(((outside - inside) / 4) * ENLARGED, RING * 0.6);
  const off = BROKEN * ENLARGED;
  const end = x + 6;
  const left = x - Math.sqrt(RING ** 2 - half ** 2);
  const ring: readonly Vec2[] = [[left, y - half], [end - off, y - half], [end, y - half + off], [end, y + half - off], [end - off, y + half], [left, y + half]];
  return [
    ...cutFace(ring),
    circle([x, y], RING, pens.ring),
    ...linearDimension({ axis: 'x', told: tell.mm(BROKEN), ends: [end - off, end], line: y - RING - 4, feature: y - half, cap }),
  ];
}

/** The cap on its way into the filed end. */
function capped(tube: TubeEnd, { diameter, thickness, plug }: Cap, [x, y]: Vec2): readonly Mark[] {
  const shown = { ...tube };
  const from = x + SHOWN - plug / 2 + 4;
  const ring: readonly Vec2[] = [
    [from, y - tube.inside / 2 + 0.3], [from + plug, y - tube.inside / 2 + 0.3], [from + plug, y - diameter / 2], [from + plug + thickness, y - diameter / 2],
    [from + plug + thickness, y + diameter / 2], [from + plug, y + diameter / 2], [from + plug, y + tube.inside / 2 - 0.3], [from, y + tube.inside / 2 - 0.3],
  ];
  const low = y + tube.outside / 2 + 8;
  return [
    ...walls(shown, [x, y], BROKEN),
    area('panel', ring), outline(pens.cut, ring),
    line(pens.motion, [from + plug + thickness, low], [from + 6, low]), arrowhead([from + 3, low], [-1, 0], 4),
  ];
}
