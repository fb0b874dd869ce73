import type { Side } from '../model/index.ts';
import type { Doing, Pick, PlannedWork, Rule, WorkFacts } from './types.ts';

/** The facts of a kind of work. */
export const work = (facts: WorkFacts): WorkFacts => facts;

/** The check of a right/wrong pair of pictures. */
export const pair = (name: string) => ({ kind: 'pair', name }) as const;

/** Work of these kinds. */
export const doing = (...kinds: readonly Doing[]): Pick => ({ does }) => kinds.includes(does);

/** Of such work, what is done on one of these sides. */
export const on = (pick: Pick, ...sides: readonly Side[]): Pick => (work: PlannedWork) => pick(work) && work.side !== null && sides.includes(work.side);

/** Putting together what is made several times, or the item as a whole. */
export const joiningBatch: Pick = ({ batch, onBench }) => batch !== null && !onBench;
export const joiningItem: Pick = ({ batch, onBench }) => batch === null && !onBench;
export const joining: Pick = ({ onBench }) => !onBench;

export const either = (one: Pick, other: Pick): Pick => (work) => one(work) || other(work);
export const but = (one: Pick, other: Pick): Pick => (work) => one(work) && !other(work);

/** Good practice, told where an order keeps it: gives way to a designer's wish. */
export const rule = (name: string, reason: string, within: Rule['within'], first: Pick, then: Pick): Rule => ({ name, reason, firm: false, within, first, then });

/** A rule that no wish overrides. */
export const firm = (...told: Parameters<typeof rule>): Rule => ({ ...rule(...told), firm: true });
