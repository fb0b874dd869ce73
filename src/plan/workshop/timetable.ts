import type { Step } from '../types.ts';
import { crewOf } from './crew.ts';
import { dayBlocks, daysOf } from './days.ts';
import { dayPractice } from './practice.ts';
import { isPrepared, preparedFor } from './prepared.ts';
import type { Block, OrderedWork, Task, Timetable } from './types.ts';

/**
 * Who does what when: the pieces are shared out among the teams, each team builds its own from the first step to the
 * last, and no step, or no repetition of one, is broken off by the end of a session. `start` is the minute after
 * midnight at which each day begins. Throws a RangeError where one repetition is longer than a session.
 */
export function timetableOf(works: readonly OrderedWork[], learners: number, start: number): Timetable {
  const crew = crewOf(learners, works.reduce((sum, work) => sum + work.count, 0));
  const tasks = piecesOfTeams(works, crew.teams.length).flatMap((pieces, team) => tasksOf(works, pieces, team, start));
  return { crew, tasks, days: daysOf(tasks, start), prepared: preparedFor(works) };
}

interface Piece {
  readonly work: number;
  readonly piece: number;
}

/** Each piece goes to the team that has the least to do, the first of these: so all begin with the item named first. */
function piecesOfTeams(works: readonly OrderedWork[], teams: number): readonly (readonly Piece[])[] {
  const shared = Array.from({ length: teams }, () => ({ minutes: 0, pieces: [] as Piece[] }));
  works.forEach(({ count, steps }, work) => {
    const minutes = steps.reduce((sum, step) => sum + (isPrepared(step) ? 0 : step.minutes), 0);
    for (let piece = 1; piece <= count; piece += 1) {
      const least = shared.reduce((best, team) => (team.minutes < best.minutes ? team : best));
      least.pieces.push({ work, piece });
      least.minutes += minutes;
    }
  });
  return shared.map(({ pieces }) => pieces);
}

/** A place in a team's time: the session it is in and how far that has gone. */
interface Clock {
  readonly day: number;
  readonly session: number;
  readonly at: number;
}

function tasksOf(works: readonly OrderedWork[], pieces: readonly Piece[], team: number, start: number): readonly Task[] {
  const tasks: Task[] = [];
  let clock: Clock = { day: 1, session: 0, at: -Infinity };
  for (const { work, piece } of pieces) {
    for (const step of (works[work]?.steps ?? []).filter((each) => !isPrepared(each))) {
      for (let from = 1; from <= step.times;) {
        const placed = place(step, from, clock, start);
        tasks.push({ team, work, piece, step, from, to: placed.to, day: placed.clock.day, start: placed.start, end: placed.clock.at });
        from = placed.to + 1;
        // What waits does so through breaks and nights as well.
        clock = from > step.times ? { ...placed.clock, at: placed.clock.at + step.waits } : placed.clock;
      }
    }
  }
  return tasks;
}

/** As many repetitions from `from` on as the session has time for, in this session or the next that has time for one. */
function place(step: Step, from: number, clock: Clock, start: number): { readonly to: number; readonly start: number; readonly clock: Clock } {
  const once = step.minutes / step.times;
  if (once > dayPractice.session) {
    throw new RangeError(`step ${step.number} (${step.key}) takes ${once} min at a time; a session has ${dayPractice.session} min`);
  }
  for (let { day, session, at } = clock; ; [day, session, at] = following(day, session, at, start)) {
    const { start: opened, end } = sessionsOf(day, start)[session] ?? { start: Infinity, end: -Infinity };
    const begin = Math.max(opened, at);
    const fit = Math.floor((end - begin) / once + 1e-9);
    if (fit < 1) continue;
    const to = Math.min(step.times, from + fit - 1);
    return { to, start: begin, clock: { day, session, at: begin + (to - from + 1) * once } };
  }
}

const sessionsOf = (day: number, start: number): readonly Block[] => dayBlocks(day, start).filter(({ kind }) => kind === 'work');

const MINUTES_A_DAY = 1440;

/** The next session, and how far the time `at` is then: before it, but where something waits longer. */
const following = (day: number, session: number, at: number, start: number): readonly [number, number, number] =>
  (session + 1 < sessionsOf(day, start).length ? [day, session + 1, at] : [day + 1, 0, at - MINUTES_A_DAY]);
