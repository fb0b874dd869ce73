import { papersOf } from '../../papers/index.ts';
import type { Publication } from '../types.ts';

/** What changed of a size, to lay beside its earlier print. */
export const changeSheets = {
  name: 'change-sheets',
  papers: papersOf('full'),
  ending: '.pdf',
  needs: { languages: 'language', pictures: 'own', fonts: 'all' },
} as const satisfies Publication;
