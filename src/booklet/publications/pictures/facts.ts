import { papersOf } from '../../papers/index.ts';
import type { Edition } from '../types.ts';

/** The booklet of numerals and units alone, the same for all languages. */
export const pictures = {
  name: 'pictures',
  papers: papersOf('full', 'half'),
  ending: '.pdf',
  needs: { languages: 'none', pictures: 'of-paper', fonts: 'all' },
  isUsual: true,
  series: 'booklet',
} as const satisfies Edition;
