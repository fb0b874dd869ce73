import { placed, type Part } from '../../model/index.ts';
import { judge } from '../judge.ts';
import { distance, partsOf } from '../parts.ts';
import type { Check } from '../types.ts';

interface Pair { readonly ids: readonly [string, string]; readonly apart: number }

/** No two pin heads of one panel touch, of one side or of neighbouring sides: middles a head apart. */
export const pinsApart: Check = ({ model }) => {
  const pairs = pairsOf(partsOf(model, 'panel-pin'));
  const closest = Math.min(...pairs.map((pair) => pair.apart));
  if (pairs.length === 0) return [];
  const head = model.kit.panelPin.headDiameter;
  const touching = pairs.filter((pair) => pair.apart <= Math.max(closest, head - 1e-6) + 1e-6);
  return [judge({
    name: 'pins-apart', figure: closest, limit: head, bound: 'least', unit: 'mm',
    source: 'geometry: diameter of the pin head (C)', parts: [...new Set(touching.flatMap((pair) => pair.ids))].sort(),
  })];
};

function pairsOf(pins: readonly Part[]): readonly Pair[] {
  const middles = pins.map((pin) => ({ pin, at: placed(pin.pose, [0, 0, 0]) }));
  return middles.flatMap((a, index) => middles.slice(index + 1)
    .filter((b) => a.pin.group === b.pin.group)
    .map((b) => ({ ids: [a.pin.id, b.pin.id] as const, apart: distance(a.at, b.at) })));
}
