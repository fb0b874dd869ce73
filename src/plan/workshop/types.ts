import type { Action, Step } from '../types.ts';

/** One size of an item, how many of it are to be built, and the steps of one piece. */
export interface OrderedWork {
  readonly item: string;
  readonly size: string;
  readonly count: number;
  readonly steps: readonly Step[];
}

/** The learners in the teams they work in: pairs, as far as there are pieces enough to build. */
export interface Crew {
  readonly learners: number;
  /** How many people each team has. */
  readonly teams: readonly number[];
  /** True where a learner is alone: in a step for two the trainer is the other. */
  readonly trainerHelps: boolean;
}

/** A step, or some of its repetitions, done by one team without a break. */
export interface Task {
  /** Index of the team, from 0. */
  readonly team: number;
  /** Index into the ordered works, from 0. */
  readonly work: number;
  /** Which piece of that work, from 1. */
  readonly piece: number;
  readonly step: Step;
  /** First and last of the step's repetitions, from 1. */
  readonly from: number;
  readonly to: number;
  /** From 1. */
  readonly day: number;
  /** Minutes after midnight. */
  readonly start: number;
  readonly end: number;
}

export type BlockKind = 'opening' | 'work' | 'break' | 'lunch' | 'clean-up' | 'closing';

/** A stretch of a day. Minutes after midnight. */
export interface Block {
  readonly kind: BlockKind;
  readonly start: number;
  readonly end: number;
}

export interface Day {
  /** From 1. */
  readonly day: number;
  readonly blocks: readonly Block[];
}

/** A work that the trainer does the day before, for the whole order or once as a sample to show. */
export interface Prepared {
  readonly work: number;
  readonly action: Action;
  readonly steps: readonly Step[];
  /** How many pieces it is done for. */
  readonly pieces: number;
  readonly sample: boolean;
  /** For one worker or pair, all pieces together. */
  readonly minutes: number;
}

export interface Timetable {
  readonly crew: Crew;
  readonly days: readonly Day[];
  /** By team, then in the order of the work. */
  readonly tasks: readonly Task[];
  readonly prepared: readonly Prepared[];
}
