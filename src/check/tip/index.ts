import type { Check } from '../types.ts';
import { slenderness } from './slenderness.ts';
import { tipAngle } from './tip-angle.ts';
import { tipEmpty, tipLoaded } from './tip-force.ts';
import { tipTest } from './tip-test.ts';
import { wallHeight } from './wall-height.ts';

/** Can it fall over? Cautions all: any one of them asks for a fixing to the wall. */
export const tipChecks: readonly Check[] = [wallHeight, tipTest, slenderness, tipEmpty, tipLoaded, tipAngle];
