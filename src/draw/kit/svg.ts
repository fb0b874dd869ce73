import type { Vec2 } from '../../model/index.ts';
import type { Box, DrawnPicture } from '../types.ts';
import { inks } from './inks.ts';
import { fontSize } from './lettering.ts';
import type { Weight } from './lettering.ts';
import type { Mark } from './marks.ts';
import { fractionSize, labelBoxes, orderRadius } from './marks.ts';
import type { Pen } from './pens.ts';
import { toldText } from './told.ts';
import { dashLengths, dashStart } from './pens.ts';

/** Size of a picture in mm of paper. */
export interface Paper {
  readonly width: number;
  readonly height: number;
}

/** Turns marks into a finished picture: lengths rounded to 0.01 mm, marks painted in their order. */
export function toPicture(paper: Paper, marks: readonly Mark[]): DrawnPicture {
  const { width, height } = paper;
  const head = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${num(width)} ${num(height)}" width="${num(width)}mm" height="${num(height)}mm" direction="ltr" fill="none" stroke-linejoin="round" font-family="Noto Sans">`;
  return {
    svg: `${head}${marks.map(svgOf).join('')}</svg>`,
    width,
    height,
    labels: labelBoxes(marks).map(roundBox),
    newPartShares: {},
  };
}

function svgOf(mark: Mark): string {
  switch (mark.mark) {
    case 'line':
      return `<path d="${path(mark.points, mark.closed)}" ${stroke(mark.pen, lengthOf(mark.points, mark.closed))}/>`;
    case 'area':
      return `<path d="${mark.rings.map((ring) => path(ring, true)).join('')}" fill="${inks[mark.fill]}" fill-rule="evenodd"/>`;
    case 'circle':
      return `<circle ${at(mark.centre, 'cx', 'cy')} r="${num(mark.radius)}"${mark.fill ? ` fill="${inks[mark.fill]}"` : ''}${mark.pen ? ` ${stroke(mark.pen, 0)}` : ''}/>`;
    case 'figure':
      return text(toldText(mark.told), mark.centre, mark.cap, mark.weight, mark.turned);
    case 'order':
      return svgOf({ mark: 'circle', centre: mark.centre, radius: orderRadius(mark.told, mark.cap), pen: mark.pen, fill: 'white' })
        + text(toldText(mark.told), mark.centre, mark.cap, 700, false);
    case 'fraction':
      return fraction(mark);
    case 'view':
      return `<g data-view="${mark.name}" data-scale="${Number(mark.scale.toFixed(6))}">${mark.marks.map(svgOf).join('')}</g>`;
  }
}

function fraction(mark: Mark & { mark: 'fraction' }): string {
  const [x, y] = mark.centre;
  const half = fractionSize(mark.numerator, mark.denominator, mark.cap)[0] / 2;
  const away = mark.cap / 2 + 1.2;
  return text(String(mark.numerator), [x, y - away], mark.cap, 700, false)
    + svgOf({ mark: 'line', pen: mark.pen, points: [[x - half, y], [x + half, y]], closed: false })
    + text(String(mark.denominator), [x, y + away], mark.cap, 700, false);
}

function text(words: string, centre: Vec2, cap: number, weight: Weight, turned: boolean): string {
  const turn = turned ? ` transform="rotate(-90 ${num(centre[0])} ${num(centre[1])})"` : '';
  return `<text ${at([centre[0], centre[1] + cap / 2], 'x', 'y')} font-size="${num(fontSize(cap))}" font-weight="${weight}" text-anchor="middle" fill="${inks.ink}"${turn}>${words}</text>`;
}

function stroke(pen: Pen, length: number): string {
  const dashes = dashLengths(pen.type, pen.width);
  const start = num(dashStart(pen.type, pen.width, length));
  const dashing = dashes.length > 0 ? ` stroke-dasharray="${dashes.map(fine).join(' ')}"${start === '0' ? '' : ` stroke-dashoffset="${start}"`}` : '';
  return `data-line="${pen.name}" stroke="${inks[pen.colour]}" stroke-width="${num(pen.width)}"${dashing}`;
}

function path(points: readonly Vec2[], closed: boolean): string {
  return points.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${num(x)} ${num(y)}`).join('') + (closed ? 'Z' : '');
}

function lengthOf(points: readonly Vec2[], closed: boolean): number {
  const ring = closed ? [...points, ...points.slice(0, 1)] : points;
  return ring.slice(1).reduce((sum, [x, y], index) => {
    const [fromX, fromY] = ring[index] ?? [x, y];
    return sum + Math.hypot(x - fromX, y - fromY);
  }, 0);
}

function at([x, y]: Vec2, nameX: string, nameY: string): string {
  return `${nameX}="${num(x)}" ${nameY}="${num(y)}"`;
}

function roundBox(box: Box): Box {
  const round = (value: number) => Number(num(value));
  return { x: round(box.x), y: round(box.y), width: round(box.width), height: round(box.height) };
}

function num(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`A drawing holds the length ${value}; every length must be finite.`);
  return String(Math.round(value * 100) / 100 + 0);
}

/** Dots of a thin line are 0.125 mm long, so dashes keep a third decimal. */
function fine(value: number): string {
  return String(Number(value.toFixed(3)));
}
