import type { Box, DrawnPicture } from '../../../src/draw/index.ts';
import type { Mark } from '../../../src/draw/kit/marks.ts';
import { labelBoxes } from '../../../src/draw/kit/marks.ts';
import { readPaths } from '../kit/read-paths.ts';
import { toldText } from '../../../src/draw/kit/told.ts';
import type { Vec2 } from '../../../src/model/index.ts';

/** Pairs of labels that overlap by more than 0.05 mm, as text. */
export function overlaps(labels: readonly Box[]): readonly string[] {
  return labels.flatMap((a, index) => labels.slice(index + 1).filter((b) => meet(a, b)).map((b) => `${show(a)} on ${show(b)}`));
}

/** Labels that stick out of the picture. */
export function outside({ labels, width, height }: DrawnPicture): readonly string[] {
  return labels.filter(({ x, y, width: w, height: h }) => x < 0 || y < 0 || x + w > width || y + h > height).map(show);
}

/** Points of lines and areas that stick out of the picture, read from the SVG text. */
export function pointsOutside({ svg, width, height }: DrawnPicture): readonly string[] {
  return readPaths(svg).flatMap(({ points }) => points)
    .filter(([x, y]) => x < -0.01 || y < -0.01 || x > width + 0.01 || y > height + 0.01)
    .map((point) => point.join(' '));
}

/** Texts of a picture in the order they stand in the file. */
export function texts({ svg }: DrawnPicture): readonly string[] {
  return [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, words = '']) => words);
}

/** Every line of a picture, views opened. */
export function linesOf(marks: readonly Mark[]): readonly (Mark & { mark: 'line' })[] {
  return marks.flatMap((mark): readonly (Mark & { mark: 'line' })[] => {
    if (mark.mark === 'view') return linesOf(mark.marks);
    return mark.mark === 'line' ? [mark] : [];
  });
}

/** Figures that a line runs through; grey and panel lines count as much as dimension lines. Ringed numerals stand on white. */
export function struckFigures(marks: readonly Mark[]): readonly string[] {
  const figures = flat(marks).filter((mark) => mark.mark === 'figure' || mark.mark === 'fraction');
  const lines = linesOf(marks);
  return figures.flatMap((mark) => {
    const [box] = labelBoxes([mark]);
    if (!box) return [];
    const struck = lines.find(({ points, closed }) => segments(points, closed).some(([from, to]) => crosses(box, from, to)));
    return struck ? [`${mark.mark === 'figure' ? toldText(mark.told) : 'fraction'} at ${show(box)} by ${struck.pen.name}`] : [];
  });
}

export function flat(marks: readonly Mark[]): readonly Mark[] {
  return marks.flatMap((mark) => (mark.mark === 'view' ? flat(mark.marks) : [mark]));
}

/** The view of that name, or a thrown error. */
export function viewOf(marks: readonly Mark[], name: string): Mark & { mark: 'view' } {
  const found = marks.find((mark): mark is Mark & { mark: 'view' } => mark.mark === 'view' && mark.name === name);
  if (!found) throw new Error(`no view ${name}`);
  return found;
}

export function widthAndHeight(points: readonly Vec2[]): Vec2 {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
}

function segments(points: readonly Vec2[], closed: boolean): readonly (readonly [Vec2, Vec2])[] {
  const ring = closed ? [...points, ...points.slice(0, 1)] : points;
  return ring.slice(1).map((to, index) => [ring[index] ?? to, to]);
}

/** Whether a segment passes through a box shrunk by 0.1 mm. */
function crosses({ x, y, width, height }: Box, from: Vec2, to: Vec2): boolean {
  const low: Vec2 = [x + 0.1, y + 0.1];
  const high: Vec2 = [x + width - 0.1, y + height - 0.1];
  let [enter, leave] = [0, 1];
  for (const axis of [0, 1] as const) {
    const run = to[axis] - from[axis];
    if (Math.abs(run) < 1e-12) {
      if (from[axis] < low[axis] || from[axis] > high[axis]) return false;
      continue;
    }
    const [a, b] = [(low[axis] - from[axis]) / run, (high[axis] - from[axis]) / run];
    enter = Math.max(enter, Math.min(a, b));
    leave = Math.min(leave, Math.max(a, b));
  }
  return enter < leave;
}

function meet(a: Box, b: Box): boolean {
  const over = 0.05;
  return a.x + a.width > b.x + over && b.x + b.width > a.x + over && a.y + a.height > b.y + over && b.y + b.height > a.y + over;
}

function show({ x, y, width, height }: Box): string {
  return `[${x.toFixed(1)} ${y.toFixed(1)} ${width.toFixed(1)}×${height.toFixed(1)}]`;
}
