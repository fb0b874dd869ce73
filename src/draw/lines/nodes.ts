import { item } from './arrays.ts';

/** Points of the drawing's network; ends that nearly meet share one. */
export interface Nodes {
  readonly x: number[];
  readonly y: number[];
  readonly cells: Map<number, number[]>;
  readonly snap: number;
}

/** An empty network whose ends join within `snap` mm. */
export function newNodes(snap: number): Nodes {
  return { x: [], y: [], cells: new Map(), snap };
}

/** The node at a place: the nearest one within the snapping distance, or a new one. */
export function nodeAt(nodes: Nodes, x: number, y: number): number {
  const column = Math.floor(x / nodes.snap);
  const row = Math.floor(y / nodes.snap);
  let best = -1;
  let least = nodes.snap * nodes.snap;
  for (let c = column - 1; c <= column + 1; c++) {
    for (let r = row - 1; r <= row + 1; r++) {
      const here = nodes.cells.get(cellKey(c, r));
      if (here === undefined) continue;
      for (const n of here) {
        const away = (item(nodes.x, n) - x) ** 2 + (item(nodes.y, n) - y) ** 2;
        if (away >= least) continue;
        best = n;
        least = away;
      }
    }
  }
  return best >= 0 ? best : addNode(nodes, x, y, cellKey(column, row));
}

function addNode(nodes: Nodes, x: number, y: number, key: number): number {
  const made = nodes.x.length;
  nodes.x.push(x);
  nodes.y.push(y);
  const cell = nodes.cells.get(key);
  if (cell) cell.push(made);
  else nodes.cells.set(key, [made]);
  return made;
}

const cellKey = (column: number, row: number): number => column * 0x4000000 + row;
