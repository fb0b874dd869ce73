import { flag, item } from './arrays.ts';
import type { Lines } from './candidates.ts';
import { alongLine } from './grid.ts';
import type { OpenGrid } from './grid.ts';
import { enter, gridOver, sealGrid } from './grid.ts';
import { newNodes, nodeAt } from './nodes.ts';
import type { Nodes } from './nodes.ts';
import { pointOnLine } from './visible.ts';
import type { Piece } from './visible.ts';

/** A straight link between two nodes that nothing crosses. */
export interface Link {
  readonly from: number;
  readonly to: number;
  /** Kinds of the lines that lie here, added up. */
  readonly kinds: number;
  /** Middle of the nearest of those lines, in view coordinates. */
  readonly middle: readonly [number, number, number];
}

/** The visible lines as a plane network: links meet at nodes only. */
export interface Network {
  readonly nodes: Nodes;
  readonly links: readonly Link[];
}

interface Span {
  readonly piece: Piece;
  readonly a: number;
  readonly b: number;
  /** Nodes on the way, with their share of the span. */
  readonly stops: { readonly share: number; readonly node: number }[];
}

/** Joins ends within `snap` mm, splits lines where they meet and keeps one of those that coincide. */
export function networkOf(lines: Lines, pieces: readonly Piece[], snap: number): Network {
  const nodes = newNodes(snap);
  const spans: Span[] = [];
  for (const piece of pieces) {
    const [p, q] = [pointOnLine(lines, piece.line, piece.from), pointOnLine(lines, piece.line, piece.to)];
    const [a, b] = [nodeAt(nodes, p[0], p[1]), nodeAt(nodes, q[0], q[1])];
    if (a !== b) spans.push({ piece, a, b, stops: [] });
  }
  meetAll(nodes, spans);
  return { nodes, links: linksOf(lines, spans) };
}

/** Finds where spans meet, cell by cell of a grid. */
function meetAll(nodes: Nodes, spans: readonly Span[]): void {
  const open = gridOver(Float64Array.from(nodes.x.flatMap((x, n) => [x, item(nodes.y, n), 0])), spans.length);
  spans.forEach((span, s) => { enterSpan(open, nodes, span, s); });
  const grid = sealGrid(open);
  for (let cell = 0; cell < grid.starts.length - 1; cell++) {
    const members = grid.members.subarray(grid.starts[cell], grid.starts[cell + 1]);
    for (let i = 0; i < members.length; i++) {
      for (let j = i + 1; j < members.length; j++) meet(nodes, item(spans, members[i] as number), item(spans, members[j] as number));
    }
  }
}

/** Enters a span, widened by the snapping distance. */
function enterSpan(grid: OpenGrid, nodes: Nodes, { a, b }: Span, s: number): void {
  const x0 = item(nodes.x, a);
  const y0 = item(nodes.y, a);
  const x1 = item(nodes.x, b);
  const y1 = item(nodes.y, b);
  const scale = nodes.snap / (Math.hypot(x1 - x0, y1 - y0) || 1);
  const ux = (x1 - x0) * scale;
  const uy = (y1 - y0) * scale;
  const cells: number[] = [];
  const note = (cell: number): boolean => {
    if (!cells.includes(cell)) {
      cells.push(cell);
      enter(grid, cell, s);
    }
    return false;
  };
  for (let side = -1; side <= 1; side++) alongLine(grid, x0 - ux - side * uy, y0 - uy + side * ux, x1 + ux - side * uy, y1 + uy + side * ux, note);
}

function meet(nodes: Nodes, one: Span, other: Span): void {
  const touchesOther = stopsAtEither(nodes, one, other);
  const touchesOne = stopsAtEither(nodes, other, one);
  if (touchesOther || touchesOne || one.a === other.a || one.a === other.b || one.b === other.a || one.b === other.b) return;
  const ax = item(nodes.x, one.a);
  const ay = item(nodes.y, one.a);
  const bx = item(nodes.x, one.b);
  const by = item(nodes.y, one.b);
  const cx = item(nodes.x, other.a);
  const cy = item(nodes.y, other.a);
  const dx = item(nodes.x, other.b);
  const dy = item(nodes.y, other.b);
  const turn = (bx - ax) * (dy - cy) - (by - ay) * (dx - cx);
  if (turn === 0) return;
  const share = ((cx - ax) * (dy - cy) - (cy - ay) * (dx - cx)) / turn;
  const otherShare = ((cx - ax) * (by - ay) - (cy - ay) * (bx - ax)) / turn;
  if (!(share > 0 && share < 1 && otherShare > 0 && otherShare < 1)) return;
  const node = nodeAt(nodes, ax + share * (bx - ax), ay + share * (by - ay));
  one.stops.push({ share, node });
  other.stops.push({ share: otherShare, node });
}

/** Lets a span stop at the ends of another that lie on it. */
function stopsAtEither(nodes: Nodes, span: Span, other: Span): boolean {
  const atFirst = stopAt(nodes, span, other.a);
  const atSecond = stopAt(nodes, span, other.b);
  return atFirst || atSecond;
}

/** Lets a span stop at a node that lies on it. */
function stopAt(nodes: Nodes, span: Span, node: number): boolean {
  if (node === span.a || node === span.b) return false;
  const ax = item(nodes.x, span.a);
  const ay = item(nodes.y, span.a);
  const dx = item(nodes.x, span.b) - ax;
  const dy = item(nodes.y, span.b) - ay;
  const px = item(nodes.x, node) - ax;
  const py = item(nodes.y, node) - ay;
  const square = dx * dx + dy * dy;
  const share = (px * dx + py * dy) / square;
  if (!(share > 0 && share < 1) || (px * dy - py * dx) ** 2 > nodes.snap * nodes.snap * square) return false;
  span.stops.push({ share, node });
  return true;
}

function linksOf(lines: Lines, spans: readonly Span[]): readonly Link[] {
  const found = new Map<number, Link>();
  for (const { piece, a, b, stops } of spans) {
    stops.sort((p, q) => p.share - q.share || p.node - q.node);
    let last = { share: 0, node: a };
    for (const stop of [...stops, { share: 1, node: b }]) {
      if (stop.node === last.node) continue;
      const share = piece.from + ((last.share + stop.share) / 2) * (piece.to - piece.from);
      keepNearest(found, {
        from: Math.min(last.node, stop.node),
        to: Math.max(last.node, stop.node),
        kinds: flag(lines.kinds, piece.line),
        middle: pointOnLine(lines, piece.line, share),
      });
      last = stop;
    }
  }
  return [...found.values()];
}

function keepNearest(found: Map<number, Link>, link: Link): void {
  const key = link.from * 0x4000000 + link.to;
  const known = found.get(key);
  const nearer = known && known.middle[2] > link.middle[2] ? known : link;
  found.set(key, { ...nearer, kinds: link.kinds | (known?.kinds ?? 0) });
}
