import type { Position } from '../position.ts';

/** A place or direction across, back and up: mm for places, length 1 for directions. */
export type Triple = readonly [number, number, number];

/** What all parts of a skeleton have: their name with all indexes, what it is made of, and where the file tells of it. */
export interface Named {
  /** As other parts refer to it, for example `post.0.1` or `trestle.2/leg.0`. */
  readonly name: string;
  /** The name in the file, without indexes. */
  readonly of: string;
  readonly index: readonly number[];
  readonly position: Position;
  readonly field: string;
}

export interface SkeletonPoint extends Named {
  readonly at: Triple;
}

/** A tube from point to point, through the points between, which are in order. */
export interface SkeletonBar extends Named {
  readonly from: string;
  readonly to: string;
  readonly through: readonly string[];
  /** A tube of the kit. */
  readonly tube: string;
  /** Held by a pin in every joint that it runs through. */
  readonly pinned: boolean;
}

/** A panel by the names of its bars; `face` is the side of the bars it lies on. */
export type SkeletonPanel = Named & { readonly panel: string; readonly face: Triple } & (
  /** Round a loop of bars, folded round those of `wrap`. */
  | { readonly is: 'wrapped'; readonly loop: readonly string[]; readonly wrap: readonly string[] }
  /** On parallel bars, pinned to them or held by hinges. `length` along the bars and `over` past the outer ones in mm, or null for as long as it goes. */
  | { readonly is: 'flat'; readonly on: readonly string[]; readonly pinned: boolean; readonly length: number | null; readonly over: number | null; readonly lift: number }
  /** A box folded of one panel, hung in a loop of bars by the rims of those of `wrap`. */
  | { readonly is: 'tray'; readonly loop: readonly string[]; readonly wrap: readonly string[]; readonly depth: number }
);

/** A cable from joint to joint, hooked on the studs that look towards `face`. */
export interface SkeletonCable extends Named {
  readonly from: string;
  readonly to: string;
  readonly face: Triple;
}

/** A small part of the kit: at a point of a bar, or `along` mm from its beginning, and for hinges and stays the panel they hold. */
export interface SkeletonFitting extends Named {
  readonly fitting: string;
  readonly on: string;
  readonly at: { readonly point: string } | { readonly along: number };
  readonly panel: string | null;
  /** Where its plate or leaf looks; null where the bar or the panel tells. */
  readonly face: Triple | null;
}

export type PlaceUse = 'seat' | 'backrest' | 'table' | 'shelf' | 'bed' | 'lid' | 'box' | 'screen';

/** What a panel is for. `load` in N and `mattress` in mm, or null where the file says nothing. */
export interface Place {
  readonly name: string;
  readonly use: PlaceUse;
  /** Names of panels of the skeleton, or of the deck or panel pieces of a short form. */
  readonly panels: readonly string[];
  readonly load: number | null;
  readonly mattress: number | null;
}

/** One size of an item as points, bars, panels, cables and fittings, all repeats written out. Lengths mm, angles rad, forces N. */
export interface Skeleton {
  readonly points: readonly SkeletonPoint[];
  readonly bars: readonly SkeletonBar[];
  readonly panels: readonly SkeletonPanel[];
  readonly cables: readonly SkeletonCable[];
  readonly fittings: readonly SkeletonFitting[];
}

/** One size written out; the skeleton is null where the item is made of decks, frames, posts and panels alone. */
export interface Structure {
  readonly skeleton: Skeleton | null;
  readonly places: readonly Place[];
}
