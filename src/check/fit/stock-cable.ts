import { cableEnds } from '../../model/index.ts';
import { judge } from '../judge.ts';
import { partsOf } from '../parts.ts';
import type { Check } from '../types.ts';

/** The longest cable, as it is cut for its loops and knots, against the cable as delivered. */
export const stockCable: Check = ({ model }) => {
  const lengths = partsOf(model, 'cable').flatMap(({ id, shape }) =>
    shape.form === 'cable' ? [{ id, length: cableEnds(shape.length).cut }] : []);
  if (lengths.length === 0) return [];
  const longest = Math.max(...lengths.map((cable) => cable.length));
  return [judge({
    name: 'stock-cable', figure: longest, limit: model.kit.cable.length, bound: 'most', unit: 'mm',
    source: `cord of ${model.kit.name} as delivered, loops and knots reckoned in`,
    parts: lengths.filter((cable) => cable.length === longest).map((cable) => cable.id),
  })];
};
