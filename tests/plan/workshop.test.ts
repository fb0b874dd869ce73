import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { longestDay, preparingPairs, timetableOf, toolsAtOnce, WORK, type OrderedWork, type Step, type Task, type Timetable } from '../../src/plan/index.ts';
import { rackPlan } from '../booklet/pages/rack-booklet.ts';

const START = 510;
const rack = (count: number): OrderedWork => ({ item: 'rack', size: 'standard', count, steps: rackPlan.steps });

/** A work of steps told by action, minutes a time, times and people. */
const work = (count: number, ...steps: readonly (readonly [Step['action'], number, number, 1 | 2])[]): OrderedWork => ({
  item: 'thing', size: 'one', count,
  steps: steps.map(([action, minutes, times, people], index): Step => ({
    number: index + 1, key: action, action, detail: { on: 'whole' }, side: null, run: null, times, people, minutes: minutes * (1 + (times - 1) * (WORK[action].traced ?? 1)),
    newParts: [], present: [], motions: [], drilled: [], drillsFor: [], folded: [], held: [], props: [], footing: { before: [], after: [] }, toHand: [], supplies: [], sizes: {}, standing: { name: 'bench', pose: [] }, tools: ['knife'], cautions: [], check: null, waits: 0,
  })),
});

const minutesOf = (tasks: readonly Task[]): number => tasks.reduce((sum, { start, end }) => sum + end - start, 0);
const cut = (step: Step): boolean => ['cut-tubes', 'cap-ends', 'cut-blank', 'cut-panel'].includes(step.action);
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** What holds of every timetable. */
function expectSound(works: readonly OrderedWork[], learners: number, { crew, tasks, days, prepared }: Timetable): void {
  // Every learner is in one team, and every team has two people at least, but for one who is alone.
  expect(sum(crew.teams)).toBe(learners);
  expect(Math.min(...crew.teams)).toBeGreaterThanOrEqual(Math.min(2, learners));
  expect(Math.max(...crew.teams) - Math.min(...crew.teams)).toBeLessThanOrEqual(1);
  expect(crew.trainerHelps).toBe(learners < 2);

  // All work of all pieces is done, once: by the learners or the day before.
  const own = sum(works.map(({ count, steps }) => count * sum(steps.filter((step) => !cut(step)).map((step) => step.minutes))));
  const before = sum(works.map(({ count, steps }) => count * sum(steps.filter(cut).map((step) => step.minutes))));
  expect(minutesOf(tasks)).toBeCloseTo(own, 6);
  expect(sum(prepared.filter(({ sample }) => !sample).map(({ minutes }) => minutes))).toBeCloseTo(before, 6);
  works.forEach(({ count, steps }, index) => {
    for (const step of steps.filter((each) => !cut(each))) {
      const done = tasks.filter((task) => task.work === index && task.step === step).flatMap(({ piece, from, to }) =>
        Array.from({ length: to - from + 1 }, (_, place) => `${piece}/${from + place}`));
      expect(new Set(done).size).toBe(done.length);
      expect(done).toHaveLength(count * step.times);
    }
  });

  crew.teams.forEach((people, team) => {
    const mine = tasks.filter((task) => task.team === team);
    mine.slice(1).forEach((task, index) => {
      const last = mine[index];
      if (!last) throw new Error('no task');
      // Nobody is in two places: a task begins when the one before has ended.
      expect(task.day * 1440 + task.start).toBeGreaterThanOrEqual(last.day * 1440 + last.end - 1e-6);
      // One piece after the other, its steps in their order.
      if (task.work === last.work && task.piece === last.piece) expect([task.step.number > last.step.number, task.step === last.step && task.from === last.to + 1]).toContain(true);
    });
    for (const { step } of mine) expect(step.people).toBeLessThanOrEqual(crew.trainerHelps ? people + 1 : people);
  });

  for (const { step, from, to, day, start, end } of tasks) {
    expect(end - start).toBeCloseTo(((to - from + 1) * step.minutes) / step.times, 6);
    // Within one session: no work runs into a break, the cleaning up or the night.
    const sessions = days[day - 1]?.blocks.filter(({ kind }) => kind === 'work') ?? [];
    expect(sessions.some((session) => start >= session.start - 1e-6 && end <= session.end + 1e-6), `${day} ${start}–${end}`).toBe(true);
  }
  days.forEach(({ day, blocks }, index) => {
    expect(day).toBe(index + 1);
    expect(blocks[0]?.start).toBe(START);
    blocks.slice(1).forEach((block, place) => { expect(block.start).toBeCloseTo(blocks[place]?.end ?? NaN, 6); });
    for (const { kind, start, end } of blocks) if (kind === 'work') expect(end - start).toBeLessThanOrEqual(90 + 1e-6);
    expect(blocks.filter(({ kind }) => kind === 'clean-up')).toHaveLength(1);
    expect((blocks.at(-1)?.end ?? NaN) - START).toBeLessThanOrEqual(longestDay + 1e-6);
  });
  expect(days[0]?.blocks[0]?.kind).toBe('opening');
  expect(days.at(-1)?.blocks.at(-1)?.kind).toBe('closing');
}

