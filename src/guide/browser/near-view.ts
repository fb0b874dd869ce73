import type { Finger } from './fingers.ts';

/** What the closer view shows: a drawing to move about, or a model to turn. */
export interface NearView {
  readonly element: Element;
  /** One finger's way, px. */
  readonly push: (x: number, y: number) => void;
  /** Enlarged about a place of the stage by a factor, and moved by two fingers, px. */
  readonly enlarge: (about: Finger, factor: number, by: Finger) => void;
  /** As at first. */
  readonly reset: () => void;
  readonly play: (() => void) | null;
  readonly leave: () => void;
}
