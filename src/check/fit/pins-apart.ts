import { placed, type Model, type Part, type Vec2 } from '../../model/index.ts';
import { judge } from '../judge.ts';
import { distance, partsOf } from '../parts.ts';
import type { Check, Finding } from '../types.ts';

interface Pair { readonly ids: readonly [string, string]; readonly apart: number }

/** No two pins of one panel are in each other's way: the heads of a deck's, the wings of a flat panel's nuts. */
export const pinsApart: Check = ({ model }) => [...headsApart(model), ...wingsApart(model)];

/** Pin heads of one side or of neighbouring sides: middles a head apart. */
function headsApart(model: Model): readonly Finding[] {
  const pairs = pairsOf(partsOf(model, 'panel-pin'));
  const closest = least(pairs.map((pair) => pair.apart));
  if (pairs.length === 0) return [];
  const head = model.kit.panelPin.headDiameter;
  const touching = pairs.filter((pair) => pair.apart <= Math.max(closest, head - 1e-6) + 1e-6);
  return [judge({
    name: 'pins-apart', figure: closest, limit: head, bound: 'least', unit: 'mm',
    source: 'geometry: diameter of the pin head (C)', parts: [...new Set(touching.flatMap((pair) => pair.ids))].sort(),
  })];
}

/** Wing nuts side by side: each must turn past its neighbour, so middles a span apart. */
function wingsApart({ kit, plates }: Model): readonly Finding[] {
  return plates.map(({ holes, partIds }) => judge({
    name: 'pins-apart', figure: closestOf(holes.map(({ at }) => at)), limit: kit.jointPin.wingSpan, bound: 'least', unit: 'mm',
    source: 'geometry: span of the wing nut, which must turn (C)', parts: partIds,
  }));
}

const closestOf = (places: readonly Vec2[]): number =>
  least(places.flatMap((one, index) => places.slice(index + 1).map((other) => Math.hypot(one[0] - other[0], one[1] - other[1]))));

/** Infinite where there are none. Pairs are too many for the arguments of one call. */
const least = (values: readonly number[]): number => values.reduce((lowest, value) => Math.min(lowest, value), Infinity);


function pairsOf(pins: readonly Part[]): readonly Pair[] {
  const middles = pins.map((pin) => ({ pin, at: placed(pin.pose, [0, 0, 0]) }));
  return middles.flatMap((a, index) => middles.slice(index + 1)
    .filter((b) => a.pin.group === b.pin.group)
    .map((b) => ({ ids: [a.pin.id, b.pin.id] as const, apart: distance(a.at, b.at) })));
}
