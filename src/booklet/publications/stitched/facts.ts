import { papersOf } from '../../papers/index.ts';
import type { Publication } from '../types.ts';

/** Two pages of a finished booklet on each side of a sheet, to fold and staple: it comes beside the booklet and prints nothing itself. */
export const stitched = {
  name: 'stitched',
  papers: papersOf('half'),
  ending: '-stitched.pdf',
  needs: { languages: 'language', pictures: 'of-paper', fonts: null },
} as const satisfies Publication;
