import { papersOf } from '../../papers/index.ts';
import type { Publication } from '../types.ts';

/** Templates and gauges at true size; names and numerals alone. */
export const markingSheets = {
  name: 'marking-sheets',
  papers: papersOf('full'),
  ending: '.pdf',
  needs: { languages: 'none', pictures: 'own', fonts: 'latin' },
} as const satisfies Publication;
