export { overviewPage } from './overview.tsx';
export type { PosterPaper } from './sheet.ts';
export { wallPages } from './wall.tsx';
