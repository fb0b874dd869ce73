import type { Tool } from '../../../plan/index.ts';
import type { Ink } from '../ink.ts';
import { knifePicture, punchPicture, sawPicture } from './cutting.ts';
import { blockPicture } from './block.ts';
import { boardPicture, waterPicture } from './board.ts';
import { handsPicture } from './hands.ts';
import { bottlePicture, finderPicture, pencilPicture, plumbLinePicture, scalePicture, squarePicture, straightEdgePicture, tapePicture } from './measuring.ts';
import { stickyTapePicture } from './sticky-tape.ts';
import { clampPicture, creaserPicture, drillPicture, filePicture, malletPicture, screwdriverPicture, stepsPicture } from './shaping.ts';

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
  file: filePicture,
  screwdriver: screwdriverPicture,
  scale: scalePicture,
  finder: finderPicture,
  bottle: bottlePicture,
  square: squarePicture,
  'plumb-line': plumbLinePicture,
  clamp: clampPicture,
  steps: stepsPicture,
  block: blockPicture,
  board: boardPicture,
  water: waterPicture,
  'sticky-tape': stickyTapePicture,
};
