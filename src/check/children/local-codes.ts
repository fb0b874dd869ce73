import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import type { Case, Finding } from '../types.ts';

/** Always a caution: this room knows of no approval under local codes. */
export const localCodes = ({ model, limits: { approvals } }: Pick<Case, 'model' | 'limits'>): readonly Finding[] => [judge({
  name: 'local-codes', figure: 0, limit: approvals.value, bound: 'least', unit: '1', source: approvals.source,
  parts: idsOf(model, 'panel', 'flat-panel'), otherwise: 'caution',
})];
