import type { Plan, Step } from '../../plan/index.ts';
import { WORK } from '../../work/facts.ts';
import type { Words } from '../words/index.ts';

/** The numbers of the first and the last of steps that one piece is taken through before the next is begun. */
export interface OneAtATime {
  readonly from: number;
  readonly to: number;
}

/** The steps that a step of several alike pieces is done in one go with, because what the first of them does springs back until the last; null where there are none. */
export function oneAtATime({ steps }: Plan, step: Step): OneAtATime | null {
  if (step.times === 1) return null;
  const own = steps.filter(({ run }) => run === step.run);
  const place = own.indexOf(step);
  const first = own.slice(0, place + 1).findLast(({ action }) => WORK[action].springsBackUntil !== undefined);
  if (first === undefined) return null;
  const last = own.slice(own.indexOf(first)).find(({ action }) => action === WORK[first.action].springsBackUntil);
  return last === undefined || last.number < step.number ? null : { from: first.number, to: last.number };
}

/** As it is told: `16–18`. */
export const toldSpan = (words: Words, { from, to }: OneAtATime): string => `${words.number(from)}–${words.number(to)}`;
