import { papersOf } from '../../papers/index.ts';
import type { Edition } from '../types.ts';

/** The booklet with names, short captions and sentences. */
export const words = {
  name: 'words',
  papers: papersOf('full', 'half'),
  ending: '.pdf',
  needs: { languages: 'language', pictures: 'of-paper', fonts: 'all' },
  layout: 'common',
  isUsual: true,
  series: 'booklet',
} as const satisfies Edition;
