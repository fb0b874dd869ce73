import type { Mesh } from '../../model/index.ts';
import type { Topology } from './topology.ts';
import { topologyOf } from './topology.ts';

/**
 * What stays the same from picture to picture, held by the caller. It is keyed by the identity of
 * the meshes, so a mesh must not be changed once drawn. A cache may be thrown away at any time.
 */
export interface LineCaches {
  readonly topologies: WeakMap<Mesh, Topology>;
  /** Crossing lines of two meshes by their relative pose. */
  readonly crossings: WeakMap<Mesh, WeakMap<Mesh, Map<string, Float64Array>>>;
  /** Outline areas (mm²) of a mesh by the direction to the eye. */
  readonly outlineAreas: WeakMap<Mesh, Map<string, number>>;
}

/** An empty cache for `lineDrawing`. */
export function newLineCaches(): LineCaches {
  return { topologies: new WeakMap(), crossings: new WeakMap(), outlineAreas: new WeakMap() };
}

/** The topology of a mesh, read once. */
export function cachedTopology(caches: LineCaches, mesh: Mesh): Topology {
  return remembered(caches.topologies, mesh, () => topologyOf(mesh));
}

/** The value under a key, made at the first asking. */
export function remembered<K, V>(store: { get(key: K): V | undefined; set(key: K, value: V): unknown }, key: K, make: () => V): V {
  const known = store.get(key);
  if (known !== undefined) return known;
  const made = make();
  store.set(key, made);
  return made;
}

/** Numbers as a key: the same to one part in 10⁹ of a mm or of a unit direction. */
export function numbersKey(numbers: readonly number[]): string {
  return numbers.map((n) => Math.round(n * 1e9)).join();
}
