import { BufferAttribute, BufferGeometry, EdgesGeometry } from 'three';
import { placed, type Box3, type Mesh, type Vec3 } from '../../../model/index.ts';
import type { SceneBody } from '../../../scene/index.ts';
import type { Geometry, Packet } from './messages.ts';

/** Faces that meet at a sharper angle than this show their edge, degrees: tubes stay plain, as in the printed pictures. */
const EDGE_ANGLE = 30;

export interface Packed {
  readonly packet: Packet;
  /** Buffers that go over to the page instead of being copied. */
  readonly transfer: ArrayBuffer[];
}

/** Packs bodies; `also` and `places` are bodies and places that are to be seen as well, at another moment or beside them. */
export type Pack = (bodies: readonly SceneBody[], also?: readonly SceneBody[], places?: readonly Vec3[]) => Packed;

/** Makes the packets of a series; its name must be one of its own. */
export function newPacker(series: string): Pack {
  const keys = new WeakMap<Mesh, string>();
  const boxes = new WeakMap<Mesh, Box3>();
  let next = 1;
  const sent = new Set<string>();

  const keyOf = (mesh: Mesh): string => {
    const key = keys.get(mesh) ?? `${series}/${next++}`;
    keys.set(mesh, key);
    return key;
  };
  const boxOf = (mesh: Mesh): Box3 => {
    const box = boxes.get(mesh) ?? boxAround(mesh.positions);
    boxes.set(mesh, box);
    return box;
  };

  return (bodies, also = [], places = []) => {
    const meshes = new Map(bodies.map(({ mesh }) => [keyOf(mesh), mesh]));
    const fresh = [...meshes].filter(([key]) => !sent.has(key)).map(([key, mesh]) => geometryOf(key, mesh));
    for (const { key } of fresh) sent.add(key);
    const corners = [...bodies, ...also].flatMap(({ mesh, pose }) => cornersOf(boxOf(mesh)).map((corner) => placed(pose, corner)));
    return {
      packet: { series, bodies: bodies.map(({ id, partId, kind, look, mesh, pose }) => ({ id, partId, kind, look, pose, geometry: keyOf(mesh) })), fresh, reach: boxAround([...corners, ...places].flat()) },
      transfer: fresh.flatMap(({ positions, triangles, edges }) => [positions, triangles, edges].map(({ buffer }) => buffer as ArrayBuffer)),
    };
  };
}

function geometryOf(key: string, mesh: Mesh): Geometry {
  const positions = new Float32Array(mesh.positions);
  const triangles = mesh.triangles.slice();
  const geometry = new BufferGeometry().setAttribute('position', new BufferAttribute(positions, 3)).setIndex(new BufferAttribute(triangles, 1));
  const edges = new EdgesGeometry(geometry, EDGE_ANGLE).getAttribute('position').array;
  return { key, positions, triangles, edges: new Float32Array(edges) };
}

/** The box round points given as x y z by turns. */
function boxAround(positions: ArrayLike<number>): Box3 {
  const min: [number, number, number] = [Infinity, Infinity, Infinity];
  const max: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (let index = 0; index < positions.length; index += 1) {
    const axis = index % 3 as 0 | 1 | 2;
    const value = positions[index] ?? 0;
    if (value < min[axis]) min[axis] = value;
    if (value > max[axis]) max[axis] = value;
  }
  return { min, max };
}

const cornersOf = ({ min, max }: Box3): readonly Vec3[] =>
  [min[0], max[0]].flatMap((x) => [min[1], max[1]].flatMap((y) => [min[2], max[2]].map((z): Vec3 => [x, y, z])));
