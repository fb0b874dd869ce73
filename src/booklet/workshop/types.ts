import type { Model, PartKind } from '../../model/index.ts';
import type { Plan, Timetable, ToolCount } from '../../plan/index.ts';
import type { Glyphs, PlacePicture, SizedPicture } from '../pages/index.ts';
import type { Paper } from '../print/index.ts';
import type { Words } from '../words/index.ts';
import type { Notes } from './notes.ts';

/** One size of an item in the order. */
export interface PackItem {
  readonly model: Model;
  readonly plan: Plan;
  readonly count: number;
  readonly revision: number;
  /** The trainer's notes and the language they are in; null where there are none at all. */
  readonly notes: { readonly notes: Notes; readonly lang: string } | null;
}

/** What the cut plan takes of one kit's stock: tubes and panels to cut, and parts as they are. */
export interface KitStock {
  readonly kit: string;
  readonly rows: readonly {
    readonly kind: PartKind | 'tube' | 'panel-stock';
    readonly count: number;
    /** Length, or length and width, mm; none for parts that come in one size. */
    readonly size: readonly number[];
    /** Where it lies; null where there is but one place, or the parts are counted together. */
    readonly pile: { readonly from: 'stock'; readonly name: string } | { readonly from: 'kit' } | null;
  }[];
  /** How well the plan uses tubes and panels. */
  readonly thrift: readonly {
    readonly kind: 'tube' | 'panel-stock';
    /** Share of the stock taken that becomes no piece. */
    readonly leftOver: number;
    /** The plan takes at most so much more than the least possible; 0 where nothing less is possible. */
    readonly aboveLeast: number;
  }[];
}

/** What the pages of a workshop pack are made from. */
export interface PackInput {
  readonly items: readonly PackItem[];
  readonly timetable: Timetable;
  readonly tools: readonly ToolCount[];
  /** Pairs that get the day before done in a day. */
  readonly preparingPairs: number;
  readonly stock: readonly KitStock[];
  readonly contentMark: string;
  readonly paper: Paper;
  readonly words: Words;
  readonly glyphs: Glyphs;
  /** Sizes of the pictures of the finished items of the order, one for each of `items`. */
  readonly pictures: readonly SizedPicture[];
  readonly placePicture: PlacePicture;
}
