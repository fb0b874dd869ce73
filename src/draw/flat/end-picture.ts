import type { Vec2 } from '../../model/index.ts';
import type { DrawnPicture } from '../types.ts';
import { linearDimension } from '../kit/dimension.ts';
import { cutFace } from '../kit/cut-face.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, circle, figure, line, outline, ringedNumeral, toldWidth, type Mark } from '../kit/marks.ts';
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
const SHOWN = 22;
const FIBRE = 4;
/** Radius of the ring with the wall enlarged, mm of paper, and how many times it is enlarged. */
const RING = 18;
const ENLARGED = 4.5;
const cap = capHeights.step;
/** How many tubes are filed at both ends, and which are capped. */
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

/** Side by side: the file dipped into water, a rough end filed with it inside and out, its edges enlarged and, where ends are capped, the cap pushed in; under the file how many tubes at both ends, under the last which tubes at which ends. */
export function endPicture(tube: TubeEnd, own: Cap, ends: EndCounts, paper: Paper): DrawnPicture {
  return toPicture(paper, endMarks(tube, own, ends, paper));
}

/** The marks of the picture, for the tests. */
export function endMarks(tube: TubeEnd, own: Cap, ends: EndCounts, paper: Paper): readonly Mark[] {
  const y = paper.height / 2 - 4;
  const isCapped = ends.capped.length > 0;
  const [dip, file, ring, cover] = isCapped ? [0, 0.18, 0.47, 0.735].map((share) => share * paper.width) : [0, 0.25, 0.65, 0.65].map((share) => share * paper.width);
  const columns = [dip, file, ring, ...(isCapped ? [cover] : [])];
  const low = paper.height - 5;
  return [
    ...columns.map((x, index) => ringedNumeral(tell.number(index + 1), [(x ?? 0) + 5, 6], capHeights.order, pens.edge)),
    ...dipped([(dip ?? 0) + 17, y + 2]), ...filed(tube, [(file ?? 0) + 4, y]), ...bothEnds(ends.filed, [(file ?? 0) + 4, low]),
    ...enlarged(tube, [(ring ?? 0) + RING + 2, y]),
    ...(isCapped ? [...capped(tube, own, [(cover ?? 0) + 1, y]), ...wholeTubes(ends.capped, paper.width, paper.height)] : []),
  ];
}

/** A whole tube drawn small, a ring round each of its ends, and how many there are. */
function bothEnds(count: number, [x, y]: Vec2): readonly Mark[] {
  const start = x + 4;
  const end = start + SMALL.long - 6;
  const told = tell.times(count);
  const bar: readonly Vec2[] = [[start, y - SMALL.wide / 2], [end, y - SMALL.wide / 2], [end, y + SMALL.wide / 2], [start, y + SMALL.wide / 2]];
  return [
    area('panel', bar), outline(pens.edge, bar), ...[start, end].map((at) => circle([at, y], 3.4, pens.motion)),
    figure(told, [end + 7 + toldWidth(told, capHeights.count, 700) / 2, y], capHeights.count, 700),
  ];
}

/** Size of a whole tube drawn small, mm of paper, from row to row, and the room for its letter and count. */
const SMALL = { long: 26, wide: 3.2, row: 8.5, told: 26 } as const;
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
function walls({ outside, inside }: TubeEnd, [x, y]: Vec2, broken: number, shown = SHOWN): readonly Mark[] {
  const end = x + shown;
  return [-1, 1].flatMap((side) => cutFace([
    [x, y + (side * outside) / 2], [end - broken, y + (side * outside) / 2], [end, y + side * (outside / 2 - broken)],
    [end, y + side * (inside / 2 + broken)], [end - broken, y + (side * inside) / 2], [x, y + (side * inside) / 2],
  ]));
}

/** Fibres stand out of the end where it is not filed; the wet file lies on the other edge and goes to and fro. */
function filed(tube: TubeEnd, [x, y]: Vec2): readonly Mark[] {
  const end = x + FILED;
  const top = y - tube.outside / 2;
  const fibres = [0.2, 0.5, 0.8].map((share): Mark => {
    const at = y + tube.inside / 2 + share * (tube.outside - tube.inside) / 2;
    return line(pens.edge, [end, at], [end + FIBRE, at + (share - 0.5) * 4]);
  });
  const along = (by: number, over: number): Vec2 => [end + (by - over) * Math.SQRT1_2 - 0.8, top + (by + over) * Math.SQRT1_2 + 0.8];
  return [
    ...walls(tube, [x, y], 0, FILED), ...fibres, ...fileMarks((by, over) => along(11 - by, over - FILE.thick)), ...drop(along(5, -8)),
    line(pens.motion, along(-12, -7), along(0, -7)), arrowhead(along(-15, -7), [-1, -1], 3.5), arrowhead(along(3, -7), [1, 1], 3.5),
  ];
}

/** Length of tube shown where it is filed, mm of paper. */
const FILED = 24;
/** A file, mm of paper: blade, handle, thickness, and from line to line of its teeth. */
const FILE = { blade: 22, handle: 10, thick: 3.4, grip: 0.8, pitch: 2.2 } as const;

/** A file as among the tools: a white blade with its teeth, a black handle; `at` gives the place so far from its tip along it and across. */
function fileMarks(at: (along: number, across: number) => Vec2): readonly Mark[] {
  const { blade, handle, thick, grip, pitch } = FILE;
  const ring = [at(0, 0), at(blade, 0), at(blade, thick), at(0, thick)];
  const held = [at(blade, -grip), at(blade + handle, -grip), at(blade + handle, thick + grip), at(blade, thick + grip)];
  const teeth = Array.from({ length: Math.floor((blade - 2) / pitch) }, (_, index) => line(pens.edge, at(1 + index * pitch, 0), at(1 + index * pitch + 1.4, thick)));
  return [area('white', ring), ...teeth, outline(pens.cut, ring), area('ink', held)];
}

/** The file is dipped into a bowl of water from a tap. */
const dipped = ([x, y]: Vec2): readonly Mark[] => [
  ...water([x - 3, y]), ...fileMarks((along, across) => [x + 1.5 + across + (along - 5) * 0.18, y + 4.5 - along]),
  line(pens.motion, [x + 12, y - 16], [x + 10.6, y - 8]), arrowhead([x + 10, y - 5], [-0.17, 1], 4),
];

/** Half the width and the height of a bowl, mm of paper. */
const BOWL = { half: 10, high: 9 } as const;

/** A bowl of water under a tap that drips: no oil, no glue. */
function water([x, y]: Vec2): readonly Mark[] {
  const bowl: readonly Vec2[] = Array.from({ length: 13 }, (_, step): Vec2 => {
    const angle = (Math.PI * step) / 12;
    return [x - BOWL.half * Math.cos(angle), y + BOWL.high * Math.sin(angle) ** 0.6];
  });
  const level = y + 2;
  const waves: readonly Vec2[] = Array.from({ length: 25 }, (_, step): Vec2 => [x - BOWL.half + 0.6 + ((2 * BOWL.half - 1.2) * step) / 24, level + 0.7 * Math.sin((step * Math.PI) / 4)]);
  const filled: readonly Vec2[] = [...waves, ...bowl.filter(([, at]) => at > level).reverse()];
  return [area('fresh', filled), line(pens.motion, ...waves), line({ ...pens.motion, width: 0.9 }, ...bowl), ...drop([x - 4, y - 3.4]), ...tap([x - 4, y - 8.6])];
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
  const from = x + SHOWN - plug / 2 + 2;
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
