import type { BlockKind } from './types.ts';

/** How a workshop's day runs, minutes: common practice, no source. */
export const dayPractice = {
  /** The longest stretch of work without a break. */
  session: 90,
  break: 15,
  lunch: 60,
  /** Cautions, tools and the finished item are shown before the first work. */
  opening: 30,
  /** Dust is wiped up wet, blades and small parts are counted, at the end of every day. */
  'clean-up': 15,
  /** The pieces are checked and signed at the end of the last day. */
  closing: 30,
} as const satisfies Readonly<Record<Exclude<BlockKind, 'work'> | 'session', number>>;

/** What follows each session of a day but the last. */
export const afterSession = ['break', 'lunch', 'break'] as const;

/** A day's work of those who prepare, minutes. */
export const dayOfWork = 4 * dayPractice.session;

/** From the start of a day to the end of its latest block, minutes. */
export const longestDay = dayOfWork + 2 * dayPractice.break + dayPractice.lunch + dayPractice['clean-up'] + dayPractice.closing;
