import type { Action } from '../../../plan/index.ts';
import type { Ink } from '../ink.ts';
import { cutBlank, cutNotches, cutTubes, halfCut, punchHoles } from './cutting.ts';
import { crease, pinEnds, pinMiddle, wrapSide } from './folding.ts';
import { closeFrame, layFrame, pushTubes } from './framing.ts';
import { markCreases, markInside, markNotches, markPosts } from './marking.ts';
import { cutPanel, holdPanel, pinPanel, setRails } from './plates.ts';
import { brace, drillPosts, pinPosts, pushPosts, standDecks, standUp, turnDeck, turnItem } from './rack.ts';

/** One picture for each action of the plan. */
export const actionPictures: Readonly<Record<Action, Ink>> = {
  'cut-tubes': cutTubes,
  'cut-blank': cutBlank,
  'mark-inside': markInside,
  'mark-creases': markCreases,
  'mark-notches': markNotches,
  'punch-holes': punchHoles,
  'cut-notches': cutNotches,
  crease,
  'half-cut': halfCut,
  'push-tubes': pushTubes,
  'close-frame': closeFrame,
  'lay-frame': layFrame,
  'wrap-side': wrapSide,
  'pin-ends': pinEnds,
  'pin-middle': pinMiddle,
  'turn-deck': turnDeck,
  'mark-posts': markPosts,
  'stand-decks': standDecks,
  'push-posts': pushPosts,
  drill: drillPosts,
  'pin-posts': pinPosts,
  'turn-item': turnItem,
  'stand-up': standUp,
  'cut-panel': cutPanel,
  'set-rails': setRails,
  'hold-panel': holdPanel,
  'pin-panel': pinPanel,
  brace,
};
