import type { Check } from '../types.ts';
import { creaseAngle } from './crease-angle.ts';
import { holeDepths } from './hole-depth.ts';
import { jointsApart, postReach } from './joints-apart.ts';
import { pinLength } from './pin-length.ts';
import { pinsApart } from './pins-apart.ts';
import { stockCable } from './stock-cable.ts';
import { stockPanel } from './stock-panel.ts';
import { stockPlate } from './stock-plate.ts';
import { stockTube } from './stock-tube.ts';
import { tabEdge, tabLength } from './tab-pins.ts';
import { oppositeTabs, tabsApart } from './tabs-apart.ts';

/** Can it be cut from the stock, folded and put together? */
export const fitChecks: readonly Check[] = [
  stockPanel, stockPlate, stockTube, stockCable,
  creaseAngle, tabLength, tabEdge, pinLength, holeDepths, pinsApart, tabsApart, oppositeTabs,
  jointsApart, postReach,
];
