import { BufferAttribute, BufferGeometry, Group, Mesh, MeshStandardMaterial } from 'three';
import { asMatrix } from '../model/index.ts';
import type { Look, Scene, SceneBody } from './types.ts';

const SHADES: Readonly<Record<Look, number>> = { present: 0xf4f4f2, new: 0xb9c6d2, pale: 0xe6e6e6 };

/** The scene's bodies as three.js objects, each named by its body; for screens. Marks stay plain data. */
export function toThree(scene: Scene): Group {
  const group = new Group();
  group.name = scene.id;
  group.add(...scene.bodies.map(meshOf));
  return group;
}

function meshOf(body: SceneBody): Mesh {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(body.mesh.positions), 3));
  geometry.setIndex(new BufferAttribute(body.mesh.triangles, 1));
  geometry.computeVertexNormals();
  const mesh = new Mesh(geometry, new MeshStandardMaterial({ color: SHADES[body.look], flatShading: true }));
  mesh.name = body.id;
  mesh.matrixAutoUpdate = false;
  mesh.matrix.copy(asMatrix(body.pose));
  return mesh;
}
