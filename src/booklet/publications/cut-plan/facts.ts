import { papersOf } from '../../papers/index.ts';
import type { Publication } from '../types.ts';

/** How the stock of an order is cut. */
export const cutPlan = {
  name: 'cut-plan',
  papers: papersOf('full'),
  ending: '.pdf',
  needs: { languages: 'language', pictures: 'own', fonts: 'all' },
} as const satisfies Publication;
