import type { Check } from '../types.ts';
import { backrestPanel, backrestTube } from './backrest.ts';
import { bracing } from './bracing.ts';
import { pinBearing, pinShear } from './joint-pin.ts';
import { panelCore, panelSag, panelSkin } from './panel.ts';
import { postBending } from './post-bending.ts';
import { postBuckling } from './post-buckling.ts';
import { cablePull, sway, swayWithoutCables } from './sway.ts';
import { tubeBending } from './tube-bending.ts';
import { tubeDeflection } from './tube-deflection.ts';

/** Does it bear the load on its decks? Every one gets worse, or stays, as the load grows. */
export const loadChecks: readonly Check[] = [
  tubeBending, tubeDeflection,
  panelSag, panelSkin, panelCore,
  postBuckling, postBending, pinShear, pinBearing,
  backrestTube, backrestPanel,
  bracing, sway, swayWithoutCables, cablePull,
];
