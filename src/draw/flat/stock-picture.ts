import type { Vec2 } from '../../model/index.ts';
import type { DrawnPicture } from '../types.ts';
import { linearDimension } from '../kit/dimension.ts';
import { cornersOf } from '../kit/geometry.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, circle, figure, line, outline, toldWidth, type Mark } from '../kit/marks.ts';
import { band, pens } from '../kit/pens.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import { tell } from '../../scene/index.ts';
import { thinCord as cord } from './cable/rope.ts';
import { eye } from './eye.ts';

/** What an item is made from, to be fetched: so many whole tubes, panels and cables, mm. */
export interface StockFetched {
  readonly tube: { readonly length: number; readonly outside: number; readonly inside: number; readonly count: number };
  readonly panel: { readonly sides: Vec2; readonly thickness: number; readonly skin: number; readonly count: number };
  /** So many whole ones are each cut into these pieces, mm, in the steps of these numbers. */
  readonly cable: { readonly length: number; readonly diameter: number; readonly patterns: readonly { readonly count: number; readonly pieces: readonly number[]; readonly steps: readonly number[] }[] };
}

/** Height of the tubes and panels with the arrow under them; the cable's place and the ways under it in which whole cables are cut, and the arrow under these, mm of paper. */
const height = { plain: 39, cable: 45, way: 11, arrow: 16 } as const;
const cableLine = 36.5;
const cap = capHeights.step;
/** The tube's width and length and the room of its section, the panel's longer side, and its section enlarged, mm of paper. */
const bar = { wide: 4.5, long: 56, end: 9.5 } as const;
const panelLong = 36;
const SECTION = { wide: 18, high: 8 } as const;
/** From the panel's left to the edge of the paper: its own width, its section and that one's figure. */
const PANEL_ROOM = 71;

/** Whole tubes, panels and cables with their sizes and how many, and an arrow to the parts that they become. */
export function stockPicture(stock: StockFetched, width: number): DrawnPicture {
  const paper: Paper = { width, height: heightOf(stock) };
  return toPicture(paper, stockMarks(stock, paper));
}

const heightOf = ({ cable: { patterns } }: StockFetched): number => (patterns.length === 0 ? height.plain : height.cable + height.way * patterns.length + height.arrow);

/** The marks of the picture, for the tests. */
export function stockMarks({ tube, panel, cable }: StockFetched, { width, height: foot }: Paper): readonly Mark[] {
  const middle = width / 2;
  return [
    ...(tube.count === 0 ? [] : tubeMarks(tube, 1)),
    ...(panel.count === 0 ? [] : panelMarks(panel, width - PANEL_ROOM)),
    ...(cable.patterns.length === 0 ? [] : cableMarks(cable, [1, cableLine])),
    line(band(1.6), [middle, foot - 10.5], [middle, foot - 6.5]), arrowhead([middle, foot - 1.5], [0, 1], 6, 6),
  ];
}

/** Its section with the diameter of its bore, the tube from the side with its length, the diameter under the section, how many under it. */
function tubeMarks({ length, outside, inside, count }: StockFetched['tube'], left: number): readonly Mark[] {
  const y = 14;
  const end: Vec2 = [left + bar.end, y];
  const from = left + 2 * bar.end + 4;
  const ring = cornersOf({ x: from, y: y - bar.wide / 2, width: bar.long, height: bar.wide });
  const [size, times] = [tell.diameter(outside), tell.times(count)];
  return [
    circle(end, bar.end - 1, pens.cut, 'core'), circle(end, ((bar.end - 1) * inside) / outside, pens.cut, 'white'), figure(tell.diameter(inside), end, cap),
    area('panel', ring), outline(pens.cut, ring),
    ...linearDimension({ axis: 'x', told: tell.mm(length), ends: [from, from + bar.long], line: y - 6, feature: y - bar.wide / 2, cap }),
    figure(size, [end[0], y + bar.end + 2.5], cap),
    figure(times, [from + toldWidth(times, capHeights.count, 700) / 2, y + 9], capHeights.count, 700),
  ];
}

/** The panel with its sides and thickness, how many, and enlarged what it is made of. */
function panelMarks({ sides, thickness, skin, count }: StockFetched['panel'], left: number): readonly Mark[] {
  const scale = panelLong / Math.max(...sides);
  const [wide, high] = [sides[0] * scale, sides[1] * scale];
  const ring = cornersOf({ x: left, y: 2, width: wide, height: high });
  const [size, times] = [tell.sides(...sides, thickness), tell.times(count)];
  return [
    area('panel', ring), outline(pens.cut, ring),
    figure(times, [left + wide + 6 + toldWidth(times, capHeights.count, 700) / 2, 2 + high / 4], capHeights.count, 700),
    ...panelSection([left + wide + 5, 2 + high - SECTION.high], thickness, skin),
    line(pens.edge, [left + wide, 2 + high], [left + wide + 5, 2 + high]),
    figure(size, [left + toldWidth(size, cap, 400) / 2, 2 + high + 2.5 + cap / 2], cap),
  ];
}

