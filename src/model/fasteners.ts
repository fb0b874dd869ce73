import type { Kit } from '../read/index.ts';
import type { Part, PartPlace } from './types.ts';

/** kg. Common practice, no source. */
const PIN_MASS = 0.012;
const NUT_MASS = 0.008;

export function jointPin(kit: Kit, id: string, place: PartPlace, pose: Part['pose']): Part {
  const { diameter, length, headDiameter, headHeight } = kit.jointPin;
  return { id, kind: 'joint-pin', place, shape: { form: 'pin', diameter, length, headDiameter, headHeight }, pose, group: null, mass: PIN_MASS };
}

export function wingNut(kit: Kit, id: string, place: PartPlace, pose: Part['pose']): Part {
  const { diameter, wingSpan, nutHeight } = kit.jointPin;
  return { id, kind: 'wing-nut', place, shape: { form: 'wing-nut', bore: diameter, span: wingSpan, height: nutHeight }, pose, group: null, mass: NUT_MASS };
}
