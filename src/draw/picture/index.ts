export { composeAlone } from './alone.ts';
export { composePicture, composeAfter, composeBeside, composePair } from './compose.ts';
export type { Paper } from '../kit/svg.ts';
export type { LineDrawer } from './line-drawer.ts';
