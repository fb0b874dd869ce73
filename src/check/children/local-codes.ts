import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import { isForChildren } from '../rules.ts';
import type { Check } from '../types.ts';

/** Always a caution on children's furniture: this room knows of no approval under local codes. */
export const localCodes: Check = ({ model, declared, limits }) => (isForChildren(declared)
  ? [judge({
    name: 'local-codes', figure: 0, limit: limits.approvals.value, bound: 'least', unit: '1',
    source: limits.approvals.source, parts: idsOf(model, 'panel'), otherwise: 'caution',
  })]
  : []);
