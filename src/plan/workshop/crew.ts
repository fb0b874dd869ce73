import type { Crew } from './types.ts';

/** Two people each, as long as every team has a piece to build; with fewer pieces the teams are larger. */
export function crewOf(learners: number, pieces: number): Crew {
  const count = Math.max(1, Math.min(Math.floor(learners / 2), pieces));
  const teams = Array.from({ length: count }, (_, index) => Math.floor(learners / count) + (index < learners % count ? 1 : 0));
  return { learners, teams, trainerHelps: teams.some((people) => people < 2) };
}
