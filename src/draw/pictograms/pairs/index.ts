import { wallsUpright } from './box.ts';
import { feetStand } from './feet.ts';
import { frameCentred, frameSquare } from './frame.ts';
import { handlePushed } from './handle.ts';
import { holeStraight, nutTight, pinHome, tabPressed, tubeHome } from './joints.ts';
import { crease, halfCut, notch, notchSharp, tabFlat } from './panel.ts';
import { bedChild, panelFlush } from './plates.ts';
import type { Pair } from './pair.ts';
import { cableTight, deckLevel, rackUpright } from './rack.ts';
import { cutSquare, endSmooth, mark } from './tubes.ts';
import { wallHolds } from './walls.ts';

/** One pair for each check that is drawn as right and wrong. */
export const pairPictures = {
  'half-cut': halfCut,
  'frame-centred': frameCentred,
  'frame-square': frameSquare,
  'tab-flat': tabFlat,
  'tab-pressed': tabPressed,
  'tube-home': tubeHome,
  'nut-tight': nutTight,
  'hole-straight': holeStraight,
  'deck-level': deckLevel,
  'cable-tight': cableTight,
  crease,
  'rack-upright': rackUpright,
  'feet-stand': feetStand,
  'handle-pushed': handlePushed,
  notch,
  'notch-sharp': notchSharp,
  'pin-home': pinHome,
  'cut-square': cutSquare,
  mark,
  'panel-flush': panelFlush,
  'bed-child': bedChild,
  'end-smooth': endSmooth,
  'wall-holds': wallHolds,
  'walls-upright': wallsUpright,
} as const satisfies Readonly<Record<string, Pair>>;

export type PairName = keyof typeof pairPictures;
