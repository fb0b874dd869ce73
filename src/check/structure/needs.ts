import { findingNames, type FindingName } from '../names.ts';
import { isNearChildren } from '../rules.ts';
import { idsOf } from '../parts.ts';
import type { Finding, NotApplied } from '../types.ts';
import type { StructureCase } from './case.ts';
import { isScreen } from './standing.ts';
import type { Place } from '../../read/index.ts';

/** What a check asks of an item before it says anything, and why it is silent without. */
interface Need { readonly met: (given: StructureCase) => boolean; readonly because: string }

const used = (...uses: readonly Place['use'][]) => ({ model }: StructureCase): boolean => model.places.some(({ use }) => uses.includes(use));
const fitting = (...kinds: readonly string[]) => ({ model }: StructureCase): boolean => model.parts.some(({ shape }) => shape.form === 'fitting' && kinds.includes(shape.fitting.is));
const form = (...forms: readonly string[]) => ({ model }: StructureCase): boolean => model.patterns.some((pattern) => forms.includes(pattern.form));

const bed: Need = { met: () => false, because: 'guards are measured on beds of decks, frames and panels only' };
const folded: Need = { met: form('wrapped', 'tray'), because: 'no panel is folded' };
const wrapped: Need = { met: form('wrapped'), because: 'no panel is wrapped' };
const tabs: Need = { met: () => false, because: 'no two tabs that face each other' };
const flat: Need = { met: form('flat'), because: 'no flat panel on it' };
const cables: Need = { met: ({ model }) => idsOf(model, 'cable').length > 0, because: 'no cords on it' };
const bears: Need = { met: ({ bearings }) => bearings.length > 0, because: 'it bears nothing' };
const stored: Need = { met: used('shelf', 'box'), because: 'for shelves and boxes only' };
const storage: Need = { met: (given) => given.model.use === 'storage' && !isScreen(given), because: 'for storage only' };
const partition: Need = { met: (given) => !isScreen(given), because: 'a partition is judged by a push alone' };
const back: Need = { met: used('backrest'), because: 'no backrest on it' };
const edge: Need = { met: used('table', 'bed'), because: 'for tables and beds only' };
const sat: Need = { met: used('seat', 'table', 'bed'), because: 'for seats, tables and beds only' };
const stands: Need = { met: ({ standing }) => standing !== null, because: 'the frame gives way, see bracing' };
const ground: Need = { met: ({ edges }) => edges.length > 0, because: 'what it stands on lies in one line' };
const sleeves: Need = { met: () => false, because: 'no tube runs through two joints' };
const lid: Need = { met: used('lid'), because: 'no lid on it' };
const castors: Need = { met: fitting('castor'), because: 'no castors under it' };
const brackets: Need = { met: fitting('wall-bracket'), because: 'no wall bracket on it' };
const near: Need = { met: ({ declared }) => isNearChildren(declared), because: 'for furniture that children use only' };
const pupils: Need = { met: ({ declared }) => declared.mark !== null, because: 'for school furniture with a size mark only' };
const gaps: Need = { met: () => false, because: 'no gap within reach' };
const judged: Need = { met: () => false, because: 'each place is judged at the load of its own use' };

const needs: { readonly [name in FindingName]?: readonly Need[] } = {
  'stock-panel': [folded], 'stock-plate': [flat], 'stock-cable': [cables], 'crease-angle': [folded], 'tab-pins': [folded], 'tab-edge': [folded], 'pin-length': [folded], 'hole-depth': [folded],
  'pins-apart': [tabs], 'tabs-apart': [wrapped, tabs], 'opposite-tabs': [wrapped, tabs], 'joints-apart': [sleeves], 'post-reach': [sleeves],
  'tube-bending': [bears], 'tube-deflection': [bears], 'panel-sag': [bears], 'panel-skin': [bears], 'panel-core': [bears], 'pin-skin': [wrapped], 'long-term-sag': [stored],
  'post-buckling': [sleeves], 'post-bending': [stands], 'backrest-tube': [back], 'backrest-panel': [back], sway: [stands], 'cable-pull': [cables, stands],
  'edge-sag': [edge], 'adult-edge': [edge], 'use-load': [judged], 'wall-height': [storage], 'tip-test': [storage], 'tip-scope': [storage], slenderness: [partition],
  'tip-loaded': [bears, ground], 'tip-angle': [ground], 'tip-edge': [sat, ground], 'tip-back': [back, ground],
  'finger-gap': [near, gaps], 'limb-gap': [near, gaps], 'size-mark': [pupils],
  'castor-load': [castors], 'castor-brake': [castors], 'wall-hold': [brackets], 'lid-holds': [lid], 'lid-gap': [lid], 'lid-vent': [lid], 'lid-lift': [lid],
};

/** Names about beds, which a structure never answers. */
const ofBeds: readonly FindingName[] = ['guard-push', 'raised-bed', 'one-bed', 'bed-cord', 'guard-sides', 'guard-height', 'guard-end', 'guard-opening', 'guard-slat', 'mattress-gap', 'mattress-held'];

/** The checks that said nothing, each with its reason. */
export function silentOf(given: StructureCase, findings: readonly Finding[]): readonly NotApplied[] {
  const told = new Set(findings.map(({ name }) => name));
  return findingNames.filter((name) => !told.has(name)).map((name) => ({
    name, because: ofBeds.includes(name) ? (used('bed')(given) ? bed.because : 'for beds only') : needs[name]?.find((need) => !need.met(given))?.because ?? 'nothing to measure',
  }));
}
