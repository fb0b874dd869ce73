export { guidePage } from './guide-page.tsx';
export { guideScript } from './script.ts';
export type { GuideInput } from './types.ts';
