export { cutPages } from './cut-pages.tsx';
export type { CutPagesInput } from './types.ts';
