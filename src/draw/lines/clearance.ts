import { real, whole } from './arrays.ts';
import type { Network } from './arrangement.ts';
import { enter, gridOver, newWalk, sealGrid, walkAlong } from './grid.ts';
import type { Grid, Walk } from './grid.ts';

/**
 * How far it is from the middle of each link to the next link, square to it, at most `reach` mm:
 * on its left and on its right by turns. A look beside a link must not look over a narrow face.
 */
export function clearancesOf(network: Network, reach: number): Float64Array {
  const { nodes: { x: { values: x }, y: { values: y } }, links } = network;
  const grid = gridOfLinks(network);
  const walk = newWalk();
  const clearances = new Float64Array(2 * links.count);
  for (let l = 0; l < links.count; l++) {
    const [from, to] = [whole(links.from.values, l), whole(links.to.values, l)];
    const px = (real(x, from) + real(x, to)) / 2;
    const py = (real(y, from) + real(y, to)) / 2;
    const dx = real(x, to) - real(x, from);
    const dy = real(y, to) - real(y, from);
    const scale = reach / Math.sqrt(dx * dx + dy * dy);
    clearances[2 * l] = reach * freeShare(network, grid, walk, l, px, py, -dy * scale, dx * scale);
    clearances[2 * l + 1] = reach * freeShare(network, grid, walk, l, px, py, dy * scale, -dx * scale);
  }
  return clearances;
}

function gridOfLinks({ nodes: { x, y }, links }: Network): Grid {
  const points = new Float64Array(3 * x.count);
  for (let n = 0; n < x.count; n++) {
    points[3 * n] = real(x.values, n);
    points[3 * n + 1] = real(y.values, n);
  }
  const grid = gridOver(points, links.count);
  const walk = newWalk();
  for (let l = 0; l < links.count; l++) {
    const [from, to] = [whole(links.from.values, l), whole(links.to.values, l)];
    walkAlong(walk, grid, real(x.values, from), real(y.values, from), real(x.values, to), real(y.values, to));
    for (let w = 0; w < walk.count; w++) enter(grid, whole(walk.cells, w), l);
  }
  return sealGrid(grid);
}

/** Share of the way (dx, dy) from a point that no other link crosses. */
function freeShare({ nodes, links }: Network, grid: Grid, walk: Walk, self: number, px: number, py: number, dx: number, dy: number): number {
  const [x, y] = [nodes.x.values, nodes.y.values];
  const [froms, tos] = [links.from.values, links.to.values];
  let free = 1;
  walkAlong(walk, grid, px, py, px + dx, py + dy);
  for (let w = 0; w < walk.count; w++) {
    const cell = whole(walk.cells, w);
    const end = whole(grid.starts, cell + 1);
    for (let m = whole(grid.starts, cell); m < end; m++) {
      const other = whole(grid.members, m);
      if (other === self) continue;
      const from = whole(froms, other);
      const to = whole(tos, other);
      const ax = real(x, from) - px;
      const ay = real(y, from) - py;
      const ex = real(x, to) - real(x, from);
      const ey = real(y, to) - real(y, from);
      const turn = dx * ey - dy * ex;
      const along = (ax * ey - ay * ex) / turn;
      const across = (ax * dy - ay * dx) / turn;
      if (along > 0 && along < free && across >= 0 && across <= 1) free = along;
    }
  }
  return free;
}
