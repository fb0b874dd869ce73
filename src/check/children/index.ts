import type { Check } from '../types.ts';
import { bedCord, guardSides, oneBed, raisedBed } from './bed.ts';
import { fingerGap } from './finger-gap.ts';
import { guardEnd, guardHeight, guardOpening, guardSlat } from './guard.ts';
import { limbGap } from './limb-gap.ts';
import { localCodes } from './local-codes.ts';
import { mattressGap, mattressHeld } from './mattress.ts';
import { sizeMark } from './size-mark.ts';
import { snagPoint, tubeEnds } from './snag.ts';

/** What can trap, catch or let fall a child? Published limits where they were read, cautions where they are from memory. */
export const childrenChecks: readonly Check[] = [
  raisedBed, oneBed, bedCord, guardSides, guardHeight, guardEnd, guardOpening, guardSlat,
  mattressGap, mattressHeld, fingerGap, limbGap, snagPoint, tubeEnds, sizeMark, localCodes,
];
