import type { Use } from '../../read/index.ts';
import type { Check } from '../types.ts';
import { slenderness } from './slenderness.ts';
import { tipAngle } from './tip-angle.ts';
import { tipEmpty, tipLoaded } from './tip-force.ts';
import { tipScope } from './tip-scope.ts';
import { tipBack, tipEdge } from './tip-seated.ts';
import { tipTest } from './tip-test.ts';
import { wallHeight } from './wall-height.ts';

/** Can it fall over? For storage cautions all: any one of them asks for a fixing to the wall. */
export const tipChecksFor = (use: Use): readonly Check[] => (use === 'storage'
  ? [wallHeight, tipTest, tipScope, slenderness, tipEmpty, tipLoaded, tipAngle]
  : [slenderness, tipEmpty, tipLoaded, tipAngle, tipEdge, tipBack]);
