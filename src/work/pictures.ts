import type { WorkPicture } from '../draw/work-kit/index.ts';
import { picture as brace } from './brace/picture.ts';
import { picture as capEnds } from './cap-ends/picture.ts';
import { picture as closeFrame } from './close-frame/picture.ts';
import { picture as crease } from './crease/picture.ts';
import { picture as cutBlank } from './cut-blank/picture.ts';
import { picture as cutNotches } from './cut-notches/picture.ts';
import { picture as cutPanel } from './cut-panel/picture.ts';
import { picture as cutTubes } from './cut-tubes/picture.ts';
import { picture as drill } from './drill/picture.ts';
import { picture as fitBracket } from './fit-bracket/picture.ts';
import { picture as fitEnd } from './fit-end/picture.ts';
import { picture as fitHinge } from './fit-hinge/picture.ts';
import { picture as fixToWall } from './fix-to-wall/picture.ts';
import { picture as halfCut } from './half-cut/picture.ts';
import { picture as holdPanel } from './hold-panel/picture.ts';
import { picture as layFrame } from './lay-frame/picture.ts';
import { picture as layPanel } from './lay-panel/picture.ts';
import { picture as markCreases } from './mark-creases/picture.ts';
import { picture as markInside } from './mark-inside/picture.ts';
import { picture as markNotches } from './mark-notches/picture.ts';
import { picture as markPosts } from './mark-posts/picture.ts';
import { picture as pinCorners } from './pin-corners/picture.ts';
import { picture as pinSide } from './pin-side/picture.ts';
import { picture as pinPanel } from './pin-panel/picture.ts';
import { picture as pinPosts } from './pin-posts/picture.ts';
import { picture as punchHoles } from './punch-holes/picture.ts';
import { picture as punchTab } from './punch-tab/picture.ts';
import { picture as pushPosts } from './push-posts/picture.ts';
import { picture as pushTubes } from './push-tubes/picture.ts';
import { picture as setIn } from './set-in/picture.ts';
import { picture as slideOn } from './slide-on/picture.ts';
import { picture as standUp } from './stand-up/picture.ts';
import { picture as turnItem } from './turn-item/picture.ts';
import { picture as turnUp } from './turn-up/picture.ts';
import { picture as wrapSide } from './wrap-side/picture.ts';
import type { Action } from './facts.ts';

/** The pictogram of each kind of work, and what its steps are drawn on; in the order in which the pictograms are listed. */
export const PICTURES: Readonly<Record<Action, WorkPicture>> = {
  'cut-tubes': cutTubes,
  'cap-ends': capEnds,
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
  'turn-up': turnUp,
  'pin-corners': pinCorners,
  'set-in': setIn,
  'lay-frame': layFrame,
  'wrap-side': wrapSide,
  'punch-tab': punchTab,
  'pin-side': pinSide,
  'mark-posts': markPosts,
  'push-posts': pushPosts,
  'slide-on': slideOn,
  drill,
  'pin-posts': pinPosts,
  'fit-end': fitEnd,
  'fit-hinge': fitHinge,
  'fit-bracket': fitBracket,
  'turn-item': turnItem,
  'stand-up': standUp,
  'cut-panel': cutPanel,
  'lay-panel': layPanel,
  'hold-panel': holdPanel,
  'pin-panel': pinPanel,
  brace,
  'fix-to-wall': fixToWall,
};
