import type { Bend, Vec2 } from '../types.ts';

/** What a section needs to know of its panel. Lengths mm. */
export interface Sheet {
  readonly thickness: number;
  readonly skin: number;
  /** k: the layer at k·t from the face a crease turns to keeps its length. */
  readonly neutralLayer: number;
}

/** Where a bent strip has come to: a point on the inner face, in coordinates a (outwards) and b (over the flat panel's inner face), and its heading. */
export interface Reached {
  readonly at: Vec2;
  readonly heading: number;
}

/** Under this opening a half-cut is drawn closed, rad; a crack without width is no solid. */
const CLOSED = 0.02;

const onward = ([a, b]: Vec2, heading: number, distance: number): Vec2 => [a + distance * Math.cos(heading), b + distance * Math.sin(heading)];

/** Over the inner face, square to the heading. */
const over = (at: Vec2, heading: number, height: number): Vec2 => onward(at, heading + Math.PI / 2, height);

/** How far each bend is turned at a stage from 0 (flat) to 1 (done): one after the other in the order given. */
export const turnsAt = (bends: readonly Bend[], order: readonly number[], stage: number): readonly number[] =>
  bends.map(({ turn }, place) => turn * Math.min(1, Math.max(0, stage * order.length - order.indexOf(place))));

/** Walks along the bent strip to a distance from its root line. */
export function reachedAt(sheet: Sheet, bends: readonly Bend[], turns: readonly number[], distance: number): Reached {
  return walk(sheet, bends, turns, Math.min(0, distance), distance).end;
}

/**
 * Cross-section of the strip between two distances from the root line, closed and anticlockwise. Facets keep their thickness:
 * a crease is crushed to the mitre on the side it turns to, a half-cut opens on the side it turns away from.
 */
export function chainSection(sheet: Sheet, bends: readonly Bend[], turns: readonly number[], from: number, to: number): readonly Vec2[] {
  const { inner, outer } = walk(sheet, bends, turns, from, to);
  return [...outer, ...inner.toReversed()];
}

interface Walked {
  readonly inner: readonly Vec2[];
  readonly outer: readonly Vec2[];
  readonly end: Reached;
}

function walk(sheet: Sheet, bends: readonly Bend[], turns: readonly number[], from: number, to: number): Walked {
  const inner: Vec2[] = [];
  const outer: Vec2[] = [];
  let reached: Reached = { at: [Math.min(0, from), 0], heading: 0 };
  let walked = Math.min(0, from);
  const push = ({ at, heading }: Reached): void => {
    inner.push(at);
    outer.push(over(at, heading, -sheet.thickness));
  };
  const goTo = (distance: number): void => {
    reached = { at: onward(reached.at, reached.heading, distance - walked), heading: reached.heading };
    walked = distance;
  };
  let begun = from <= walked;
  if (begun) push(reached);
  bends.forEach((bend, place) => {
    if (bend.at > to) return;
    if (!begun && bend.at > from) {
      goTo(from);
      push(reached);
      begun = true;
    }
    goTo(bend.at);
    const corner = bent(sheet, bend, turns[place] ?? 0, reached);
    if (begun) {
      inner.push(...corner.inner);
      outer.push(...corner.outer);
    }
    reached = corner.next;
  });
  if (!begun) {
    goTo(from);
    push(reached);
  }
  goTo(to);
  push(reached);
  return { inner, outer, end: reached };
}

interface Corner {
  readonly inner: readonly Vec2[];
  readonly outer: readonly Vec2[];
  readonly next: Reached;
}

function bent(sheet: Sheet, { is, turn: whole }: Bend, turn: number, { at, heading }: Reached): Corner {
  const { thickness } = sheet;
  const after = heading + turn;
  if (is === 'half-cut') return opened(sheet, whole < 0 ? 'inner' : 'outer', turn, at, heading);
  // Height of the layer that keeps its length over the inner face: a crease towards the outer face is the mirror image.
  const layer = whole >= 0 ? -sheet.neutralLayer * thickness : (sheet.neutralLayer - 1) * thickness;
  const corner = over(at, heading, layer);
  const mitre = (height: number): Vec2 => over(corner, heading + turn / 2, (height - layer) / Math.cos(turn / 2));
  return { inner: [mitre(0)], outer: [mitre(-thickness)], next: { at: over(corner, after, -layer), heading: after } };
}

/** A half-cut opens on one face and hangs on the skin of the other. */
function opened({ thickness, skin }: Sheet, face: 'inner' | 'outer', turn: number, at: Vec2, heading: number): Corner {
  const after = heading + turn;
  const hinge = face === 'inner' ? over(at, heading, -thickness) : at;
  const next: Reached = { at: face === 'inner' ? over(hinge, after, thickness) : hinge, heading: after };
  if (Math.abs(turn) <= CLOSED) return { inner: [], outer: [], next };
  const up = face === 'inner' ? 1 : -1;
  const crack = [[heading, thickness], [heading, skin], [after, skin], [after, thickness]].map(([way = 0, height = 0]) => over(hinge, way, up * height));
  return face === 'inner' ? { inner: crack, outer: [hinge], next } : { inner: [hinge], outer: crack, next };
}
