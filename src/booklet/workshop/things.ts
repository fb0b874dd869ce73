import type { PackInput } from './types.ts';

/** Protection and consumables; keys under `pack.bring.things`. */
export interface ThingCount {
  readonly name: 'gloves' | 'glasses' | 'masks' | 'blades' | 'water' | 'cloths' | 'bags' | 'first-aid' | 'booklets' | 'sheets';
  readonly count: number;
}

/** Shares of the consumables: common practice, no source. */
const bladesForKnife = 5;
const clothsForTeam = 2;
const bagsForTeam = 1;

/** Protection for every learner, the trainer and a guest; consumables for each team; print for each team and item. */
export function thingsFor({ timetable: { crew, days }, tools, items, preparingPairs }: PackInput): readonly ThingCount[] {
  const teams = crew.teams.length;
  const people = crew.learners + 2;
  // The pairs of the day before work without the learners: their masks are another day's.
  const masks = people * days.length + 2 * preparingPairs;
  const knives = tools.find(({ tool }) => tool === 'knife');
  return [
    { name: 'gloves', count: people },
    { name: 'glasses', count: people },
    { name: 'masks', count: masks },
    { name: 'blades', count: bladesForKnife * Math.max(1, knives?.learners ?? 0, knives?.before ?? 0) },
    { name: 'water', count: teams },
    { name: 'cloths', count: clothsForTeam * teams },
    { name: 'bags', count: bagsForTeam * teams * days.length },
    { name: 'first-aid', count: 1 },
    { name: 'booklets', count: teams * items.length },
    { name: 'sheets', count: items.length },
  ];
}
