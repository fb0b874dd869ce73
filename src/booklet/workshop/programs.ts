import type { Task, Timetable } from '../../plan/index.ts';

/** Teams that do the same at the same time, from 1, and what each of them does. */
export interface Program {
  readonly teams: readonly number[];
  readonly tasks: readonly Task[];
}

/** Each team's tasks, a piece counted within its team. */
export const tasksByTeam = ({ crew, tasks }: Timetable): readonly (readonly Task[])[] =>
  crew.teams.map((_, team) => countedInTeam(tasks.filter((task) => task.team === team)));

/** What the teams do in a session of a day, told once for all that do alike. */
export function programsOf(byTeam: readonly (readonly Task[])[], day: number, start: number, end: number): readonly Program[] {
  const found = new Map<string, { teams: number[]; tasks: readonly Task[] }>();
  byTeam.forEach((all, team) => {
    const tasks = all.filter((task) => task.day === day && task.start >= start && task.end <= end);
    const key = tasks.map(({ work, piece, step, from, to, start: begins }) => [work, piece, step.number, from, to, begins].join()).join(' ');
    const alike = found.get(key);
    if (alike) alike.teams.push(team + 1); else found.set(key, { teams: [team + 1], tasks });
  });
  return [...found.values()];
}

/** Pieces numbered from 1 within the team. */
function countedInTeam(tasks: readonly Task[]): readonly Task[] {
  const pieces = (work: number): readonly number[] => [...new Set(tasks.filter((task) => task.work === work).map(({ piece }) => piece))];
  return tasks.map((task) => ({ ...task, piece: pieces(task.work).indexOf(task.piece) + 1 }));
}

/** Some tasks in a row on one piece. */
export interface Stretch {
  readonly work: number;
  readonly piece: number;
  readonly tasks: readonly Task[];
}

/** Tasks of a session, those on the same piece together. */
export function stretchesOf(tasks: readonly Task[]): readonly Stretch[] {
  const stretches: { work: number; piece: number; tasks: Task[] }[] = [];
  for (const task of tasks) {
    const last = stretches.at(-1);
    if (last?.work === task.work && last.piece === task.piece) last.tasks.push(task);
    else stretches.push({ work: task.work, piece: task.piece, tasks: [task] });
  }
  return stretches;
}
