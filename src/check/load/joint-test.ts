import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import type { Case, Check, Finding } from '../types.ts';
import { pinLoad } from './joint-pin.ts';

/** Whether the kit's joints have been tested and slid little enough; what they bore is judged by `jointTest`. */
export const isJointTested = ({ model: { kit }, limits }: Pick<Case, 'model' | 'limits'>): boolean =>
  kit.jointTest !== undefined && kit.jointTest.slip <= limits.jointSlip.value;

/** What a joint of the kit bore in the maker's own test against what is asked of the one that bears most, both N. 0 where nobody tested one: a caution on every item. */
export function jointTestAgainst(given: Pick<Case, 'model' | 'limits'>, asked: number): readonly Finding[] {
  const { kit: { jointTest: test } } = given.model;
  const { jointFactor, jointSlip, untestedJoint } = given.limits;
  const tested = isJointTested(given);
  return [judge({
    name: 'joint-test', figure: tested ? test?.load ?? 0 : 0, limit: Math.max(1, jointFactor.value * asked), bound: 'least', unit: 'N',
    source: tested ? `joint-test of the kit; ${jointFactor.source}; ${jointSlip.source}` : untestedJoint.source,
    parts: idsOf(given.model, 'joint'), otherwise: tested ? 'fail' : 'caution',
  })];
}

export const jointTest: Check = (given) => jointTestAgainst(given, pinLoad(given));
