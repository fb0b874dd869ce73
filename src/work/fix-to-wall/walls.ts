import type { WallKind } from '../types.ts';

/** How a bracket is fixed to a wall, mm. */
export interface WallFixing {
  /** Of the bit, and how deep it goes in. */
  readonly hole: { readonly diameter: number; readonly depth: number };
  readonly screw: { readonly diameter: number; readonly length: number };
  /** Length of the plug that goes into the hole first, if any. */
  readonly plug: number | null;
}

/** Screws of each kind of wall, common practice, no source. A board alone holds nothing that somebody pulls at: there is no fixing. */
export const WALLS: Readonly<Record<WallKind, WallFixing | null>> = {
  masonry: { hole: { diameter: 8, depth: 70 }, screw: { diameter: 6, length: 70 }, plug: 65 },
  timber: { hole: { diameter: 4, depth: 40 }, screw: { diameter: 6, length: 60 }, plug: null },
  board: null,
};

/** Screws through the plate of one bracket, over and under its web. */
export const SCREWS_EACH = 2;

/**
 * What each bracket is pulled with straight out of the wall once it is screwed on, kg: twice the pull at the top that nothing may tip at;
 * and how far aside all holes are marked anew where one comes out, mm: clear of what the screws have torn (common practice, no source).
 */
export const PULL_TEST = { mass: 20, moved: 100 } as const;
