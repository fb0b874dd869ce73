import { item, whole } from './arrays.ts';
import type { Network } from './arrangement.ts';
import { alongLine, enter, gridOver, sealGrid } from './grid.ts';
import type { Grid } from './grid.ts';

/**
 * How far it is from the middle of each link to the next link, square to it, at most `reach` mm:
 * on its left and on its right by turns. A look beside a link must not look over a narrow face.
 */
export function clearancesOf(network: Network, reach: number): Float64Array {
  const grid = gridOfLinks(network);
  const clearances = new Float64Array(2 * network.links.length);
  network.links.forEach(({ from, to }, l) => {
    const { x, y } = network.nodes;
    const px = (item(x, from) + item(x, to)) / 2;
    const py = (item(y, from) + item(y, to)) / 2;
    const dx = item(x, to) - item(x, from);
    const dy = item(y, to) - item(y, from);
    const scale = reach / Math.sqrt(dx * dx + dy * dy);
    clearances[2 * l] = reach * freeShare(network, grid, l, px, py, -dy * scale, dx * scale);
    clearances[2 * l + 1] = reach * freeShare(network, grid, l, px, py, dy * scale, -dx * scale);
  });
  return clearances;
}

function gridOfLinks({ nodes, links }: Network): Grid {
  const points = new Float64Array(3 * nodes.x.length);
  nodes.x.forEach((x, n) => {
    points[3 * n] = x;
    points[3 * n + 1] = item(nodes.y, n);
  });
  const grid = gridOver(points, links.length);
  links.forEach(({ from, to }, l) => {
    alongLine(grid, item(nodes.x, from), item(nodes.y, from), item(nodes.x, to), item(nodes.y, to), (cell) => {
      enter(grid, cell, l);
      return false;
    });
  });
  return sealGrid(grid);
}

/** Share of the way (dx, dy) from a point that no other link crosses. */
function freeShare({ nodes, links }: Network, grid: Grid, self: number, px: number, py: number, dx: number, dy: number): number {
  let free = 1;
  alongLine(grid, px, py, px + dx, py + dy, (cell) => {
    for (let m = whole(grid.starts, cell); m < whole(grid.starts, cell + 1); m++) {
      const other = whole(grid.members, m);
      if (other === self) continue;
      const { from, to } = item(links, other);
      const ax = item(nodes.x, from) - px;
      const ay = item(nodes.y, from) - py;
      const ex = item(nodes.x, to) - item(nodes.x, from);
      const ey = item(nodes.y, to) - item(nodes.y, from);
      const turn = dx * ey - dy * ex;
      const along = (ax * ey - ay * ex) / turn;
      const across = (ax * dy - ay * dx) / turn;
      if (along > 0 && along < free && across >= 0 && across <= 1) free = along;
    }
    return false;
  });
  return free;
}
