import type { Tool } from '../types.ts';
import type { OrderedWork, Prepared, Timetable } from './types.ts';
import { dayOfWork } from './practice.ts';

/** How many of a tool are in use at the same moment, by the learners and by those who prepare the day before. */
export interface ToolCount {
  readonly tool: Tool;
  readonly learners: number;
  readonly before: number;
}

/** Pairs that get all that is to be prepared done within one day. */
export const preparingPairs = (prepared: readonly Prepared[]): number =>
  Math.max(1, Math.ceil(prepared.reduce((sum, { minutes }) => sum + minutes, 0) / dayOfWork));

/** Every tool but the hands that the order needs, by how many teams use it at once; each team takes one. */
export function toolsAtOnce(works: readonly OrderedWork[], { tasks, prepared }: Timetable): readonly ToolCount[] {
  const tools = [...new Set(works.flatMap(({ steps }) => steps.flatMap((step) => step.tools)))].filter((tool) => tool !== 'hands');
  const pairs = preparingPairs(prepared);
  return tools.map((tool) => ({
    tool,
    learners: mostAtOnce(tasks.filter(({ step }) => step.tools.includes(tool))),
    before: prepared.some(({ steps }) => steps.some((step) => step.tools.includes(tool))) ? pairs : 0,
  }));
}

/** The most of some stretches of time that run at one moment; one that ends as another begins is past. */
function mostAtOnce(tasks: Timetable['tasks']): number {
  const changes = tasks.flatMap(({ day, start, end }) => [{ day, at: start, by: 1 }, { day, at: end, by: -1 }])
    .sort((a, b) => a.day - b.day || a.at - b.at || a.by - b.by);
  let [now, most] = [0, 0];
  for (const { by } of changes) {
    now += by;
    most = Math.max(most, now);
  }
  return most;
}
