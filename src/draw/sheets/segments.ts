import type { Vec2 } from '../../model/index.ts';
import type { Box } from '../types.ts';
import { capHeights } from '../kit/lettering.ts';
import type { Mark } from '../kit/marks.ts';
import { figure, line, outline, ringedNumeral } from '../kit/marks.ts';
import type { Fit } from '../kit/fit.ts';
import { registerMark, scissors } from './paper-marks.ts';
import { overlap } from './room.ts';
import { stripWidth, type Strip } from './strip.ts';
import { rowLetter } from './tiles.ts';
import { pens } from '../kit/pens.ts';
import { tell } from '../kit/told.ts';
import { boxWindow } from '../kit/clip.ts';
import { clipMarks } from '../kit/clip-marks.ts';
import { cornersOf } from '../kit/geometry.ts';

/** White between strips side by side, mm. */
const gap = 6;
/** Where register marks stand across a strip, as shares of its width: beside its holes. */
const registerShares = [0.52, 0.85] as const;

/** A piece of a strip that fits on a sheet. Lengths along the strip, mm. */
export interface Segment {
  readonly strip: Strip;
  /** Place of the strip among all drawings of the item, from 1. */
  readonly number: number;
  readonly letter: string;
  readonly from: number;
  readonly to: number;
  /** Whether another one comes before, and after. */
  readonly joined: { readonly before: boolean; readonly after: boolean };
}

/** A strip cut into pieces of at most `room` mm that overlap; joins stand as far from its marks as they can. */
export function segmentsOf(strip: Strip, number: number, room: number): readonly Segment[] {
  const joins = joinsOf(strip, room);
  const ends = [0, ...joins, strip.length];
  return ends.slice(1).map((end, index) => {
    const joined = { before: index > 0, after: index < joins.length };
    return {
      strip, number, joined,
      letter: rowLetter(index),
      from: (ends[index] ?? 0) - (joined.before ? overlap / 2 : 0),
      to: end + (joined.after ? overlap / 2 : 0),
    };
  });
}

/** Middles of the overlaps. Each may stand a share of the spare room earlier than it must, so that no further piece is needed. */
function joinsOf({ length, places, figures }: Strip, room: number): readonly number[] {
  const count = Math.max(1, Math.ceil((length - overlap) / (room - overlap) - 1e-9));
  const spare = (count * (room - overlap) + overlap - length) / Math.max(1, count - 1);
  const joins: number[] = [];
  for (let index = 1; index < count; index += 1) {
    const before = joins.at(-1);
    const latest = (before === undefined ? 0 : before - overlap / 2) + room - overlap / 2;
    const tries = Array.from({ length: Math.floor(spare) + 1 }, (_, back) => latest - back);
    const clear = (join: number): number => Math.min(...[...places, ...figures.map(({ at }) => at)].map((place) => Math.abs(place - join)));
    joins.push(tries.reduce((best, next) => (Math.min(clear(next), enough) > Math.min(clear(best), enough) ? next : best)));
  }
  return joins;
}

/** A join this far from every mark is as good as any, mm. */
const enough = 12;

/** The pieces side by side, in order, as many as a window holds. */
export function segmentSheets(segments: readonly Segment[], window: Box): readonly (readonly Segment[])[] {
  const perSheet = Math.floor((window.width + gap) / (stripWidth + gap));
  return Array.from({ length: Math.ceil(segments.length / perSheet) }, (_, index) => segments.slice(index * perSheet, (index + 1) * perSheet));
}

/** Where the pieces of one sheet stand in its window, mm of the sheet. */
export function segmentBoxes(segments: readonly Segment[], window: Box): readonly Box[] {
  return segments.map(({ from, to }, index) => ({ x: window.x + index * (stripWidth + gap), y: window.y, width: stripWidth, height: to - from }));
}

/** From strip coordinates to the sheet. */
export const segmentView = ({ from }: Segment, { x, y }: Box): Fit => ({ scale: 1, origin: [x, y - from] });

/** Middles of a piece's register marks on the sheet, those of the upper join first. */
export function segmentRegister({ joined }: Segment, { x, y, width, height }: Box): readonly Vec2[] {
  const across = registerShares.map((share) => x + share * width);
  return [
    ...(joined.before ? across.map((at): Vec2 => [at, y + overlap / 2]) : []),
    ...(joined.after ? across.map((at): Vec2 => [at, y + height - overlap / 2]) : []),
  ];
}

/** A piece in its box: the strip's lines and figures, its edges, its label, register marks and where it is cut for the join. */
export function segmentMarks(segment: Segment, box: Box): readonly Mark[] {
  const { strip, joined } = segment;
  const view = segmentView(segment, box);
  const join = box.y + box.height - overlap / 2;
  return [
    ...clipMarks(strip.draw(view), boxWindow(box)),
    outline(pens.strip, cornersOf(box)),
    ...(joined.after ? [line(pens.trim, [box.x - 2, join], [box.x + box.width, join]), ...scissors([box.x - 3, join], 'right')] : []),
    ...segmentRegister(segment, box).flatMap(registerMark),
    ...ownFigures(segment).map(({ at, across, told }) => figure(told, [box.x + across, view.origin[1] + at], capHeights.pattern)),
    ...label(segment, box, view),
  ];
}

/** The figures of the piece, each on one piece only: it ends for them at the middle of an overlap. */
const ownFigures = ({ strip, from, to, joined }: Segment): Strip['figures'] => strip.figures.filter(({ at }) =>
  at >= from + (joined.before ? overlap / 2 : 0) && at < to - (joined.after ? overlap / 2 : 0));

/** The strip's numeral and the piece's letter, where the piece is emptiest. */
function label(segment: Segment, { x, width }: Box, view: Fit): readonly Mark[] {
  const { strip, from, to, number, letter } = segment;
  const ends = [from + overlap, to - overlap] as const;
  const taken = [...strip.places, ...strip.figures.map(({ at }) => at)].filter((at) => at > ends[0] && at < ends[1]).sort((a, b) => a - b);
  const stops = [ends[0], ...taken, ends[1]];
  const gaps = stops.slice(1).map((stop, index) => ({ middle: (stop + (stops[index] ?? stop)) / 2, size: stop - (stops[index] ?? stop) }));
  const widest = gaps.reduce((best, next) => (next.size > best.size + 1e-9 ? next : best));
  const y = view.origin[1] + widest.middle;
  const middle = x + width / 2;
  return [
    ringedNumeral(tell.number(number), [middle - 4.5, y], capHeights.order, pens.tick),
    figure(tell.letters(letter), [middle + 4.5, y], capHeights.order, 700),
  ];
}
