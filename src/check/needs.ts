import { idsOf } from './parts.ts';
import { backrestsOf } from './stand/backrest.ts';
import { findingNames, type FindingName } from './names.ts';
import { isNearChildren } from './rules.ts';
import { openEdges } from './load/edges.ts';
import { beddingGap } from './children/mattress.ts';
import { plateGaps, sleeveGaps } from './children/plate-gaps.ts';
import type { Case, Finding, NotApplied } from './types.ts';

/** Something that a check asks of an item before it says anything, and why it is silent without. */
interface Need {
  readonly met: (given: Case) => boolean;
  readonly because: string;
}

const plates = ({ model }: Case): number => idsOf(model, 'flat-panel').length;

const storage: Need = { met: ({ model }) => model.use === 'storage', because: 'for storage only' };
const light: Need = { met: ({ model }) => model.use !== 'storage', because: 'not for storage, which is told what it bears' };
const seat: Need = { met: ({ model }) => backrestsOf(model).length > 0, because: 'for seats with a backrest only' };
const bed: Need = { met: ({ model }) => model.use === 'bed', because: 'for beds only' };
const guards: Need = { met: (given) => plates(given) > 0, because: 'no flat panel stands on it' };
const overGuards: Need = { met: (given) => plateGaps(given.model).some(({ what }) => what === 'panel and post' || what === 'panel and panel'), because: 'no opening beside a guard' };
const edge: Need = { met: ({ model }) => model.use === 'table' || model.use === 'bed', because: 'for tables and beds only' };
const open: Need = { met: (given) => openEdges(given).length > 0, because: 'a guard stands on every edge' };
const cables: Need = { met: ({ model }) => idsOf(model, 'cable').length > 0, because: 'no cables on it' };
const stands: Need = { met: ({ stance }) => stance.braced !== null, because: 'the frame gives way or its posts are too short, see bracing and post-reach' };
const near: Need = { met: ({ declared }) => isNearChildren(declared), because: 'for furniture that children use only' };
const pupils: Need = { met: ({ declared }) => declared.mark !== null, because: 'for school furniture with a size mark only' };
const between: Need = { met: (given) => beddingGap(given).length > 0, because: 'the mattress has no two sides that face each other' };
const gaps: Need = { met: ({ model }) => plateGaps(model).some(({ narrow }) => narrow > 0), because: 'no gap round a flat panel' };
const anyGap: Need = { met: ({ model }) => [...plateGaps(model), ...sleeveGaps(model)].some(({ narrow }) => narrow > 0), because: 'no gap within reach' };
const structure = (what: string): Need => ({ met: () => false, because: what });
const levels: Need = { met: ({ model }) => sleeveGaps(model).length > 0, because: 'only one joint on each post' };

/** What each check needs, the first that is not met is told. A name that is not here always says something. */
const needs: { readonly [name in FindingName]?: readonly Need[] } = {
  'stock-plate': [guards], 'stock-cable': [cables], 'joints-apart': [levels], 'long-term-sag': [storage],
  'post-bending': [stands], sway: [stands], 'cable-pull': [cables, stands], 'backrest-tube': [seat], 'backrest-panel': [seat],
  'edge-sag': [edge, open], 'adult-edge': [edge, open], 'guard-push': [bed, guards], 'use-load': [light],
  'castor-load': [structure('no castors under it')], 'castor-brake': [structure('no castors under it')], 'wall-hold': [structure('no wall bracket on it')],
  'lid-holds': [structure('no lid on it')], 'lid-gap': [structure('no lid on it')], 'lid-vent': [structure('no lid on it')], 'lid-lift': [structure('no lid on it')],
  'wall-height': [storage], 'tip-test': [storage], 'tip-scope': [storage], 'tip-edge': [light], 'tip-back': [seat],
  'raised-bed': [bed], 'one-bed': [bed], 'bed-cord': [bed], 'guard-sides': [bed], 'guard-height': [bed, guards], 'guard-end': [bed, guards],
  'guard-opening': [bed, overGuards], 'guard-slat': [bed, overGuards], 'mattress-gap': [bed, between], 'mattress-held': [bed],
  'finger-gap': [near, anyGap], 'limb-gap': [near, gaps], 'size-mark': [pupils],
};

/** The checks that said nothing, each with its reason. */
export function notAppliedOf(given: Case, findings: readonly Finding[]): readonly NotApplied[] {
  const told = new Set(findings.map(({ name }) => name));
  return findingNames.filter((name) => !told.has(name))
    .map((name) => ({ name, because: needs[name]?.find((need) => !need.met(given))?.because ?? 'nothing to measure' }));
}
