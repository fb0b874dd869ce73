import type { Check } from '../types.ts';
import { backrestPanel, backrestTube } from './backrest.ts';
import { bracing } from './bracing.ts';
import { pinBearing, pinShear } from './joint-pin.ts';
import { panelCore, panelSag, panelSkin } from './panel.ts';
import { postBending } from './post-bending.ts';
import { postBuckling } from './post-buckling.ts';
import { edgeSag, adultEdge } from './edge-load.ts';
import { guardPush } from './guard-push.ts';
import { jointTest } from './joint-test.ts';
import { longTermSag } from './long-term-sag.ts';
import { pinSkin } from './pin-skin.ts';
import { cablePull, sway } from './sway.ts';
import { tubeBending } from './tube-bending.ts';
import { tubeDeflection } from './tube-deflection.ts';

/** Does it bear the load on its decks? Every one gets worse, or stays, as the load grows. */
export const loadChecks: readonly Check[] = [
  tubeBending, tubeDeflection,
  panelSag, panelSkin, panelCore, pinSkin, longTermSag,
  postBuckling, postBending, pinShear, pinBearing,
  backrestTube, backrestPanel,
  bracing, sway, cablePull,
];

/** Loads of their own, whatever the deck bears, and the joints' test. */
export const fixedLoadChecks: readonly Check[] = [edgeSag, adultEdge, guardPush, jointTest];
