import type { WorkScene } from '../scene/kit/index.ts';
import { scene as brace } from './brace/scene.ts';
import { scene as closeFrame } from './close-frame/scene.ts';
import { scene as drill } from './drill/scene.ts';
import { scene as fitBracket } from './fit-bracket/scene.ts';
import { scene as fitEnd } from './fit-end/scene.ts';
import { scene as fitHinge } from './fit-hinge/scene.ts';
import { scene as fixToWall } from './fix-to-wall/scene.ts';
import { scene as holdPanel } from './hold-panel/scene.ts';
import { scene as layFrame } from './lay-frame/scene.ts';
import { scene as layPanel } from './lay-panel/scene.ts';
import { scene as pinCorners } from './pin-corners/scene.ts';
import { scene as pinSide } from './pin-side/scene.ts';
import { scene as pinPanel } from './pin-panel/scene.ts';
import { scene as pinPosts } from './pin-posts/scene.ts';
import { scene as punchTab } from './punch-tab/scene.ts';
import { scene as pushPosts } from './push-posts/scene.ts';
import { scene as pushTubes } from './push-tubes/scene.ts';
import { scene as setIn } from './set-in/scene.ts';
import { scene as slideOn } from './slide-on/scene.ts';
import { scene as standUp } from './stand-up/scene.ts';
import { scene as turnItem } from './turn-item/scene.ts';
import { scene as turnUp } from './turn-up/scene.ts';
import { scene as wrapSide } from './wrap-side/scene.ts';
import type { Action } from './facts.ts';

/** How each kind of work is shown in space; null for work on the bench, which is told by flat drawings. */
export const SCENES: Readonly<Record<Action, WorkScene | null>> = {
  'cut-tubes': null,
  'cap-ends': null,
  'cut-blank': null,
  'mark-inside': null,
  'mark-creases': null,
  'mark-notches': null,
  'punch-holes': null,
  'cut-notches': null,
  crease: null,
  'half-cut': null,
  'push-tubes': pushTubes,
  'close-frame': closeFrame,
  'turn-up': turnUp,
  'pin-corners': pinCorners,
  'set-in': setIn,
  'lay-frame': layFrame,
  'wrap-side': wrapSide,
  'punch-tab': punchTab,
  'pin-side': pinSide,
  'mark-posts': null,
  'push-posts': pushPosts,
  'slide-on': slideOn,
  drill,
  'pin-posts': pinPosts,
  'fit-end': fitEnd,
  'fit-hinge': fitHinge,
  'fit-bracket': fitBracket,
  'turn-item': turnItem,
  'stand-up': standUp,
  brace,
  'fix-to-wall': fixToWall,
  'cut-panel': null,
  'lay-panel': layPanel,
  'hold-panel': holdPanel,
  'pin-panel': pinPanel,
};
