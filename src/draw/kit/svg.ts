import type { Vec2 } from '../../model/index.ts';
import type { Box, DrawnPicture } from '../types.ts';
import { colours, type Colour } from './colours.ts';
import { boxRound } from './geometry.ts';
import { fontSize, textRoom, type Weight } from './lettering.ts';
import { area, fractionSize, labelBoxes, line, type Mark } from './marks.ts';
import { dashLengths, dashStart, type Pen } from './pens.ts';
import { toldText } from './told-text.ts';

/** Size of a picture in mm of paper. */
export interface Paper {
  readonly width: number;
  readonly height: number;
}

type MarkOf<Name extends Mark['mark']> = Extract<Mark, { readonly mark: Name }>;

/**
 * Turns marks into a picture: lengths rounded to 0.01 mm, marks painted in their order. Left to right always: on
 * right-to-left pages figures would turn round.
 */
export function toPicture({ width, height }: Paper, marks: readonly Mark[]): DrawnPicture {
  const [w, h] = [num(width), num(height)];
  const head = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${w} ${h}" width="${w}mm" height="${h}mm" direction="ltr" fill="none" stroke-linejoin="round" font-family="Noto Sans">`;
  return { svg: `${head}${svgOf(marks)}</svg>`, width, height, labels: labelBoxes(marks).map(roundBox), newPartShares: {} };
}

/** The marks as elements. */
export const svgOf = (marks: readonly Mark[]): string => marks.map(element).join('');

function element(mark: Mark): string {
  switch (mark.mark) {
    case 'line': return stroked(pathData(mark.points, mark.closed), mark.pen, lengthOf(mark.points, mark.closed));
    case 'lines': return stroked(mark.runs.map(({ points, closed }) => pathData(points, closed)).join(''), mark.pen, 0);
    case 'area': return filled(mark.rings.map((ring) => pathData(ring, true)).join(''), mark.fill);
    case 'circle': return `<circle ${at(mark.centre, 'cx', 'cy')} r="${num(mark.radius)}"${paint(mark.fill, mark.pen)}/>`;
    case 'figure': return figure(mark);
    case 'order': return element({ mark: 'circle', centre: mark.centre, radius: mark.radius, pen: mark.pen, fill: 'white' }) + text(toldText(mark.told), mark.centre, mark.cap, 700);
    case 'fraction': return fraction(mark);
    case 'view': return `<g data-view="${mark.name}" data-scale="${Number(mark.scale.toFixed(6))}">${svgOf(mark.marks)}</g>`;
    case 'placed': return `<g transform="translate(${num(mark.at[0])} ${num(mark.at[1])})">${svgOf(mark.marks)}</g>`;
  }
}

const stroked = (d: string, pen: Pen, length: number): string => (d === '' ? '' : `<path d="${d}"${paint(null, pen, length)}/>`);
const filled = (d: string, colour: Colour): string => (d === '' ? '' : `<path d="${d}"${paint(colour, null)} fill-rule="evenodd"/>`);

function figure({ told, centre, cap, weight, turn, ground }: MarkOf<'figure'>): string {
  const said = toldText(told);
  const turned = turn === 0 ? '' : ` transform="rotate(${num(turn)} ${num(centre[0])} ${num(centre[1])})"`;
  if (!ground) return text(said, centre, cap, weight, turned);
  const room = textRoom(said, cap);
  const { x, y, width, height } = boxRound(centre, room.width, room.height);
  const under = element(area('white', [[x, y], [x + width, y], [x + width, y + height], [x, y + height]]));
  return `<g${turned}>${under}${text(said, centre, cap, weight)}</g>`;
}

function fraction({ numerator, denominator, centre: [x, y], cap, pen }: MarkOf<'fraction'>): string {
  const half = fractionSize(numerator, denominator, cap)[0] / 2;
  const away = cap / 2 + 1.2;
  return text(String(numerator), [x, y - away], cap, 700) + element(line(pen, [x - half, y], [x + half, y])) + text(String(denominator), [x, y + away], cap, 700);
}

