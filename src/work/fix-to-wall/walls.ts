import { wallPlaces, type Model } from '../../model/index.ts';
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

/** What the cord that ties a post has for two knots and two hands, and to what its length is rounded up, mm: common practice, no source. */
const TIE = { ends: 300, step: 50 } as const;
/** A bracket of a kit that has none, mm. */
const PLAIN = { reach: 60, width: 30, thickness: 4 } as const;

/** Outer diameter of what a bracket holds, mm; that of the kit's tubes where the item has no post for one. */
export const postOutside = (model: Model): number => wallPlaces(model)[0]?.outside ?? model.kit.tube.outsideDiameter;

/** Length of the cord that ties a post into its bracket, whose jaws are open to the room, mm: round the arm, past the jaws on both sides, and before the post two knots. */
export function tieLength(model: Model): number {
  const { reach, width, thickness } = model.kit.catalogue.fittings.find((fitting) => fitting.is === 'wall-bracket') ?? PLAIN;
  const [arm, past] = [2 * (width + 2 * thickness), 2 * reach + Math.PI * (postOutside(model) / 2 + thickness)];
  return Math.ceil((arm + past + TIE.ends) / TIE.step) * TIE.step;
}
