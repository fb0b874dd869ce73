export { surveyPages } from './survey-pages.tsx';
export { COUNTED_KINDS } from './types.ts';
