import { afterSession, dayPractice } from './practice.ts';
import type { Block, Day, Task } from './types.ts';

/** The sessions of a day, with breaks; the first day begins with the opening, in its first session's time. */
export function dayBlocks(day: number, start: number): readonly Block[] {
  const blocks: Block[] = [];
  let at = start;
  const add = (kind: Block['kind'], minutes: number): void => {
    blocks.push({ kind, start: at, end: at + minutes });
    at += minutes;
  };
  for (let session = 0; session <= afterSession.length; session += 1) {
    const opening = day === 1 && session === 0 ? dayPractice.opening : 0;
    if (opening > 0) add('opening', opening);
    add('work', dayPractice.session - opening);
    const pause = afterSession[session];
    if (pause !== undefined) add(pause, dayPractice[pause]);
  }
  add('clean-up', dayPractice['clean-up']);
  return blocks;
}

/** All days of some tasks: the last one ends when the last task is done, with cleaning up, checking and signing. */
export function daysOf(tasks: readonly Task[], start: number): readonly Day[] {
  const last = Math.max(1, ...tasks.map(({ day }) => day));
  const end = Math.max(start + dayPractice.opening, ...tasks.filter(({ day }) => day === last).map((task) => task.end));
  return Array.from({ length: last }, (_, index) => {
    const blocks = dayBlocks(index + 1, start);
    return { day: index + 1, blocks: index + 1 < last ? blocks : endedAt(blocks, end) };
  });
}

function endedAt(blocks: readonly Block[], end: number): readonly Block[] {
  const kept = blocks.filter((block) => block.start < end && block.kind !== 'clean-up').map((block) => ({ ...block, end: Math.min(block.end, end) }));
  const cleaned = end + dayPractice['clean-up'];
  return [...kept, { kind: 'clean-up', start: end, end: cleaned }, { kind: 'closing', start: cleaned, end: cleaned + dayPractice.closing }];
}
