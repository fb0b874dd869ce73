import { Reals, Wholes, flag, real, whole } from './arrays.ts';
import type { Lines } from './candidates.ts';
import type { OpenGrid, Walk } from './grid.ts';
import { enter, gridOver, newWalk, sealGrid, walkAlong } from './grid.ts';
import { Links } from './links.ts';
import { newNodes, nodeAt } from './nodes.ts';
import type { Nodes } from './nodes.ts';
import type { Pieces } from './visible.ts';
import { onLine } from './visible.ts';

/** The visible lines as a plane network: links meet at nodes only. */
export interface Network {
  readonly nodes: Nodes;
  readonly links: Links;
}

/** Pieces between two different nodes. */
interface Spans {
  readonly count: number;
  /** Place of each span's piece in the list of pieces. */
  readonly piece: Int32Array;
  readonly a: Int32Array;
  readonly b: Int32Array;
  /** Least x y and greatest x y of each span, widened by a little more than the snapping distance. */
  readonly boxes: Float64Array;
  readonly stops: Stops;
}

/** Nodes on the way of spans, with their share of the span: a list for each span. */
interface Stops {
  /** The last stop of each span, or −1. */
  readonly last: Int32Array;
  /** The stop before, or −1. */
  readonly before: Wholes;
  readonly node: Wholes;
  readonly share: Reals;
}

/** Joins ends within `snap` mm, splits lines where they meet and keeps one of those that coincide. */
export function networkOf(lines: Lines, pieces: Pieces, snap: number): Network {
  const nodes = newNodes(snap);
  const spans = spansOf(nodes, lines, pieces);
  meetAll(nodes, spans);
  return { nodes, links: linksOf(lines, pieces, spans) };
}

function spansOf(nodes: Nodes, lines: Lines, pieces: Pieces): Spans {
  const [piece, as, bs] = [new Wholes(), new Wholes(), new Wholes()];
  for (let p = 0; p < pieces.line.length; p++) {
    const line = whole(pieces.line, p);
    const from = real(pieces.from, p);
    const to = real(pieces.to, p);
    const a = nodeAt(nodes, onLine(lines, line, from, 0), onLine(lines, line, from, 1));
    const b = nodeAt(nodes, onLine(lines, line, to, 0), onLine(lines, line, to, 1));
    if (a === b) continue;
    piece.push(p);
    as.push(a);
    bs.push(b);
  }
  const stops = { last: new Int32Array(piece.count).fill(-1), before: new Wholes(), node: new Wholes(), share: new Reals() };
  const [a, b] = [as.done(), bs.done()];
  return { count: piece.count, piece: piece.done(), a, b, boxes: boxesOf(nodes, a, b), stops };
}

function boxesOf({ x: { values: x }, y: { values: y }, snap }: Nodes, a: Int32Array, b: Int32Array): Float64Array {
  const margin = 1.01 * snap;
  const boxes = new Float64Array(4 * a.length);
  for (let s = 0; s < a.length; s++) {
    const [from, to] = [whole(a, s), whole(b, s)];
    boxes[4 * s] = Math.min(real(x, from), real(x, to)) - margin;
    boxes[4 * s + 1] = Math.min(real(y, from), real(y, to)) - margin;
    boxes[4 * s + 2] = Math.max(real(x, from), real(x, to)) + margin;
    boxes[4 * s + 3] = Math.max(real(y, from), real(y, to)) + margin;
  }
  return boxes;
}

/** Finds where spans meet, cell by cell of a grid. */
function meetAll(nodes: Nodes, spans: Spans): void {
  const { starts, members } = gridOfSpans(nodes, spans);
  for (let cell = 0; cell < starts.length - 1; cell++) {
    const end = whole(starts, cell + 1);
    for (let i = whole(starts, cell); i < end; i++) {
      for (let j = i + 1; j < end; j++) {
        if (areNear(spans.boxes, 4 * whole(members, i), 4 * whole(members, j))) meet(nodes, spans, whole(members, i), whole(members, j));
      }
    }
  }
}

function areNear(boxes: Float64Array, one: number, other: number): boolean {
  return real(boxes, one) <= real(boxes, other + 2) && real(boxes, other) <= real(boxes, one + 2)
    && real(boxes, one + 1) <= real(boxes, other + 3) && real(boxes, other + 1) <= real(boxes, one + 3);
}

function gridOfSpans(nodes: Nodes, spans: Spans): ReturnType<typeof sealGrid> {
  const places = new Float64Array(3 * nodes.x.count);
  for (let n = 0; n < nodes.x.count; n++) {
    places[3 * n] = real(nodes.x.values, n);
    places[3 * n + 1] = real(nodes.y.values, n);
  }
  const open = gridOver(places, spans.count);
  const entered = new Int32Array(open.columns * open.rows).fill(-1);
  const walk = newWalk();
  for (let s = 0; s < spans.count; s++) enterSpan(open, entered, walk, nodes, spans, s);
  return sealGrid(open);
}

