import { longestDay } from '../plan/index.ts';

/** The most learners of one workshop. */
const mostLearners = 200;

/** Learners as a whole number. Throws for anything else. */
export function readLearners(text: string): number {
  const learners = /^\d+$/.test(text) ? Number(text) : NaN;
  if (!(learners >= 1 && learners <= mostLearners)) throw new Error(`--learners ${text}: not a number of learners; would be right: a whole number from 1 to ${mostLearners}`);
  return learners;
}

/** A time of day in minutes after midnight, early enough that the day ends before midnight. Throws for anything else. */
export function readStart(text: string): number {
  const [, hours = '', minutes = ''] = /^([01]\d|2[0-3]):([0-5]\d)$/.exec(text) ?? [];
  const start = hours === '' ? NaN : 60 * Number(hours) + Number(minutes);
  const latest = 24 * 60 - longestDay;
  if (!(start <= latest)) throw new Error(`--start ${text}: not a time to start; would be right: a time from 00:00 to ${timeText(latest)}, for example 08:30`);
  return start;
}

const timeText = (minutes: number): string => `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
