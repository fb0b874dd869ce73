import type { Model, TubeNeed } from '../../model/index.ts';
import { judge } from '../judge.ts';
import { partsOf } from '../parts.ts';
import type { Check } from '../types.ts';

/** Every length of tube against the tube as delivered. */
export const stockTube: Check = ({ model }) => model.tubes.map((need) => judge({
  name: 'stock-tube', figure: need.length, limit: model.kit.tube.length, bound: 'most', unit: 'mm',
  source: `tube of ${model.kit.name} as delivered`, parts: cutTo(model, need),
}));

const cutTo = (model: Model, { kind, length }: TubeNeed): readonly string[] =>
  partsOf(model, kind).filter(({ shape }) => shape.form === 'tube' && shape.length === length).map(({ id }) => id);
