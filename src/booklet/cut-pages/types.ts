import type { CutOrder } from '../../cut/index.ts';
import type { Glyphs, Paper, PictureSize, PlacePicture } from '../pages/index.ts';
import type { Words } from '../words/index.ts';

export interface CutPagesInput {
  readonly order: CutOrder;
  readonly paper: Paper;
  readonly words: Words;
  /** Sizes of the pictures `tube:<number>` and `panel:<number>`, from 1 in the order's own order. */
  readonly pictures: Readonly<Record<string, PictureSize>>;
  readonly placePicture: PlacePicture;
  readonly glyphs: Glyphs;
  /** Short hash of the plan. */
  readonly contentMark: string;
}