/** Enters a span, widened by the snapping distance. `entered` is the last span of each cell. */
function enterSpan(grid: OpenGrid, entered: Int32Array, walk: Walk, { x: { values: x }, y: { values: y }, snap }: Nodes, spans: Spans, s: number): void {
  const [a, b] = [whole(spans.a, s), whole(spans.b, s)];
  const x0 = real(x, a);
  const y0 = real(y, a);
  const x1 = real(x, b);
  const y1 = real(y, b);
  const scale = snap / (Math.sqrt((x1 - x0) ** 2 + (y1 - y0) ** 2) || 1);
  const ux = (x1 - x0) * scale;
  const uy = (y1 - y0) * scale;
  for (let side = -1; side <= 1; side++) {
    walkAlong(walk, grid, x0 - ux - side * uy, y0 - uy + side * ux, x1 + ux - side * uy, y1 + uy + side * ux);
    for (let w = 0; w < walk.count; w++) {
      const cell = whole(walk.cells, w);
      if (whole(entered, cell) === s) continue;
      entered[cell] = s;
      enter(grid, cell, s);
    }
  }
}

function meet(nodes: Nodes, spans: Spans, one: number, other: number): void {
  const [a, b, c, d] = [whole(spans.a, one), whole(spans.b, one), whole(spans.a, other), whole(spans.b, other)];
  const touches = [stopAt(nodes, spans, one, c), stopAt(nodes, spans, one, d), stopAt(nodes, spans, other, a), stopAt(nodes, spans, other, b)];
  if (touches.includes(true) || a === c || a === d || b === c || b === d) return;
  const [x, y] = [nodes.x.values, nodes.y.values];
  const ax = real(x, a);
  const ay = real(y, a);
  const bx = real(x, b);
  const by = real(y, b);
  const cx = real(x, c);
  const cy = real(y, c);
  const dx = real(x, d);
  const dy = real(y, d);
  const turn = (bx - ax) * (dy - cy) - (by - ay) * (dx - cx);
  if (turn === 0) return;
  const share = ((cx - ax) * (dy - cy) - (cy - ay) * (dx - cx)) / turn;
  const otherShare = ((cx - ax) * (by - ay) - (cy - ay) * (bx - ax)) / turn;
  if (!(share > 0 && share < 1 && otherShare > 0 && otherShare < 1)) return;
  const node = nodeAt(nodes, ax + share * (bx - ax), ay + share * (by - ay));
  addStop(spans.stops, one, share, node);
  addStop(spans.stops, other, otherShare, node);
}

/** Lets a span stop at a node that lies on it. */
function stopAt(nodes: Nodes, { a, b, stops }: Spans, span: number, node: number): boolean {
  const [from, to] = [whole(a, span), whole(b, span)];
  if (node === from || node === to) return false;
  const [x, y] = [nodes.x.values, nodes.y.values];
  const ax = real(x, from);
  const ay = real(y, from);
  const dx = real(x, to) - ax;
  const dy = real(y, to) - ay;
  const px = real(x, node) - ax;
  const py = real(y, node) - ay;
  const square = dx * dx + dy * dy;
  const share = (px * dx + py * dy) / square;
  if (!(share > 0 && share < 1) || (px * dy - py * dx) ** 2 > nodes.snap * nodes.snap * square) return false;
  addStop(stops, span, share, node);
  return true;
}

function addStop({ last, before, node, share }: Stops, span: number, atShare: number, atNode: number): void {
  before.push(whole(last, span));
  last[span] = node.count;
  node.push(atNode);
  share.push(atShare);
}

function linksOf(lines: Lines, pieces: Pieces, { count, piece, a, b, stops }: Spans): Links {
  const links = new Links();
  for (let s = 0; s < count; s++) {
    const p = whole(piece, s);
    const line = whole(pieces.line, p);
    const start = real(pieces.from, p);
    const length = real(pieces.to, p) - start;
    let [lastShare, lastNode] = [0, whole(a, s)];
    const way = inOrder(stops, s);
    for (let w = 0; w <= way.length; w++) {
      const stop = w < way.length ? way[w] as number : -1;
      const node = stop < 0 ? whole(b, s) : whole(stops.node.values, stop);
      if (node === lastNode) continue;
      const share = stop < 0 ? 1 : real(stops.share.values, stop);
      const middle = start + ((lastShare + share) / 2) * length;
      links.put(Math.min(lastNode, node), Math.max(lastNode, node), flag(lines.kinds, line), onLine(lines, line, middle, 0), onLine(lines, line, middle, 1), onLine(lines, line, middle, 2));
      [lastShare, lastNode] = [share, node];
    }
  }
  return links;
}

/** The stops of a span on its way. */
function inOrder({ last, before, node, share }: Stops, span: number): readonly number[] {
  const found: number[] = [];
  for (let stop = whole(last, span); stop >= 0; stop = whole(before.values, stop)) found.push(stop);
  return found.length < 2 ? found
    : found.sort((p, q) => real(share.values, p) - real(share.values, q) || whole(node.values, p) - whole(node.values, q));
}
