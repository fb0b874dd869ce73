import type { Flap } from '../../model/index.ts';
import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import type { Check } from '../types.ts';

/**
 * The tab, from half-cut to edge, holds the pin's distance from the edge and half a head, so that no head
 * rides up the half-cut (geometry of the flat pattern).
 */
export const tabLength: Check = ({ model }) => {
  const flap = shortestTab(model.pattern.flaps);
  if (!flap) return [];
  return [judge({
    name: 'tab-pins', figure: flap.edge - flap.halfCut,
    limit: flap.edge - flap.pinLine + model.kit.panelPin.headDiameter / 2, bound: 'least', unit: 'mm',
    source: 'geometry: pin line and half a pin head inside the half-cut (C)', parts: idsOf(model, 'panel', 'panel-pin'),
  })];
};

const shortestTab = (flaps: readonly Flap[]): Flap | undefined =>
  flaps.toSorted((a, b) => (a.pinLine - a.halfCut) - (b.pinLine - b.halfCut))[0];

/** No head hangs over the tab's edge, its end or the snip of its corner (geometry of the flat pattern). */
export const tabEdge: Check = ({ model }) => [judge({
  name: 'tab-edge', figure: Math.min(...model.pattern.flaps.flatMap(pinToEdges)),
  limit: model.kit.panelPin.headDiameter / 2, bound: 'least', unit: 'mm',
  source: 'geometry: half a pin head inside the tab (C)', parts: idsOf(model, 'panel', 'panel-pin'),
})];

/** From each pin of a flap to the nearest edge of its tab, mm. */
function pinToEdges(flap: Flap): readonly number[] {
  const fromEdge = flap.edge - flap.pinLine;
  return flap.pins.map((pin) => {
    const fromEnd = Math.min(pin - flap.from, flap.to - pin);
    return Math.min(fromEdge, fromEnd, (fromEdge + fromEnd - flap.corner) / Math.SQRT2);
  });
}
