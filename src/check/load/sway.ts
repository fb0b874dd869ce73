import { cantileverDeflection } from '../formulas/beam.ts';
import { pushDeck, type Pushed } from '../formulas/rigid-deck.ts';
import { judge } from '../judge.ts';
import { deckLevels } from '../levels.ts';
import { idsOf } from '../parts.ts';
import type { Case, Check } from '../types.ts';
import { loadedWeight } from '../weights.ts';
import { baysOf, type Bay } from './bays.ts';
import { joinsAllDecks } from './bracing.ts';
import { tubeModulus, tubeSecond } from './deck.ts';

const DIRECTIONS = ['x', 'y'] as const;

/** The push on the top, N: a share of the whole weight and a little more. */
const sideForce = (given: Case): number =>
  given.limits.sideForceShare.value * loadedWeight(given) + given.limits.sideForceLeast.value;

const pushSource = ({ limits }: Case): string => `${limits.sideForceShare.source}, ${limits.sideForceLeast.source}`;

/** Bays that hold in every direction; without them there is nothing to work out and `bracing` has failed. */
function heldBays(given: Case): readonly Bay[] {
  const bays = baysOf(given.model);
  const held = joinsAllDecks(given.model, bays) && bays.every((bay) => bay.walls.length >= 3);
  return held ? bays : [];
}

function pushBay(given: Case, bay: Bay, along: 'x' | 'y'): Pushed {
  const reach = given.model.pattern.axes[along === 'x' ? 1 : 0];
  return pushDeck(bay.walls, sideForce(given), along, reach);
}

/** The four legs under the lowest deck bend as cantilevers from their joints, mm. */
function legDrift(given: Case): number {
  const [lowest = 0] = deckLevels(given.model);
  return cantileverDeflection(sideForce(given) / 4, lowest, tubeModulus(given), tubeSecond(given));
}

/**
 * Drift of the top under the push, mm, in the weaker direction: every bay with one taut cable a face
 * (E A / L · cos²), its decks stiff, shift and turn together; the legs' bending on top.
 */
export const sway: Check = (given) => {
  const bays = heldBays(given);
  if (bays.length === 0) return [];
  const drifts = DIRECTIONS.map((along) => bays.reduce((sum, bay) => sum + pushBay(given, bay, along).drift, legDrift(given)));
  const { driftRatio } = given.limits;
  const height = Math.max(...deckLevels(given.model));
  return [judge({
    name: 'sway', figure: Math.max(...drifts), limit: height / driftRatio.value, bound: 'most', unit: 'mm',
    source: `E A / L · cos² a taut cable, stiff decks (C); push ${pushSource(given)}; ${driftRatio.source}`,
    parts: idsOf(given.model, 'cable'),
  })];
};

/** Pull in the hardest worked cable under the push, N: the face's force / cos of the cable's slope. */
export const cablePull: Check = (given) => {
  const pulls = heldBays(given).flatMap((bay) => DIRECTIONS.flatMap((along) => {
    const { wallForces } = pushBay(given, bay, along);
    return bay.walls.map((wall, index) => ({ wall, pull: (wallForces[index] ?? 0) / wall.runShare }));
  }));
  const [hardest] = pulls.toSorted((a, b) => b.pull - a.pull);
  if (!hardest) return [];
  const factor = given.limits.factorOfSafety;
  return [judge({
    name: 'cable-pull', figure: hardest.pull, limit: given.model.kit.cable.strength / factor.value,
    bound: 'most', unit: 'N',
    source: `force of the face / cos (C); push ${pushSource(given)}; strength of the kit / ${factor.value}, ${factor.source}`,
    parts: hardest.wall.cables,
  })];
};
