import type { Vec2 } from '../../model/index.ts';
import type { Mark } from '../../scene/index.ts';
import type { Box } from '../types.ts';
import { apart, boxOf, distanceToPath, minus, pathLength, pathRest, pathStart, plus, unit } from '../kit/geometry.ts';
import { onPaper, type Fit } from '../kit/fit.ts';
import { depthOf, project, type Plane } from './plane.ts';
import { area, circle, line, outline, type Mark as Drawn } from '../kit/marks.ts';
import { band, haloOf, pens } from '../kit/pens.ts';
import { arrow } from './sizes.ts';

/**
 * An arrow on paper: its middle line with the tip last. `broad` is a white band with a black outline,
 * `thin` is solid black, `towards` and `away` stand for a motion along the line of sight: the arrow's
 * point or its tail feathers in a ring, as in field diagrams (common practice, no source).
 */
export interface Arrow {
  readonly form: 'broad' | 'thin' | 'towards' | 'away';
  readonly path: readonly Vec2[];
}

type ArrowMark = Extract<Mark, { mark: 'arrow' }>;

/** All arrows of a picture. Where they stand close or are many, all take the thin form. */
export function arrowsOnPaper(marks: readonly Mark[], plane: Plane, fit: Fit): Arrow[] {
  const arrows = marks.filter((mark) => mark.mark === 'arrow').map((mark) => arrowOnPaper(mark, plane, fit));
  return crowded(arrows) ? arrows.map((one) => (one.form === 'broad' ? { ...one, form: 'thin' } : one)) : arrows;
}

function arrowOnPaper(mark: ArrowMark, plane: Plane, fit: Fit): Arrow {
  const path = mark.path.map((place) => onPaper(fit, project(plane, place)));
  const tip = mark.path[mark.path.length - 1];
  const tail = mark.path[0];
  if (pathLength(path) >= arrow.endOn || !tip || !tail) return pathArrow(path);
  const nearer = depthOf(plane, [tip[0] - tail[0], tip[1] - tail[1], tip[2] - tail[2]]) > 0;
  return { form: nearer ? 'towards' : 'away', path: path.slice(-1) };
}

/** An arrow along a path on paper, lengthened backwards along its first stretch when it is too short. */
export function pathArrow(path: readonly Vec2[]): Arrow {
  const lacking = arrow.least - pathLength(path);
  const tail = path[0];
  const start = tail && path.map((p) => unit(minus(p, tail))).find((way) => way !== null);
  const whole = tail && start && lacking > 0 ? [plus(tail, start, -lacking), ...path.slice(1)] : path;
  const broad = pathLength(whole) >= arrow.broadFrom && !bendsTightly(whole);
  return { form: broad ? 'broad' : 'thin', path: whole };
}

/** Whether the band would fold over itself: within its own width the path turns by more than a right angle. */
function bendsTightly(path: readonly Vec2[]): boolean {
  return path.some((p, i) => {
    const before = path.slice(0, i).findLast((q) => apart(p, q) >= arrow.broad.shaft);
    const after = path.slice(i + 1).find((q) => apart(p, q) >= arrow.broad.shaft);
    if (!before || !after) return false;
    return (p[0] - before[0]) * (after[0] - p[0]) + (p[1] - before[1]) * (after[1] - p[1]) < 0;
  });
}

function crowded(arrows: readonly Arrow[]): boolean {
  const broad = arrows.filter((one) => one.form === 'broad');
  if (broad.length > arrow.mostBroad) return true;
  return broad.some((one, i) => broad.slice(i + 1).some((other) => nearest(one.path, other.path) < arrow.apart));
}

function nearest(a: readonly Vec2[], b: readonly Vec2[]): number {
  return Math.min(...a.map((p) => distanceToPath(p, b)), ...b.map((p) => distanceToPath(p, a)));
}

/** Half the width an arrow takes to either side of its path. */
export function arrowReach({ form }: Arrow): number {
  if (form === 'broad') return arrow.broad.headWidth / 2;
  return form === 'thin' ? arrow.thin.headWidth / 2 : arrow.endOnRadius + 0.5;
}

export function arrowBox(one: Arrow): Box {
  return boxOf(one.path, arrowReach(one));
}

/** The corners of the head: tip, then left and right of its base, and the middle of the base. */
export function arrowHead(one: Arrow): { readonly corners: readonly [Vec2, Vec2, Vec2]; readonly base: Vec2 } | null {
  if (one.form !== 'broad' && one.form !== 'thin') return null;
  const { headLength, headWidth } = arrow[one.form];
  const tip = one.path[one.path.length - 1];
  const back = pathRest(one.path, pathLength(one.path) - headLength)[0];
  const way = tip && back && unit(minus(tip, back));
  if (!tip || !way) return null;
  const base = plus(tip, way, -headLength);
  const across: Vec2 = [-way[1], way[0]];
  return { corners: [tip, plus(base, across, headWidth / 2), plus(base, across, -headWidth / 2)], base };
}

/** The arrow as it is drawn. */
export function drawArrow(one: Arrow): readonly Drawn[] {
  if (one.form === 'towards' || one.form === 'away') return endOnSign(one);
  return one.form === 'broad' ? broadArrow(one) : thinArrow(one);
}

/** Black first, then the same form in white one line's width smaller: shaft and head join without a seam. */
function broadArrow(one: Arrow): readonly Drawn[] {
  const head = arrowHead(one);
  if (!head) return [];
  const { shaft, line: rim } = arrow.broad;
  const length = pathLength(one.path);
  const whole = pathStart(one.path, length - arrow.broad.headLength + 0.1);
  const inner = pathStart(pathRest(one.path, rim), length - rim - arrow.broad.headLength + rim + 0.1);
  return [
    line(band(shaft), ...whole),
    area('ink', head.corners),
    line(band(shaft - 2 * rim, 'white'), ...inner),
    area('white', shrunken(head.corners, rim)),
  ];
}

function thinArrow(one: Arrow): readonly Drawn[] {
  const head = arrowHead(one);
  if (!head) return [];
  const { shaft, headLength } = arrow.thin;
  const whole = pathStart(one.path, pathLength(one.path) - headLength + 0.1);
  return [
    line(haloOf(shaft), ...whole),
    outline(haloOf(0), head.corners),
    area('ink', head.corners),
    line(band(shaft), ...whole),
  ];
}

function endOnSign(one: Arrow): readonly Drawn[] {
  const at = one.path[0];
  if (!at) return [];
  const radius = arrow.endOnRadius;
  const ring = circle(at, radius, pens.motion, 'white');
  if (one.form === 'towards') return [ring, circle(at, 0.9, null, 'ink')];
  const arm = radius * Math.SQRT1_2;
  const feather = (sign: number): Drawn => line(pens.sign, plus(at, [-arm, -arm * sign]), plus(at, [arm, arm * sign]));
  return [ring, feather(1), feather(-1)];
}

/** The triangle with each side moved inwards by `by`: scaled about the middle of its inscribed circle. */
function shrunken(corners: readonly [Vec2, Vec2, Vec2], by: number): Vec2[] {
  const [a, b, c] = corners;
  const [toA, toB, toC] = [apart(b, c), apart(c, a), apart(a, b)];
  const round = toA + toB + toC;
  const middle: Vec2 = [
    (a[0] * toA + b[0] * toB + c[0] * toC) / round,
    (a[1] * toA + b[1] * toB + c[1] * toC) / round,
  ];
  const area = Math.abs((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1])) / 2;
  const share = 1 - by / ((2 * area) / round);
  return corners.map((corner) => plus(middle, minus(corner, middle), share));
}