/** A piece of a panel cut across, torn off at its right: two thin skins and light foam between them, how thick it is beside it. */
function panelSection([left, top]: Vec2, thickness: number, skin: number): readonly Mark[] {
  const [right, foot] = [left + SECTION.wide, top + SECTION.high];
  const thin = (SECTION.high * skin) / thickness;
  const torn: readonly Vec2[] = [[right, top], [right - 1.4, top + SECTION.high * 0.3], [right + 0.6, top + SECTION.high * 0.6], [right - 0.8, foot]];
  const ring: readonly Vec2[] = [[left, top], ...torn, [left, foot]];
  return [
    area('core', ring),
    ...[[left, top, right - 0.4], [left, foot - thin, right - 0.9]].flatMap(([x = 0, y = 0, to = 0]) => [area('white', [[x, y], [to, y], [to, y + thin], [x, y + thin]]), outline(pens.edge, [[x, y], [to, y], [to, y + thin], [x, y + thin]])]),
    ...FOAM.map(([x, y]) => circle([left + x * SECTION.wide, top + y * SECTION.high], 0.55, pens.edge, 'white')),
    outline(pens.cut, ring),
    ...linearDimension({ axis: 'y', told: tell.mm(thickness), ends: [top, foot], line: right + 5.6, feature: right + 1, cap, upright: true }),
  ];
}

/** Where bubbles of the foam are drawn, as shares of the section. */
const FOAM: readonly Vec2[] = [[0.06, 0.35], [0.15, 0.66], [0.24, 0.4], [0.33, 0.62], [0.42, 0.3], [0.51, 0.58], [0.6, 0.36], [0.69, 0.68], [0.78, 0.42], [0.87, 0.62]];

/** Its section, the cable from the side with its length, the diameter under the section, how many beside; under it how many are cut into which pieces, and when. */
function cableMarks({ length, diameter, patterns }: StockFetched['cable'], [left, y]: Vec2): readonly Mark[] {
  const from = left + 2 * bar.end + 4;
  const [size, times] = [tell.diameter(diameter), tell.times(patterns.reduce((sum, { count }) => sum + count, 0))];
  return [
    circle([left + bar.end, y], 1.6, pens.cut, 'core'), ...cord([from, y], [from + bar.long, y]),
    ...linearDimension({ axis: 'x', told: tell.mm(length), ends: [from, from + bar.long], line: y - 4, feature: y - 1.4, cap }),
    figure(size, [left + toldWidth(size, cap, 400) / 2 + 1.5, y + 6.5], cap),
    figure(times, [from + toldWidth(times, capHeights.count, 700) / 2, y + 6.5], capHeights.count, 700),
    ...patterns.flatMap((pattern, index) => cutInto(pattern, length, [from, y + 8 + height.way * (index + 1)])),
  ];
}

/** So many whole cables, each cut into these pieces from its left end: not now but in the steps told. */
function cutInto({ count, pieces, steps }: StockFetched['cable']['patterns'][number], length: number, [left, y]: Vec2): readonly Mark[] {
  const scale = bar.long / Math.max(length, pieces.reduce((sum, piece) => sum + piece, 0));
  const ends = pieces.map((_, index) => left + scale * pieces.slice(0, index + 1).reduce((sum, piece) => sum + piece, 0));
  const times = tell.times(count);
  return [
    ...cord([left, y], [left + bar.long, y]), ...ends.map((x) => line(pens.motion, [x, y - 2.6], [x, y + 2.6])),
    ...pieces.map((piece, index) => figure(tell.mm(piece), [((ends[index - 1] ?? left) + (ends[index] ?? left)) / 2, y - 2.4 - cap / 2], cap)),
    figure(times, [left - 3 - toldWidth(times, capHeights.count, 700) / 2, y - 1], capHeights.count, 700),
    ...eye([left + bar.long + 8, y - 1], EYE), ...steps.map((step, index) => figure(tell.number(step), [left + bar.long + 8 + EYE / 2 + 6 + STEP * index, y - 1], capHeights.count, 700)),
  ];
}

/** Width of the eye that looks at a step, and from one step's number to the next, mm of paper. */
const EYE = 9;
const STEP = 10;
