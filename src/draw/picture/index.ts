export { composeAlone } from './alone.ts';
export { composePicture, type Paper } from './compose.ts';
export type { LineDrawer } from './line-drawer.ts';