const text = (words: string, [x, y]: Vec2, cap: number, weight: Weight, turned = ''): string =>
  `<text ${at([x, y + cap / 2], 'x', 'y')} font-size="${num(fontSize(cap))}" font-weight="${weight}" text-anchor="middle"${paint('ink', null)}${turned}>${escaped(words)}</text>`;

/** Colours stand for paper, their names as classes for a page that shows them otherwise. */
function paint(fill: Colour | null, pen: Pen | null, length = 0): string {
  const classes = [...(fill ? [`fill-${fill}`] : []), ...(pen ? [`line-${pen.colour}`] : [])];
  return ` class="${classes.join(' ')}"${fill ? ` fill="${colours[fill]}"` : ''}${pen ? stroke(pen, length) : ''}`;
}

function stroke({ name, type, width, colour, round }: Pen, length: number): string {
  const dashes = dashLengths(type, width);
  const start = num(dashStart(type, width, length));
  const dashing = dashes.length > 0 ? ` stroke-dasharray="${dashes.map(fine).join(' ')}"${start === '0' ? '' : ` stroke-dashoffset="${start}"`}` : '';
  return ` data-line="${name}" stroke="${colours[colour]}" stroke-width="${num(width)}"${round ? ' stroke-linecap="round"' : ''}${dashing}`;
}

/**
 * Path data in mm. Steps are taken between rounded corners, so that rounding does not add up along a line; steps that
 * round to nothing are left out.
 */
export function pathData(points: readonly Vec2[], closed = false): string {
  const [first] = points;
  if (!first) return '';
  const [startX, startY] = [inHundredths(first[0]), inHundredths(first[1])];
  let [x, y] = [startX, startY];
  let steps = '';
  for (let p = 1; p < points.length; p++) {
    const [toX, toY] = points[p] ?? first;
    const [nextX, nextY] = [inHundredths(toX), inHundredths(toY)];
    if (nextX === x && nextY === y) continue;
    const [across, down] = [nextX - x, nextY - y];
    steps += `${steps === '' ? 'l' : across < 0 ? '' : ' '}${written(across)}${down < 0 ? '' : ' '}${written(down)}`;
    [x, y] = [nextX, nextY];
  }
  return steps === '' ? '' : `M${written(startX)} ${written(startY)}${steps}${closed ? 'z' : ''}`;
}

function lengthOf(points: readonly Vec2[], closed: boolean): number {
  const ring = closed ? [...points, ...points.slice(0, 1)] : points;
  return ring.slice(1).reduce((sum, [x, y], index) => {
    const [fromX, fromY] = ring[index] ?? [x, y];
    return sum + Math.hypot(x - fromX, y - fromY);
  }, 0);
}

const at = ([x, y]: Vec2, nameX: string, nameY: string): string => `${nameX}="${num(x)}" ${nameY}="${num(y)}"`;

/** Where a label stands, rounded like the drawing. */
export function roundBox({ x, y, width, height }: Box): Box {
  const round = (value: number): number => inHundredths(value) / 100;
  return { x: round(x), y: round(y), width: round(width), height: round(height) };
}

/** A number for the file: hundredths of a mm, no needless zeros. */
const num = (value: number): string => written(inHundredths(value));

function inHundredths(value: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`A drawing holds the length ${value}; every length must be finite.`);
  return Math.round(value * 100);
}

function written(hundredths: number): string {
  const size = Math.abs(hundredths);
  const whole = Math.floor(size / 100);
  const rest = size - 100 * whole;
  const sign = hundredths < 0 ? '-' : '';
  if (rest === 0) return whole === 0 ? '0' : `${sign}${whole}`;
  const figures = rest % 10 === 0 ? `${rest / 10}` : rest < 10 ? `0${rest}` : `${rest}`;
  return `${sign}${whole === 0 ? '' : whole}.${figures}`;
}

/** Dots of a thin line are 0.125 mm long, so dashes keep a third decimal. */
const fine = (value: number): string => String(Number(value.toFixed(3)));

const escaped = (words: string): string => words.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
