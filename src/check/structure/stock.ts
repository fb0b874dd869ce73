import { cableEnds } from '../../model/index.ts';
import { tubeKinds } from '../../read/index.ts';
import { judge } from '../judge.ts';
import { partsOf } from '../parts.ts';
import { tubeOf } from './bars.ts';
import { worst, type StructureCheck } from './case.ts';
import { lengthOfBar } from './skeleton.ts';

/** The longest tube of each kind against the tube as delivered. */
export const stockBars: StructureCheck = (given) => tubeKinds(given.model.kit).flatMap((kind) => worst(
  given.skeleton.bars.filter((bar) => tubeOf(given, bar).kind.name === kind.name).map((bar) => judge({
    name: 'stock-tube', figure: lengthOfBar(bar), limit: kind.length, bound: 'most', unit: 'mm', source: `tube of ${given.model.kit.name} as delivered`, parts: [bar.id],
  })),
));

/** The longest cable, loop to loop, against the cable as delivered. */
export const stockCables: StructureCheck = ({ model }) => worst(partsOf(model, 'cable').flatMap(({ id, shape }) => (shape.form === 'cable'
  ? [judge({ name: 'stock-cable', figure: cableEnds(shape.length).cut, limit: model.kit.cable.length, bound: 'most', unit: 'mm', source: `cord of ${model.kit.name} as delivered, loops and knots reckoned in`, parts: [id] })] : [])));
