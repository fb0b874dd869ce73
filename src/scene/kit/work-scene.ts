import type { Model, Solids } from '../../model/index.ts';
import type { Step } from '../../plan/index.ts';
import type { Scene } from '../types.ts';

export interface StepGivens {
  readonly model: Model;
  readonly step: Step;
  readonly solids: Solids;
}

/** How a kind of work is shown in space. */
export interface WorkScene {
  /** The step's picture: what stands there, what comes, along which way. */
  readonly scene: (givens: StepGivens) => Scene;
  /** The step on its way, for a screen: `done` 0 as it begins to 1 as it ends. Slides go their whole proven way. */
  readonly moment: (givens: StepGivens, done: number) => Scene;
  /** What the scene hides or shows too small; none when left out. */
  readonly closeUp?: (givens: StepGivens) => Scene | null;
  /** What is done one after the other, each scene with its number; none when left out. */
  readonly series?: (givens: StepGivens) => readonly Scene[];
  /** How the work stands when the step is done, where its place is read better from a side; none when left out. */
  readonly home?: (givens: StepGivens) => Scene | null;
  /** Whether one hand of the second person is needed elsewhere: no more than the other holds the work. No where left out. */
  readonly handElsewhere?: (givens: StepGivens) => boolean;
  /** The work stands on its feet then: looked at with a plumb line, and again when its cords are tied, or whether it rocks. */
  readonly standsUp?: true;
  /** Sides that lie keep the shape that they have from then on: they are measured across before. */
  readonly fixesSquare?: true;
}

export const sceneName = ({ number }: Step): string => `step:${number}`;
export const closeUpName = ({ number }: Step): string => `step:${number}:a`;
export const seriesName = ({ number: step }: Step, number: number): string => `step:${step}:series:${number}`;
export const homeName = ({ number }: Step): string => `step:${number}:home`;
