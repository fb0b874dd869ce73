import { papersOf } from '../../papers/index.ts';
import type { Publication } from '../types.ts';

/** Sheets to count stock by. */
export const surveySheet = {
  name: 'survey-sheet',
  papers: papersOf('full'),
  ending: '.pdf',
  needs: { languages: 'language', pictures: 'own', fonts: 'all' },
} as const satisfies Publication;
