import type { Model, PartKind } from '../../model/index.ts';
import type { Plan, Timetable, ToolCount } from '../../plan/index.ts';
import type { Glyphs, PictureSize, PlacePicture } from '../pages/index.ts';
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
  /** Whether its booklet asks for a fixing to a wall. */
  readonly fixToWall: boolean;
}

/** What is to be brought from the stock of one kit: whole tubes and panels, and parts as they are. */
export interface KitStock {
  readonly kit: string;
  readonly rows: readonly {
    readonly kind: PartKind | 'tube' | 'panel-stock';
    readonly count: number;
    /** Length, or length and width, mm; none for parts that come in one size. */
    readonly size: readonly number[];
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
  /** Sizes of the pictures `finished:<number>`, one for each of `items` from 1. */
  readonly pictures: Readonly<Record<string, PictureSize>>;
  readonly placePicture: PlacePicture;
}
