import type { Publication } from '../types.ts';

/** The guide for phones, one page of HTML; `guide` makes it. */
export const phoneGuide = {
  name: 'phone-guide',
  papers: [],
  ending: '.html',
  needs: { languages: 'all', pictures: 'page', fonts: null },
} as const satisfies Publication;
