import type { Model } from '../../model/index.ts';
import { reachAt } from '../flat/folded/bend-lines.ts';
import { foldedPanels, type FoldedPanel } from '../folded-panels.ts';
import { creaseStrip } from './crease-strip.ts';
import { pinStrips, type PinnedFlap } from './pin-strip.ts';
import { postStrips } from './post-strip.ts';
import type { Strip } from './strip.ts';

/**
 * The gauges of an item: for the creases, for the pins of each kind of side, for each kind of post. Flaps that are wrapped have
 * the same creases on every panel; a tray's are on its template.
 */
export function stripsOf(model: Model): readonly Strip[] {
  const panels = foldedPanels(model);
  return [
    ...(panels.some(({ pattern: { form } }) => form === 'wrapped') ? [creaseStrip(model)] : []),
    ...pinStrips(panels.flatMap(pinnedFlaps), model.kit.panelPin.diameter),
    ...postStrips(model),
  ];
}

/** The flaps of a panel whose tabs are pinned. */
function pinnedFlaps({ full, pattern }: FoldedPanel): readonly PinnedFlap[] {
  if (full !== null) return full.flaps;
  return pattern.flaps.filter(({ pins }) => pins.length > 0).map((flap) => {
    const [from, to] = reachAt(flap, flap.edge);
    return { from, to, pins: flap.pins, edge: flap.edge, pinLine: flap.pinLine, corner: flap.corner };
  });
}
