import type { Geometry, Packet } from './messages.ts';

/** Meshes that came with the packets of a series, for as long as it goes on. */
export interface ShapeStore {
  /** To be called with every packet as it comes, in order. */
  take(packet: Packet): void;
  shape(key: string): Geometry | undefined;
}

export function newShapeStore(): ShapeStore {
  const shapes = new Map<string, Geometry>();
  let kept: string | null = null;
  return {
    take: ({ series, fresh }) => {
      if (series !== kept) shapes.clear();
      kept = series;
      for (const geometry of fresh) shapes.set(geometry.key, geometry);
    },
    shape: (key) => shapes.get(key),
  };
}
