import type { Kit } from '../read/index.ts';
import { makePart } from './make-part.ts';
import type { Part, PartPlace } from './types.ts';

export function jointPin(kit: Kit, id: string, place: PartPlace, pose: Part['pose']): Part {
  const { diameter, length, headDiameter, headHeight } = kit.jointPin;
  return makePart(kit, id, 'joint-pin', place, { form: 'pin', diameter, length, headDiameter, headHeight }, pose);
}

/**
 * How much of a joint pin is threaded from its tip on, mm: the nut comes as near to the head as the thinnest work that it holds is thick.
 * Its share of the length is our own choice for the pictures; no check reckons with it.
 */
export const threadedLength = ({ length }: { readonly length: number }): number => THREADED * length;

const THREADED = 0.4;

export function wingNut(kit: Kit, id: string, place: PartPlace, pose: Part['pose']): Part {
  const { diameter, wingSpan, nutHeight } = kit.jointPin;
  return makePart(kit, id, 'wing-nut', place, { form: 'wing-nut', bore: diameter, span: wingSpan, height: nutHeight }, pose);
}
