import type { Vec2 } from '../../model/index.ts';
import type { Colour } from '../kit/colours.ts';
import { cornersOf } from '../kit/geometry.ts';
import { area, line, outline, type Mark } from '../kit/marks.ts';
import { haloOf, pens } from '../kit/pens.ts';

/** A straightedge on its edge: its height, and from tick to tick, mm of paper. */
export const STRAIGHTEDGE = { high: 3.6, pitch: 2.2 } as const;
/** How far it stands out over the string, mm of paper. */
export const OVER = 4;
/** A weight on its string, mm of paper. */
export const BOB = 8.4;

const pen = { ...pens.cut, width: 0.5, round: true } as const;
const string = { ...pens.motion, width: 0.45 } as const;

/** A straightedge that lies at a height, from one place to another. */
export function straightedge([from, to]: Vec2, y: number): readonly Mark[] {
  const [left, right] = [Math.min(from, to), Math.max(from, to)];
  const box = cornersOf({ x: left, y: y - STRAIGHTEDGE.high, width: right - left, height: STRAIGHTEDGE.high });
  const ticks = Array.from({ length: Math.max(0, Math.ceil((right - left) / STRAIGHTEDGE.pitch) - 1) }, (_, index) => left + (index + 1) * STRAIGHTEDGE.pitch);
  return [area('white', box), ...ticks.map((x, index) => line(pens.edge, [x, y - STRAIGHTEDGE.high], [x, y - STRAIGHTEDGE.high + (index % 2 === 0 ? 1.2 : 1.9)])), outline(pen, box)];
}

/** A string tied round a straightedge, so high, that lies at a height; its weight, so many times as large as usual, hangs with its point at another. */
export const plumbLine = (x: number, y: number, tip: number, { high, size, colour }: { readonly high: number; readonly size: number; readonly colour: Colour } = { high: STRAIGHTEDGE.high, size: 1, colour: 'ink' }): readonly Mark[] => [
  line(haloOf(string.width), [x, y], [x, tip - BOB * size]), line({ ...string, colour }, [x, y - high], [x, tip - BOB * size]),
  ...[-0.6, 0.6].map((by) => line({ ...string, colour, width: 0.7 * size }, [x + by * size, y - high - 0.5], [x + by * size, y + 0.5])),
  area(colour, WEIGHT.map(([dx, dy]): Vec2 => [x + dx * size, tip + dy * size])),
];

/** A pointed weight, from its tip. */
const WEIGHT: readonly Vec2[] = [[-0.7, -BOB], [0.7, -BOB], [0.7, -7.2], [2.1, -6.2], [2.1, -4.4], [0, 0], [-2.1, -4.4], [-2.1, -6.2], [-0.7, -7.2]];
