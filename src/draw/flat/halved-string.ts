import type { Vec2 } from '../../model/index.ts';
import { tell } from '../../scene/index.ts';
import { linearDimension } from '../kit/dimension.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, circle, fractionSize, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import type { DrawnPicture } from '../types.ts';

const cap = capHeights.step;
/** A tube and the string on it, mm of paper: how high it is drawn, from string to tube, from run to run, and the way to the next. */
const TUBE = { high: 5 } as const;
const STRING = { over: 3, apart: 1.8 } as const;
const NEXT = 12;
const TOP = 21;

/** Height of the picture, and the white left of it, mm of paper. */
const HIGH = TOP + TUBE.high + 11;
const LEFT = 6;

/** How a share of a tube so long, mm, is found without a rule: a string as long as the tube, then laid in as many runs as the share has parts. */
export const stringPicture = (stock: number, parts: readonly number[], { width }: Pick<Paper, 'width'>): DrawnPicture => toPicture({ width, height: HIGH }, stringMarks(stock, parts));

/** The marks of the picture, for the tests. */
export function stringMarks(stock: number, parts: readonly number[]): readonly Mark[] {
  const y = TOP;
  const long = parts.length > 2 ? 28 : 36;
  return [1, ...parts].flatMap((part, index): readonly Mark[] => {
    const x = LEFT + index * (long + NEXT);
    const end = x + long / part;
    return [
      ...linearDimension({ axis: 'x', told: tell.mm(stock / part), ends: [x, end], line: y + TUBE.high + 8, feature: y + TUBE.high, cap }),
      ...tube([x, y], long), ...runs([x, y - STRING.over], part, long),
      ...(part === 1 ? [] : [
        { mark: 'fraction' as const, numerator: 1, denominator: part, centre: [(x + end) / 2, y - STRING.over - STRING.apart * (part - 1) - 1.6 - fractionSize(1, part, cap)[1] / 2] as const, cap, pen: pens.edge },
        line(pens.cut, [end, y - 2], [end, y + TUBE.high + 1.5]),
        line(pens.motion, [x - NEXT + 3, y + TUBE.high / 2], [x - 7, y + TUBE.high / 2]), arrowhead([x - 3, y + TUBE.high / 2], [1, 0], 4),
      ]),
    ];
  });
}

function tube([x, y]: Vec2, whole: number): readonly Mark[] {
  const ring: readonly Vec2[] = [[x, y], [x + whole, y], [x + whole, y + TUBE.high], [x, y + TUBE.high]];
  return [area('panel', ring), outline(pens.cut, ring)];
}

/** One string to and fro, a dot at either end. */
function runs([x, y]: Vec2, parts: number, whole: number): readonly Mark[] {
  const long = whole / parts;
  const levels = Array.from({ length: parts }, (_, index) => y - STRING.apart * index);
  const points = levels.flatMap((level, index): readonly Vec2[] => (index % 2 === 0 ? [[x, level], [x + long, level]] : [[x + long, level], [x, level]]));
  const ends = [points[0], points.at(-1)].flatMap((point) => (point === undefined ? [] : [circle(point, 0.9, null, 'ink')]));
  return [line(pens.motion, ...points), ...ends];
}
