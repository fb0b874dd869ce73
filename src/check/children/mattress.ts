import { judge } from '../judge.ts';
import { partsOf } from '../parts.ts';
import type { Case, Check } from '../types.ts';
import { facingPlates, type Gap } from './plate-gaps.ts';

/** Thickness of the mattress as the item's parameter gives it, mm, or null. */
export const mattressOf = ({ model }: Case): number | null => (model.use === 'bed' ? model.parameters['mattress']?.value ?? null : null);

/** Between the mattress, in the middle of its length, and the guards at its two ends. */
export function beddingGap(given: Case): readonly Gap[] {
  const { model, limits } = given;
  const ends = facingPlates(model).filter(({ axis }) => axis === 1);
  const [tube] = partsOf(model, 'long-tube');
  if (mattressOf(given) === null || ends.length === 0 || tube?.shape.form !== 'tube') return [];
  const half = (tube.shape.length - limits.mattressPlay.value) / 2;
  const narrow = Math.min(...ends.map(({ inner }) => Math.abs(inner))) - half;
  return [{ what: 'mattress and guard', narrow, long: model.parameters['guard']?.value ?? 0, parts: ends.map(({ plate }) => plate.id) }];
}

/** The mattress fits between the guards, with less beside it than traps a finger, mm. */
export const mattressGap: Check = (given) => beddingGap(given).map(({ narrow, parts }) => judge({
  name: 'mattress-gap', figure: narrow, limit: narrow < 0 ? 0 : given.limits.fingerLeast.value, bound: narrow < 0 ? 'least' : 'most', unit: 'mm',
  source: `${given.limits.fingerLeast.source}; ${given.limits.mattressPlay.source}`, parts,
}));
