import type { Check } from '../types.ts';
import { fingerGap } from './finger-gap.ts';
import { guardEnd, guardHeight, guardOpening, guardSlat } from './guard.ts';
import { localCodes } from './local-codes.ts';
import { mattressGap } from './mattress.ts';

/** What can trap or let fall a child? Published limits where they were read, cautions where they are from memory. */
export const childrenChecks: readonly Check[] = [guardHeight, guardEnd, guardOpening, guardSlat, mattressGap, fingerGap, localCodes];