describe('the timetable', () => {
  it.each([[6, 12], [2, 12], [7, 12], [3, 1], [5, 3], [1, 200]])('of %i racks for %i learners adds up', (count, learners) => {
    expectSound([rack(count)], learners, timetableOf([rack(count)], learners, START));
  });

  it('of any work and any number of learners adds up', () => {
    const actions: readonly Step['action'][] = ['cut-tubes', 'mark-creases', 'crease', 'wrap-side', 'drill', 'brace', 'cut-blank'];
    const step = fc.tuple(fc.constantFrom(...actions), fc.integer({ min: 1, max: 90 }), fc.integer({ min: 1, max: 5 }), fc.constantFrom<1 | 2>(1, 2));
    const works = fc.array(fc.record({ count: fc.integer({ min: 1, max: 9 }), steps: fc.array(step, { minLength: 1, maxLength: 6 }) }), { minLength: 1, maxLength: 3 });
    fc.assert(fc.property(works, fc.integer({ min: 1, max: 40 }), (drafts, learners) => {
      const order = drafts.map(({ count, steps }) => work(count, ...steps));
      expectSound(order, learners, timetableOf(order, learners, START));
    }), { numRuns: 60 });
  });

  it('has a first day of half past eight, one hour of work, and breaks, as worked out by hand', () => {
    const { tasks, days } = timetableOf([work(1, ['crease', 25, 4, 2], ['brace', 90, 1, 2])], 2, START);
    // 08:30 opening, 09:00 to 10:00 holds two times 25 min, 10:15 to 11:45 the other two; 90 min fit only after lunch.
    expect(tasks.map(({ start, end, from, to }) => [start, end, from, to])).toEqual([[540, 590, 1, 2], [615, 665, 3, 4], [765, 855, 1, 1]]);
    expect(days[0]?.blocks.map(({ kind, start }) => `${kind} ${start}`)).toEqual([
      'opening 510', 'work 540', 'break 600', 'work 615', 'lunch 705', 'work 765', 'clean-up 855', 'closing 870',
    ]);
  });

  it('goes on when what waits is dry: through breaks and nights, before the next step of the piece alone', () => {
    const glued = (waits: number): OrderedWork => {
      const plain = work(1, ['crease', 20, 2, 2], ['brace', 30, 1, 2]);
      return { ...plain, steps: plain.steps.map((step, index) => (index === 0 ? { ...step, waits } : step)) };
    };
    const brace = (waits: number): readonly (number | undefined)[] => {
      const last = timetableOf([glued(waits)], 2, START).tasks.at(-1);
      return [last?.day, last?.start];
    };
    // Creased from 09:00 to 09:40; a session ends at 10:00, the next one begins at 10:15, the last one ends at 16:45.
    expect(brace(0)).toEqual([1, 615]);
    expect(brace(40)).toEqual([1, 620]);
    expect(brace(10 * 60)).toEqual([2, 510]);
    expect(brace(24 * 60)).toEqual([2, 615]);
  });

  it('refuses a step that no session is long enough for', () => {
    expect(() => timetableOf([work(1, ['crease', 91, 2, 2])], 2, START)).toThrow(/step 1 \(crease\) takes 91 min at a time; a session has 90 min/);
  });

  it('shares pieces out evenly, and makes larger teams when there are few', () => {
    const { crew, tasks } = timetableOf([rack(8)], 13, START);
    expect(crew.teams).toEqual([3, 2, 2, 2, 2, 2]);
    const pieces = crew.teams.map((_, team) => new Set(tasks.filter((task) => task.team === team).map(({ piece }) => piece)).size);
    expect(pieces).toEqual([2, 2, 1, 1, 1, 1]);
    expect(timetableOf([rack(2)], 13, START).crew.teams).toEqual([7, 6]);
  });
});

describe('what is prepared', () => {
  it('is all cutting to size, and one sample of each marking', () => {
    const { prepared } = timetableOf([work(5, ['cut-tubes', 50, 1, 2], ['cut-blank', 8, 4, 2], ['mark-creases', 12, 4, 1], ['crease', 8, 4, 2])], 10, START);
    expect(prepared.map(({ action, pieces, sample, minutes }) => [action, pieces, sample, minutes])).toEqual([
      ['cut-tubes', 5, false, 250], ['cut-blank', 5, false, 112], ['mark-creases', 1, true, 12],
    ]);
    // 374 min of work for two; a day has 360.
    expect(preparingPairs(prepared)).toBe(2);
  });
});

describe('tools', () => {
  it('are as many as teams that use them at the same moment', () => {
    const order = [work(4, ['crease', 10, 1, 2], ['brace', 10, 1, 2])];
    expect(toolsAtOnce(order, timetableOf(order, 8, START))).toEqual([{ tool: 'knife', learners: 4, before: 0 }]);
    expect(toolsAtOnce(order, timetableOf(order, 5, START))).toEqual([{ tool: 'knife', learners: 2, before: 0 }]);
  });

  it('of the standard rack: a saw only the day before, no hands', () => {
    const counts = toolsAtOnce([rack(6)], timetableOf([rack(6)], 12, START));
    expect(counts.find(({ tool }) => tool === 'saw')).toEqual({ tool: 'saw', learners: 0, before: 2 });
    expect(counts.map(({ tool }) => tool)).not.toContain('hands');
    expect(counts.find(({ tool }) => tool === 'drill')?.learners).toBe(6);
  });
});
