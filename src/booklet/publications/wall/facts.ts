import { papersOf } from '../../papers/index.ts';
import type { Edition } from '../types.ts';

/** A step a page, to be read from 2 m. Small pages' pictures have large texts against their drawings. */
export const wall = {
  name: 'wall',
  papers: [...papersOf('full'), 'a3'],
  ending: '.pdf',
  needs: { languages: 'direction', pictures: 'small', fonts: 'all' },
  isUsual: false,
  series: 'alone',
} as const satisfies Edition;
