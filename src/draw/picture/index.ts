export { composeAlone, type Told } from './alone.ts';
export { composeJointGuide } from './joint-guide.ts';
export { composePicture, composeAfter, composeAside, composeBeside, composeDone, composeRightWrong, composeRow, composeRows, trimmed, type Aside } from './compose.ts';
export { composePlumb } from './plumb/index.ts';
export { composeOnFeet } from './on-feet.ts';
export type { Paper } from '../kit/svg.ts';
export type { LineDrawer } from './line-drawer.ts';
export { squarePicture } from './square.ts';
