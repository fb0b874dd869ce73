import type { CutOrder } from '../../cut/index.ts';
import type { Glyphs, Paper, PlacePicture, SizedPicture } from '../pages/index.ts';
import type { Words } from '../words/index.ts';

export interface CutPagesInput {
  readonly order: CutOrder;
  readonly paper: Paper;
  readonly words: Words;
  /** Sizes of the pictures of the order's tubes and panels. */
  readonly pictures: readonly SizedPicture[];
  readonly placePicture: PlacePicture;
  readonly glyphs: Glyphs;
  /** Short hash of the plan. */
  readonly contentMark: string;
}
