import { papersOf } from '../../papers/index.ts';
import type { Publication } from '../types.ts';

/** What the trainer of a workshop brings, does and looks at. */
export const workshopPack = {
  name: 'workshop-pack',
  papers: papersOf('full'),
  ending: '.pdf',
  needs: { languages: 'language', pictures: 'own', fonts: 'all' },
} as const satisfies Publication;
