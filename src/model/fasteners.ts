import type { Kit } from '../read/index.ts';
import { makePart } from './make-part.ts';
import type { Part, PartPlace } from './types.ts';

export function jointPin(kit: Kit, id: string, place: PartPlace, pose: Part['pose']): Part {
  const { diameter, length, headDiameter, headHeight } = kit.jointPin;
  return makePart(kit, id, 'joint-pin', place, { form: 'pin', diameter, length, headDiameter, headHeight }, pose);
}

export function wingNut(kit: Kit, id: string, place: PartPlace, pose: Part['pose']): Part {
  const { diameter, wingSpan, nutHeight } = kit.jointPin;
  return makePart(kit, id, 'wing-nut', place, { form: 'wing-nut', bore: diameter, span: wingSpan, height: nutHeight }, pose);
}
