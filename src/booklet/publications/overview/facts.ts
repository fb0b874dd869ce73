import { papersOf } from '../../papers/index.ts';
import type { Edition } from '../types.ts';

/** All steps on one page. */
export const overview = {
  name: 'overview',
  papers: papersOf('full'),
  ending: '.pdf',
  needs: { languages: 'direction', pictures: 'thumb', fonts: 'all' },
  isUsual: false,
  series: 'alone',
} as const satisfies Edition;
