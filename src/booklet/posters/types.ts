import type { BookletInput } from '../pages/types.ts';

/** What posters take of a booklet's input. */
export type PosterInput = Pick<BookletInput, 'model' | 'plan' | 'variants' | 'pictures' | 'revision' | 'contentMark' | 'despiteFindings' | 'words' | 'glyphs' | 'placePicture'>;
