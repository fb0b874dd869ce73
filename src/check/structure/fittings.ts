import type { FittingKind } from '../../read/index.ts';
import { judge } from '../judge.ts';
import { partsOf } from '../parts.ts';
import type { Part } from '../../model/index.ts';
import { worst, type StructureCase, type StructureCheck } from './case.ts';
import { cornersUnder } from './bearings.ts';
import { cornerLoad } from './standing.ts';
import { ladenWeight } from './weights.ts';

type Of<Is extends FittingKind['is']> = Extract<FittingKind, { readonly is: Is }>;

const fitted = <Is extends FittingKind['is']>({ model }: StructureCase, is: Is): readonly { readonly part: Part; readonly fitting: Of<Is> }[] =>
  partsOf(model, 'fitting').flatMap((part) => (part.shape.form === 'fitting' && part.shape.fitting.is === is ? [{ part, fitting: part.shape.fitting as Of<Is> }] : []));

/** N on the castor that bears most, everything laden: one corner bears three eighths, the floor is never flat; and one of the loads stands in one place over it. */
export const castorLoads: StructureCheck = (given) => worst(fitted(given, 'castor').map(({ part, fitting }) => {
  const { cornerShare, padInset } = given.limits;
  return judge({
    name: 'castor-load', figure: cornerShare.value * ladenWeight(given) + overCastor(given, part.id), limit: fitting.load, bound: 'most', unit: 'N',
    source: `load of the castor in the kit; ${cornerShare.source}; one load in one place at its corner, ${padInset.source}`, parts: [part.id],
  });
}));

/** N that come to a castor besides, where one of the loads over it stands in one place at its corner; never less than 0. */
function overCastor(given: StructureCase, castor: string): number {
  const { skeleton, limits: { cornerShare, gravity } } = given;
  const bars = given.model.connections.flatMap((held) => (held.is === 'foot' && held.foot === castor ? [held.bar] : []));
  const joints = skeleton.bars.filter(({ id }) => bars.includes(id)).flatMap(({ holds }) => holds.map(({ joint }) => joint));
  const over = given.bearings.filter((bearing) => cornersUnder(skeleton, bearing).some((joint) => joints.includes(joint)));
  return Math.max(0, ...over.map((bearing) => cornerLoad(given, bearing) - cornerShare.value * (bearing.load + bearing.panel.mass * gravity.value)));
}

/** How many castors have a brake: two, or it turns about the one that is locked. */
export const castorBrakes: StructureCheck = (given) => {
  const castors = fitted(given, 'castor');
  const { castorBrakes: least } = given.limits;
  return castors.length === 0 ? [] : [judge({
    name: 'castor-brake', figure: castors.filter(({ fitting }) => fitting.brake).length, limit: least.value, bound: 'least', unit: '1', source: least.source, parts: castors.map(({ part }) => part.id),
  })];
};

/** N on one wall bracket: twice the pull at the top that must not tip it, all on one bracket, against its load in the kit, or that of the knotted cord which ties its post into the open jaws, whichever is less. */
export const wallHolds: StructureCheck = (given) => {
  const { model: { kit }, limits: { tippingForce, wallPull, testFactor, knot } } = given;
  const cord = knot.value * kit.cable.strength;
  return worst(fitted(given, 'wall-bracket').map(({ part, fitting }) => judge({
    name: 'wall-hold', figure: wallPull.value * tippingForce.value, limit: Math.min(fitting.load, cord) / testFactor.value, bound: 'most', unit: 'N',
    source: `${fitting.load <= cord ? 'load of the bracket in the kit' : `cord round the post, ${knot.source}`} / ${testFactor.value}; ${wallPull.source}; ${tippingForce.source}`, parts: [part.id],
  })));
};
