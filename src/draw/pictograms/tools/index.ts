import type { Tool } from '../../../plan/index.ts';
import type { Ink } from '../ink.ts';
import { knifePicture, punchPicture, sawPicture } from './cutting.ts';
import { blockPicture } from './block.ts';
import { handsPicture } from './hands.ts';
import { pencilPicture, straightEdgePicture, tapePicture } from './measuring.ts';
import { creaserPicture, drillPicture, malletPicture } from './shaping.ts';

/** One picture for each tool of the plan. */
export const toolPictures: Readonly<Record<Tool, Ink>> = {
  tape: tapePicture,
  pencil: pencilPicture,
  'straight-edge': straightEdgePicture,
  saw: sawPicture,
  knife: knifePicture,
  punch: punchPicture,
  creaser: creaserPicture,
  mallet: malletPicture,
  drill: drillPicture,
  hands: handsPicture,
  block: blockPicture,
};
