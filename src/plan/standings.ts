import { chained, standstill, turned, undone, type Model } from '../model/index.ts';
import type { Job } from './jobs.ts';
import type { Standing } from './types.ts';

const QUARTER = Math.PI / 2;

/** How the work lies: the pose that takes the finished item's coordinates to what the worker sees (z up, front towards −y). */
export function standingOf(name: Job['standing'], model: Model): Standing {
  switch (name) {
    case 'bench':
    case 'upright': return { name, pose: standstill };
    case 'deck-building': return { name, pose: undone(model.groups[0]?.pose ?? standstill) };
    case 'deck-in-use': return { name, pose: standstill };
    case 'on-back': return { name, pose: chained(turned([0, 0, 1], -QUARTER), turned([1, 0, 0], -QUARTER)) };
    case 'on-front': return { name, pose: chained(turned([0, 0, 1], QUARTER), turned([1, 0, 0], QUARTER)) };
  }
}
