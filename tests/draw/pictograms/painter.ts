/**
 * Reads the SVG of a pictogram into shapes on the grid and samples their colours. It knows exactly what the pen
 * of the pictograms may write (`g` with translate and rotate, `path`, `circle`) and refuses anything else.
 */
import { flatten, type Point, type Polyline } from './outline.ts';

export interface Shape {
  readonly outline: readonly Polyline[];
  readonly fill: string;
  readonly stroke: string;
  readonly width: number;
}

type Move = (point: Point) => Point;

const allowed: Readonly<Record<string, readonly string[]>> = {
  g: ['transform'],
  path: ['d', 'fill', 'stroke', 'stroke-width', 'stroke-linecap', 'stroke-linejoin'],
  circle: ['cx', 'cy', 'r', 'fill', 'stroke', 'stroke-width'],
};

function attributes(tag: string, text: string): ReadonlyMap<string, string> {
  const found = new Map([...text.matchAll(/([\w-]+)="([^"]*)"/g)].map(([, name = '', value = '']) => [name, value]));
  for (const name of found.keys()) if (!allowed[tag]?.includes(name)) throw new Error(`attribute ${name} of ${tag} is not allowed`);
  return found;
}

function moveOf(transform: string): Move {
  const match = /^translate\((-?[\d.]+) (-?[\d.]+)\) rotate\((-?[\d.]+)\)$/.exec(transform);
  if (match === null) throw new Error(`transform ${transform} is not allowed`);
  const [x, y, angle] = [Number(match[1]), Number(match[2]), (Number(match[3]) * Math.PI) / 180];
  return ([px, py]) => [x + px * Math.cos(angle) - py * Math.sin(angle), y + px * Math.sin(angle) + py * Math.cos(angle)];
}

const circle = (x: number, y: number, radius: number): readonly Polyline[] => [{
  points: Array.from({ length: 64 }, (_, i) => [x + radius * Math.cos((i * Math.PI) / 32), y + radius * Math.sin((i * Math.PI) / 32)] as const),
  closed: true,
}];

/** All shapes of a fragment, in painting order. */
export function shapesOf(svg: string): readonly Shape[] {
  const shapes: Shape[] = [];
  const moves: Move[] = [];
  const rest = svg.replaceAll(/<(\/?)(\w+)([^<>]*?)\/?>/g, (_, closing: string, tag: string, text: string) => {
    if (allowed[tag] === undefined) throw new Error(`element ${tag} is not allowed`);
    if (closing) { moves.pop(); return ''; }
    const found = attributes(tag, text);
    const number = (name: string): number => Number(found.get(name) ?? NaN);
    if (tag === 'g') { moves.push(moveOf(found.get('transform') ?? '')); return ''; }
    const outline = tag === 'path' ? flatten(found.get('d') ?? '') : circle(number('cx'), number('cy'), number('r'));
    const moved = outline.map(({ points, closed }) => ({ closed, points: points.map((point) => moves.reduceRight((p, move) => move(p), point)) }));
    const stroke = found.get('stroke') ?? 'none';
    shapes.push({ outline: moved, fill: found.get('fill') ?? 'missing', stroke, width: stroke === 'none' ? 0 : number('stroke-width') });
    return '';
  });
  if (rest !== '' || moves.length > 0) throw new Error(`stray text or open group: ${rest}`);
  return shapes;
}

/** Least and greatest x and y of the ink, lines' widths included. */
export function inkBounds(shapes: readonly Shape[]): { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number } {
  const spread = shapes.flatMap(({ outline, width }) => outline.flatMap(({ points }) => points.map(([x, y]) => [x, y, width / 2] as const)));
  return {
    left: Math.min(...spread.map(([x, , w]) => x - w)),
    top: Math.min(...spread.map(([, y, w]) => y - w)),
    right: Math.max(...spread.map(([x, , w]) => x + w)),
    bottom: Math.max(...spread.map(([, y, w]) => y + w)),
  };
}

const edgesOf = ({ points, closed }: Polyline, close: boolean): (readonly [Point, Point])[] =>
  points.flatMap((point, i) => {
    const next = points[i + 1] ?? (close || closed ? points[0] : undefined);
    return next === undefined ? [] : [[point, next] as const];
  });

function windingAt(x: number, y: number, edges: readonly (readonly [Point, Point])[]): number {
  let winding = 0;
  for (const [[x1, y1], [x2, y2]] of edges) {
    if (y1 > y === y2 > y) continue;
    if (x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)) winding += y2 > y1 ? 1 : -1;
  }
  return winding;
}

function distanceTo(x: number, y: number, [[x1, y1], [x2, y2]]: readonly [Point, Point]): number {
  const [dx, dy] = [x2 - x1, y2 - y1];
  const square = dx * dx + dy * dy;
  const t = square === 0 ? 0 : Math.min(1, Math.max(0, ((x - x1) * dx + (y - y1) * dy) / square));
  return Math.hypot(x - x1 - t * dx, y - y1 - t * dy);
}

/** The edges that come as near to that height. */
const near = (edges: readonly (readonly [Point, Point])[], y: number, within: number): readonly (readonly [Point, Point])[] =>
  edges.filter(([[, one], [, other]]) => Math.min(one, other) - within <= y && y <= Math.max(one, other) + within);

/** Colour at the middle of each cell, row by row; null where nothing is painted. All lines have round ends and joins. */
export function paint(shapes: readonly Shape[], width: number, height: number, cell: number): readonly (string | null)[] {
  const [columns, rows] = [Math.round(width / cell), Math.round(height / cell)];
  const colours = new Array<string | null>(columns * rows).fill(null);
  for (const shape of shapes) {
    const { outline, fill, stroke, width: lineWidth } = shape;
    const { left, top, right, bottom } = inkBounds([shape]);
    const area = outline.flatMap((line) => edgesOf(line, true));
    const lines = outline.flatMap((line) => edgesOf(line, false));
    for (let row = 0; row < rows; row++) {
      const y = (row + 0.5) * cell;
      if (y < top || y > bottom) continue;
      const nearEdges = near(area, y, 0);
      const nearLines = near(lines, y, lineWidth / 2);
      for (let column = 0; column < columns; column++) {
        const x = (column + 0.5) * cell;
        if (x < left || x > right) continue;
        if (fill !== 'none' && windingAt(x, y, nearEdges) !== 0) colours[row * columns + column] = fill;
        if (lineWidth > 0 && nearLines.some((edge) => distanceTo(x, y, edge) <= lineWidth / 2)) colours[row * columns + column] = stroke;
      }
    }
  }
  return colours;
}
