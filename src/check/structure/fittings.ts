import type { FittingKind } from '../../read/index.ts';
import { judge } from '../judge.ts';
import { partsOf } from '../parts.ts';
import type { Part } from '../../model/index.ts';
import { worst, type StructureCase, type StructureCheck } from './case.ts';
import { ladenWeight } from './weights.ts';

type Of<Is extends FittingKind['is']> = Extract<FittingKind, { readonly is: Is }>;

const fitted = <Is extends FittingKind['is']>({ model }: StructureCase, is: Is): readonly { readonly part: Part; readonly fitting: Of<Is> }[] =>
  partsOf(model, 'fitting').flatMap((part) => (part.shape.form === 'fitting' && part.shape.fitting.is === is ? [{ part, fitting: part.shape.fitting as Of<Is> }] : []));

/** N on the castor that bears most, everything laden: one corner bears three eighths, the floor is never flat. */
export const castorLoads: StructureCheck = (given) => worst(fitted(given, 'castor').map(({ part, fitting }) => judge({
  name: 'castor-load', figure: given.limits.cornerShare.value * ladenWeight(given), limit: fitting.load, bound: 'most', unit: 'N',
  source: `load of the castor in the kit; ${given.limits.cornerShare.source}`, parts: [part.id],
})));

/** How many castors have a brake: two, or it turns about the one that is locked. */
export const castorBrakes: StructureCheck = (given) => {
  const castors = fitted(given, 'castor');
  const { castorBrakes: least } = given.limits;
  return castors.length === 0 ? [] : [judge({
    name: 'castor-brake', figure: castors.filter(({ fitting }) => fitting.brake).length, limit: least.value, bound: 'least', unit: '1', source: least.source, parts: castors.map(({ part }) => part.id),
  })];
};

/** N on one wall bracket: twice the pull at the top that must not tip it, all on one bracket, against its load in the kit. */
export const wallHolds: StructureCheck = (given) => {
  const { tippingForce, wallPull, testFactor } = given.limits;
  return worst(fitted(given, 'wall-bracket').map(({ part, fitting }) => judge({
    name: 'wall-hold', figure: wallPull.value * tippingForce.value, limit: fitting.load / testFactor.value, bound: 'most', unit: 'N',
    source: `load of the bracket in the kit / ${testFactor.value}; ${wallPull.source}; ${tippingForce.source}`, parts: [part.id],
  })));
};
