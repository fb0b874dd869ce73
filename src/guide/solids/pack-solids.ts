import type { Mesh, Pose, Solids } from '../../model/index.ts';
import { chained, undone } from '../../model/index.ts';
import { isTurn, type Motion, type Step } from '../../plan/index.ts';
import { momentScene, type Scene, type SceneBody } from '../../scene/index.ts';
import type { Telling } from '../types.ts';
import type { PackedBody, PackedMoment, PackedSolids, PackedStand } from '../data.ts';
import { packMesh } from './pack-mesh.ts';

/** The models of all steps that have one: each mesh and pose once, and what stands where at the end of a step and on the way there. */
export function packSolids({ model, plan }: Pick<Telling, 'model' | 'plan'>, solids: Solids, idOf: (step: Step) => string): PackedSolids {
  const store = newStore();
  const stands: Record<string, PackedStand> = {};
  for (const step of plan.steps) {
    const stand = standOf(store, sharesOf(step).map((share) => momentScene(model, step, solids, share)), isTurn(step));
    if (stand !== null) stands[idOf(step)] = stand;
  }
  return { meshes: store.meshes(), poses: store.poses(), stands };
}

/** How many moments of a motion are kept: the browser draws straight ways between them. */
const MOMENTS: Readonly<Record<Motion['kind'], number>> = { slide: 2, fold: 7, turn: 9 };

/** The moments of a step that are kept, 0 as it begins to 1 as it ends. A drill goes down although no part moves. */
function sharesOf({ motions }: Step): readonly number[] {
  const count = Math.max(MOMENTS.slide, ...motions.map(({ kind }) => MOMENTS[kind]));
  return Array.from({ length: count }, (_, index) => index / (count - 1));
}

function standOf(store: Store, moments: readonly (Scene | null)[], whole: boolean): PackedStand | null {
  const scenes = moments.flatMap((scene) => (scene === null ? [] : [scene]));
  const end = scenes.at(-1);
  if (end === undefined) return null;
  const bodies = end.bodies.map((body): PackedBody => [store.mesh(body.mesh), store.pose(body.pose), body.look === 'new' ? 1 : 0]);
  const before = scenes.slice(0, -1).map((scene) => (whole ? turnedMoment(store, scene, end) : movedMoment(store, scene, end)));
  const still = before.every((moment) => moment.whole === undefined && (moment.bodies ?? []).length === 0);
  return { towardsEye: end.view.towardsEye, bodies, before: still ? [] : before };
}

/** The whole work lies otherwise: told by the first body, the others go with it. */
function turnedMoment(store: Store, { bodies: [before] }: Scene, { bodies: [after] }: Scene): PackedMoment {
  return before === undefined || after === undefined ? {} : { whole: store.pose(chained(before.pose, undone(after.pose))) };
}

/** Bodies that are elsewhere or otherwise than at the end. */
function movedMoment(store: Store, scene: Scene, end: Scene): PackedMoment {
  const ends = new Map(end.bodies.map((body, index) => [body.id, { body, index }]));
  return {
    bodies: scene.bodies.flatMap((body) => {
      const last = ends.get(body.id);
      return last === undefined || same(body, last.body) ? [] : [[last.index, store.mesh(body.mesh), store.pose(body.pose)] as const];
    }),
  };
}

const same = (one: SceneBody, other: SceneBody): boolean => one.mesh === other.mesh && packedPose(one.pose).join() === packedPose(other.pose).join();

interface Store {
  readonly mesh: (mesh: Mesh) => number;
  readonly pose: (pose: Pose) => number;
  readonly meshes: () => PackedSolids['meshes'];
  readonly poses: () => PackedSolids['poses'];
}

/** Numbers meshes and poses in the order they are first met. */
function newStore(): Store {
  const meshes = new Map<Mesh, number>();
  const poses = new Map<string, { readonly number: number; readonly packed: readonly number[] }>();
  return {
    mesh: (mesh) => {
      const number = meshes.get(mesh) ?? meshes.size;
      meshes.set(mesh, number);
      return number;
    },
    pose: (pose) => {
      const packed = packedPose(pose);
      const key = packed.join();
      const known = poses.get(key) ?? { number: poses.size, packed };
      poses.set(key, known);
      return known.number;
    },
    meshes: () => [...meshes.keys()].map(packMesh),
    poses: () => [...poses.values()].map(({ packed }) => packed),
  };
}

/** Turns to 1e-4, so that the far end of a part of 2 m stays within 0.2 mm; places to 0.01 mm. */
function packedPose(pose: Pose): readonly number[] {
  return [0, 1, 2].flatMap((row) => [0, 1, 2, 3].map((column) => round(pose[column * 4 + row] ?? 0, column === 3 ? 100 : 10_000)));
}

const round = (value: number, parts: number): number => Math.round(value * parts) / parts || 0;
