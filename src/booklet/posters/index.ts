export { overviewPage } from './overview.tsx';
export type { PosterPaper } from './sheet.ts';
export type { PosterInput } from './types.ts';
export { wallPages } from './wall.tsx';
