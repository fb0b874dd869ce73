export { surveyPages } from './survey-pages.tsx';
export { COUNTED_KINDS, type SurveyInput } from './types.ts';
