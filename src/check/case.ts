import type { Model } from '../model/index.ts';
import type { Declared } from '../read/index.ts';
import type { Limits } from './limits.ts';
import { stanceOf } from './stand/stance.ts';
import type { Case } from './types.ts';

/** Works out once how the frame stands; the load may be changed afterwards. */
export const caseOf = (model: Model, declared: Declared, limits: Limits, load: number): Case =>
  ({ model, declared, limits, load, stance: stanceOf(model, limits) });
