import type { Caution } from '../../../plan/index.ts';
import type { Ink } from '../ink.ts';
import { antiTip, eyeProtection, keepFromChildren, mask, protectiveGloves, referToManual } from './mandatory.ts';
import { handBehindBit, noClimbing, noDrillingIntoLines, noSitting } from './prohibitions.ts';
import { crushedHands, sharpElement } from './warnings.ts';

export { safetyColours, signGrounds } from './shapes.ts';

/** Safety signs, named by the number of the ISO 7010 meaning (R, CHECKS "Drawings and signs"), or by what they say where that has none that we know; drawn by us. */
export const signPictures = {
  M002: referToManual,
  M004: eyeProtection,
  M009: protectiveGloves,
  M016: mask,
  M055: keepFromChildren,
  M071: antiTip,
  P009: noClimbing,
  P015: handBehindBit,
  P018: noSitting,
  'no-drilling-into-lines': noDrillingIntoLines,
  W022: sharpElement,
  W024: crushedHands,
} as const satisfies Readonly<Record<string, Ink>>;

export type SignName = keyof typeof signPictures;

export const signOfCaution: Readonly<Record<Caution, SignName>> = {
  sharp: 'W022',
  dust: 'M016',
  eyes: 'M004',
  gloves: 'M009',
  crush: 'W024',
  bit: 'P015',
  lines: 'no-drilling-into-lines',
  children: 'M055',
  climbing: 'P009',
  sitting: 'P018',
  tipping: 'M071',
  manual: 'M002',
};
