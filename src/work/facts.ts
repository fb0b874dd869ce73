import { facts as brace } from './brace/facts.ts';
import { facts as capEnds } from './cap-ends/facts.ts';
import { facts as closeFrame } from './close-frame/facts.ts';
import { facts as crease } from './crease/facts.ts';
import { facts as cutBlank } from './cut-blank/facts.ts';
import { facts as cutNotches } from './cut-notches/facts.ts';
import { facts as cutPanel } from './cut-panel/facts.ts';
import { facts as cutTubes } from './cut-tubes/facts.ts';
import { facts as drill } from './drill/facts.ts';
import { facts as fitBracket } from './fit-bracket/facts.ts';
import { facts as fitEnd } from './fit-end/facts.ts';
import { facts as fitHinge } from './fit-hinge/facts.ts';
import { facts as fixToWall } from './fix-to-wall/facts.ts';
import { facts as halfCut } from './half-cut/facts.ts';
import { facts as holdPanel } from './hold-panel/facts.ts';
import { facts as layFrame } from './lay-frame/facts.ts';
import { facts as layPanel } from './lay-panel/facts.ts';
import { facts as markCreases } from './mark-creases/facts.ts';
import { facts as markInside } from './mark-inside/facts.ts';
import { facts as markNotches } from './mark-notches/facts.ts';
import { facts as markPosts } from './mark-posts/facts.ts';
import { facts as pinCorners } from './pin-corners/facts.ts';
import { facts as pinSide } from './pin-side/facts.ts';
import { facts as pinPanel } from './pin-panel/facts.ts';
import { facts as pinPosts } from './pin-posts/facts.ts';
import { facts as punchHoles } from './punch-holes/facts.ts';
import { facts as punchTab } from './punch-tab/facts.ts';
import { facts as pushPosts } from './push-posts/facts.ts';
import { facts as pushTubes } from './push-tubes/facts.ts';
import { facts as setIn } from './set-in/facts.ts';
import { facts as slideOn } from './slide-on/facts.ts';
import { facts as standUp } from './stand-up/facts.ts';
import { facts as turnItem } from './turn-item/facts.ts';
import { facts as turnUp } from './turn-up/facts.ts';
import { facts as wrapSide } from './wrap-side/facts.ts';
import type { Rule, WorkFacts } from './types.ts';

export type * from './types.ts';

const facts = {
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
  brace,
  'fix-to-wall': fixToWall,
  'cut-panel': cutPanel,
  'lay-panel': layPanel,
  'hold-panel': holdPanel,
  'pin-panel': pinPanel,
};

/** What the worker does in a step. Key under `actions` in the locale files. */
export type Action = keyof typeof facts;

/**
 * Every kind of work, whatever the item: common practice, no source. Its order is that in which rules are told, and the
 * work that a panel or a side asks for is listed.
 */
export const WORK: Readonly<Record<Action, WorkFacts>> = facts;

/** Every kind of work by name, in the catalogue's order. */
export const ACTIONS = Object.keys(facts) as readonly Action[];

/** What must come before what, of all kinds of work. Common practice, no source, but for what geometry proves as well. */
export const RULES: readonly Rule[] = ACTIONS.flatMap((action) => WORK[action].rules ?? []);
