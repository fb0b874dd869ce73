import type { Mesh } from '../../src/model/index.ts';

const corner = ({ positions, triangles }: Mesh, index: number): readonly [number, number, number] => {
  const at = 3 * (triangles[index] ?? Number.NaN);
  return [positions[at] ?? Number.NaN, positions[at + 1] ?? Number.NaN, positions[at + 2] ?? Number.NaN];
};

/** Volume of a closed mesh: signed tetrahedra to the origin; positive when it is wound outwards, mm³. */
export function meshVolume(mesh: Mesh): number {
  let sum = 0;
  for (let index = 0; index < mesh.triangles.length; index += 3) {
    const [[ax, ay, az], [bx, by, bz], [cx, cy, cz]] = [corner(mesh, index), corner(mesh, index + 1), corner(mesh, index + 2)];
    sum += (ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx)) / 6;
  }
  return sum;
}

/** Directed edges that lack their opposite, or that two triangles share in the same direction. */
export function openEdges({ triangles }: Mesh): number {
  const seen = new Map<string, number>();
  for (let index = 0; index < triangles.length; index += 3) {
    const [a = -1, b = -1, c = -1] = triangles.subarray(index, index + 3);
    for (const [from, to] of [[a, b], [b, c], [c, a]] as const) seen.set(`${from} ${to}`, (seen.get(`${from} ${to}`) ?? 0) + 1);
  }
  return [...seen].filter(([edge, count]) => count !== 1 || seen.get(edge.split(' ').reverse().join(' ')) !== 1).length;
}
