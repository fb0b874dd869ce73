import type { Finger } from './fingers.ts';

/** What the closer view shows: a drawing to move about, or a model to turn. */
export interface NearView {
  readonly element: Element;
  /** Called once it is in the stage. */
  readonly begin: () => void;
  /** One finger's way, px. */
  readonly push: (x: number, y: number) => void;
  /** Enlarged about a place of the stage by a factor, and moved by two fingers, px. */
  readonly enlarge: (about: Finger, factor: number, by: Finger) => void;
  /** The fingers are lifted: what they held free of the frame fills it again. */
  readonly settle: () => void;
  /** As at first. */
  readonly reset: () => void;
  readonly play: (() => void) | null;
  readonly leave: () => void;
}
