import type { Mesh, Pose, Vec3 } from '../../model/index.ts';

/** A mesh's corners in the scene. */
export function cornersOf(mesh: Mesh, pose: Pose): Vec3[] {
  const at = (i: number): number => pose[i] ?? 0;
  const corners: Vec3[] = [];
  for (let i = 0; i + 2 < mesh.positions.length; i += 3) {
    const [x, y, z] = [mesh.positions[i] ?? 0, mesh.positions[i + 1] ?? 0, mesh.positions[i + 2] ?? 0];
    const along = (row: number): number => at(row) * x + at(4 + row) * y + at(8 + row) * z + at(12 + row);
    corners.push([along(0), along(1), along(2)]);
  }
  return corners;
}
