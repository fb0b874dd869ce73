export { actionNames, actionPictogram, cautionNames, isPairName, pairFor, pairNames, pictogram, pictogramNames, signFor, toolNames } from './registry.ts';
export type { Pictogram, PictogramName } from './registry.ts';
export { pairPictures } from './pairs/index.ts';
export type { PairName } from './pairs/index.ts';
export { safetyColours, signGrounds, signOfCaution } from './signs/index.ts';
export type { SignName } from './signs/index.ts';
export { loadNumerals } from './standing-load.ts';
