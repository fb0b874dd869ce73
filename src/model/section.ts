import type { Vec2 } from './types.ts';
import { creasePlaces, halfCutPlace, type Wrap } from './wrap.ts';

/** The turn of each crease and of the tab at a stage of folding, in rad. */
interface Turns {
  readonly creases: readonly number[];
  readonly tab: number;
}

/** Where the tab lies at a stage: its hinge on the outer skin and its heading, for holes and snips. */
export interface TabPlace {
  readonly hinge: Vec2;
  readonly heading: number;
}

/** The panel's edge with one flap, in coordinates a (outwards from the tube's axis line) and b (over the inner face). */
export interface Section {
  /** Closed, anticlockwise. */
  readonly outline: readonly Vec2[];
  readonly tab: TabPlace;
}

/** Under this opening the half-cut is drawn closed; a crack without width is no solid. */
const CLOSED = 0.02;

/**
 * Turns at a stage from 0 (flat) to 1 (tab on the panel): the creases from the inside outwards but for the
 * last, then the tab back, then the last crease presses the tab down.
 */
export function turnsAt(wrap: Wrap, stage: number): Turns {
  const moves = wrap.creases + 1;
  const done = (move: number): number => Math.min(1, Math.max(0, stage * moves - move));
  const creases = wrap.path.creases.map(({ turn }, index) => turn * done(index === wrap.creases - 1 ? index + 1 : index));
  return { creases, tab: wrap.turnBack * done(wrap.creases - 1) };
}

const along = (from: Vec2, heading: number, distance: number): Vec2 =>
  [from[0] + distance * Math.cos(heading), from[1] + distance * Math.sin(heading)];

const toInner = (from: Vec2, heading: number, distance: number): Vec2 => along(from, heading + Math.PI / 2, distance);

/** The corner of two faces offset by `distance` to the inner side of a bend from `before` to `after`. */
function mitre(at: Vec2, before: number, after: number, distance: number): Vec2 {
  const reach = distance / Math.cos((after - before) / 2);
  return toInner(at, (before + after) / 2, reach);
}

/**
 * Cross-section of the panel from `start` (mm from the axis line, negative is inside) through the flap at a
 * stage of folding. Facets keep their thickness; at a crease the inner side is crushed to the mitre.
 */
export function foldSection(wrap: Wrap, stage: number, start: number): Section {
  const turns = turnsAt(wrap, stage);
  const inward = wrap.neutralLayer * wrap.thickness;
  const outward = inward - wrap.thickness;
  const places = creasePlaces(wrap);
  const inner: Vec2[] = [[start, 0]];
  const outer: Vec2[] = [[start, -wrap.thickness]];

  let at: Vec2 = [start, -inward];
  let heading = 0;
  let reached = start;
  places.forEach((place, index) => {
    at = along(at, heading, place - reached);
    const next = heading + (turns.creases[index] ?? 0);
    inner.push(mitre(at, heading, next, inward));
    outer.push(mitre(at, heading, next, outward));
    heading = next;
    reached = place;
  });

  const cut = along(at, heading, halfCutPlace(wrap) - reached);
  const hinge = toInner(cut, heading, outward);
  const tabHeading = heading - turns.tab;
  if (turns.tab > CLOSED) inner.push(...opening(wrap, hinge, heading, tabHeading));
  const end = along(hinge, tabHeading, wrap.tab);
  inner.push(toInner(end, tabHeading, wrap.thickness));
  outer.push(...(turns.tab > CLOSED ? [hinge] : []), end);

  return { outline: [...outer, ...inner.reverse()], tab: { hinge, heading: tabHeading } };
}

/** The opened half-cut: the ends of the run and of the tab, held by the outer skin alone. */
function opening(wrap: Wrap, hinge: Vec2, run: number, tab: number): Vec2[] {
  return [
    toInner(hinge, run, wrap.thickness),
    toInner(hinge, run, wrap.skin),
    toInner(hinge, tab, wrap.skin),
    toInner(hinge, tab, wrap.thickness),
  ];
}
