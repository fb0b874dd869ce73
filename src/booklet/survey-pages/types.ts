import type { Paper, PlacePicture, SizedPicture } from '../pages/index.ts';
import { COUNTED_KINDS as COUNTED } from '../../parts/facts.ts';
import type { Words } from '../words/index.ts';

/** Parts that are only counted, in the order of the sheet. */
export const COUNTED_KINDS = COUNTED.map(({ kind }) => kind);

export interface SurveyInput {
  readonly paper: Paper;
  readonly words: Words;
  /** Sizes of the small pictures of the counted kinds. */
  readonly pictures: readonly SizedPicture[];
  readonly placePicture: PlacePicture;
}
