import { foldSection, patternWrap, turnsAt, type Flap, type FlatPattern, type Vec2, type Vec3 } from '../../model/index.ts';
import type { Piece } from './convex.ts';
import { prism } from './prisms.ts';

/** One straight strip of a flap at a stage of its folding: its cross-section, and how far in its ends stand at each corner. */
interface Facet {
  /** In coordinates a (outwards from the tube's axis) and b (over the panel's inner face), mm. */
  readonly outline: readonly Vec2[];
}

/** The facets of a flap at a stage (0 flat … 1 done), from the inside outwards; the last is the tab. As many at every stage. */
export function facetsAt(pattern: FlatPattern, flap: Flap, stage: number): readonly Facet[] {
  const wrap = patternWrap(pattern, flap);
  const { outline, tab } = foldSection(wrap, stage, 0);
  const creases = wrap.creases;
  const outer = outline.slice(0, creases + 1);
  const inner = [...outline].reverse().slice(0, creases + 1);
  const runHeading = tab.heading + turnsAt(wrap, stage).tab;
  const end = along(tab.hinge, tab.heading, wrap.tab);
  const over = (at: Vec2, heading: number): Vec2 => along(at, heading + Math.PI / 2, wrap.thickness);
  const corner = (list: readonly Vec2[], index: number): Vec2 => list[index] ?? tab.hinge;
  return [
    ...Array.from({ length: creases }, (_, index) => ({ outline: [corner(outer, index), corner(outer, index + 1), corner(inner, index + 1), corner(inner, index)] })),
    { outline: [corner(outer, creases), tab.hinge, over(tab.hinge, runHeading), corner(inner, creases)] },
    { outline: [tab.hinge, end, over(end, tab.heading), over(tab.hinge, tab.heading)] },
  ];
}

const along = ([a, b]: Vec2, heading: number, distance: number): Vec2 => [a + distance * Math.cos(heading), b + distance * Math.sin(heading)];

const QUARTERS = { right: 0, back: 1, left: 2, front: 3 } as const;

/** From a flap's section (a outwards from the tube's axis, s along the side, b over the inner face) into panel coordinates. */
function flapPlace(pattern: FlatPattern, flap: Flap): (a: number, b: number, s: number) => Vec3 {
  const out = flap.side === 'left' || flap.side === 'right' ? pattern.axes[0] : pattern.axes[1];
  const angle = (QUARTERS[flap.side] * Math.PI) / 2;
  const [cos, sin] = [Math.round(Math.cos(angle)), Math.round(Math.sin(angle))];
  return (a, b, s) => [cos * (out + a) - sin * s, sin * (out + a) + cos * s, b];
}

/** A flap at a stage as convex bodies; the tab with its corners snipped. */
export function flapPieces(pattern: FlatPattern, flap: Flap, stage: number): readonly Piece[] {
  const place = flapPlace(pattern, flap);
  const facets = facetsAt(pattern, flap, stage);
  return facets.map(({ outline }, index) => (index === facets.length - 1
    ? tabPiece(outline, flap, place)
    : prism(outline, flap.from, flap.to, place)));
}

/** The tab: narrower at its free edge by the snips. */
function tabPiece(outline: readonly Vec2[], flap: Flap, place: (a: number, b: number, s: number) => Vec3): Piece {
  const [hinge = [0, 0], end = [0, 0], , over = [0, 0]] = outline;
  const width = Math.hypot(end[0] - hinge[0], end[1] - hinge[1]);
  const thickness = Math.hypot(over[0] - hinge[0], over[1] - hinge[1]);
  const [ea, eb] = [(end[0] - hinge[0]) / width, (end[1] - hinge[1]) / width];
  const [ta, tb] = [(over[0] - hinge[0]) / thickness, (over[1] - hinge[1]) / thickness];
  const snip = Math.min(flap.corner, width);
  const trapezium: readonly Vec2[] = [
    [0, flap.from], [width - snip, flap.from], [width, flap.from + snip], [width, flap.to - snip], [width - snip, flap.to], [0, flap.to],
  ];
  return prism(trapezium, 0, thickness, (u, v, w) => place(hinge[0] + u * ea + w * ta, hinge[1] + u * eb + w * tb, v));
}

/** Each crease in turn, in steps so small that nothing bulges by more than told, mm; the half-cut and the last crease too. */
export function flapStages(flap: Flap, bulge: number): readonly number[] {
  const moves = flap.creases.length + 1;
  const farthest = flap.edge - (flap.creases[0] ?? 0);
  const step = 2 * Math.acos(1 - bulge / farthest);
  const steps = moves * Math.ceil(Math.max(flap.creaseAngle, flap.turnBack) / step);
  return Array.from({ length: steps + 1 }, (_, index) => index / steps);
}
