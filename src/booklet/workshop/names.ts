import { isolate, type Words } from '../words/index.ts';
import type { PackItem } from './types.ts';

/** Item and size in one phrase. */
export const pieceName = (words: Words, { model }: Pick<PackItem, 'model'>): string => words.t('pack.piece', {
  item: words.t(`items.${model.item}.name`),
  size: words.t(`items.${model.item}.sizes.${model.size}`),
});

/** A time of day of 24 hours, isolated: `08:30`. Minutes after midnight. */
export function clock(words: Words, minutes: number): string {
  const whole = Math.round(minutes);
  const two = (value: number): string => `${words.number(Math.floor(value / 10))}${words.number(value % 10)}`;
  return isolate(`${two(Math.floor(whole / 60))}:${two(whole % 60)}`);
}

/** Numbers, those that follow each other joined: `1–4, 7`, isolated. */
export function ranges(words: Words, numbers: readonly number[]): string {
  const runs: { from: number; to: number }[] = [];
  for (const number of [...new Set(numbers)].sort((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last?.to === number - 1) last.to = number; else runs.push({ from: number, to: number });
  }
  return isolate(runs.map(({ from, to }) => (from === to ? words.number(from) : `${words.number(from)}–${words.number(to)}`)).join(', '));
}
