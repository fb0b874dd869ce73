/** Turns SVG path data into polylines, for the tests' own painter. Curves become short straights. */

export type Point = readonly [number, number];

export interface Polyline {
  readonly points: readonly Point[];
  readonly closed: boolean;
}

const parts = 16;

const cubic = (a: Point, b: Point, c: Point, d: Point): Point[] =>
  Array.from({ length: parts }, (_, i) => {
    const t = (i + 1) / parts;
    const u = 1 - t;
    const along = (k: 0 | 1): number => u ** 3 * a[k] + 3 * u * u * t * b[k] + 3 * u * t * t * c[k] + t ** 3 * d[k];
    return [along(0), along(1)] as const;
  });

const quadratic = (a: Point, b: Point, c: Point): Point[] =>
  cubic(a, [a[0] + (2 / 3) * (b[0] - a[0]), a[1] + (2 / 3) * (b[1] - a[1])], [c[0] + (2 / 3) * (b[0] - c[0]), c[1] + (2 / 3) * (b[1] - c[1])], c);

/** Ellipse arc with unturned axes: SVG 1.1, appendix F.6.5 (from memory). */
function arc(from: Point, rx: number, ry: number, large: boolean, sweep: boolean, to: Point): Point[] {
  const [hx, hy] = [(from[0] - to[0]) / 2 / rx, (from[1] - to[1]) / 2 / ry];
  const half = hx * hx + hy * hy;
  const grow = Math.max(1, Math.sqrt(half));
  const factor = (large === sweep ? -1 : 1) * Math.sqrt(Math.max(0, 1 / half - 1 / (grow * grow)));
  const [cx, cy] = [factor * hy, -factor * hx];
  const start = Math.atan2(hy - cy, hx - cx);
  const end = Math.atan2(-hy - cy, -hx - cx);
  const turn = ((end - start) % (2 * Math.PI) + 2 * Math.PI) % (2 * Math.PI) - (sweep ? 0 : 2 * Math.PI);
  const [mx, my] = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const scale = Math.hypot(hx - cx, hy - cy);
  return Array.from({ length: parts * 2 }, (_, i) => {
    const angle = start + (turn * (i + 1)) / (parts * 2);
    return [mx + rx * (cx + scale * Math.cos(angle)), my + ry * (cy + scale * Math.sin(angle))] as const;
  });
}

const counts: Readonly<Record<string, number>> = { M: 2, L: 2, H: 1, V: 1, C: 6, Q: 4, T: 2, A: 7, Z: 0 };

/** The command letters of path data with their numbers, repeated letters written out. */
function* commands(d: string): Generator<{ readonly letter: string; readonly values: readonly number[] }> {
  for (const [, letter = '', rest = ''] of d.matchAll(/([a-zA-Z])([^a-zA-Z]*)/g)) {
    const count = counts[letter.toUpperCase()];
    if (count === undefined) throw new Error(`path command ${letter} is unknown to the test painter`);
    const values = (rest.match(/-?\d*\.?\d+/g) ?? []).map(Number);
    if (count === 0 ? values.length > 0 : values.length === 0 || values.length % count) throw new Error(`path command ${letter}${rest} has a wrong count of numbers`);
    for (let i = 0; i === 0 || i < values.length; i += count || 1) yield { letter, values: values.slice(i, i + count) };
  }
}

export function flatten(d: string): readonly Polyline[] {
  const lines: { points: Point[]; closed: boolean }[] = [];
  let at: Point = [0, 0];
  let lastControl: Point | null = null;
  for (const { letter, values } of commands(d)) {
    const base: Point = letter === letter.toLowerCase() ? at : [0, 0];
    const point = (i: number): Point => [base[0] + (values[i] ?? NaN), base[1] + (values[i + 1] ?? NaN)];
    const current = lines.at(-1);
    const push = (points: readonly Point[]): void => {
      if (current === undefined) throw new Error(`path data ${d} does not begin with M`);
      current.points.push(...points);
      at = points.at(-1) ?? at;
    };
    let control: Point | null = null;
    switch (letter.toUpperCase()) {
      case 'M': at = point(0); lines.push({ points: [at], closed: false }); break;
      case 'L': push([point(0)]); break;
      case 'H': push([[base[0] + (values[0] ?? NaN), at[1]]]); break;
      case 'V': push([[at[0], base[1] + (values[0] ?? NaN)]]); break;
      case 'C': push(cubic(at, point(0), point(2), point(4))); break;
      case 'Q': control = point(0); push(quadratic(at, control, point(2))); break;
      case 'T': control = lastControl === null ? at : [2 * at[0] - lastControl[0], 2 * at[1] - lastControl[1]]; push(quadratic(at, control, point(0))); break;
      case 'A': push(arc(at, values[0] ?? NaN, values[1] ?? NaN, values[3] === 1, values[4] === 1, point(5))); break;
      default: if (current !== undefined) { current.closed = true; at = current.points[0] ?? at; }
    }
    lastControl = control;
  }
  return lines;
}
