import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import type { Check } from '../types.ts';

/** Every length of tube against the tube as delivered. */
export const stockTube: Check = ({ model }) => model.tubes.map((need) => judge({
  name: 'stock-tube', figure: need.length, limit: model.kit.tube.length, bound: 'most', unit: 'mm',
  source: `tube of ${model.kit.name} as delivered`, parts: idsOf(model, need.kind),
}));
