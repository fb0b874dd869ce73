export { patternPaper, patternPicture } from './pattern-picture.ts';
export { markingPicture, stepPaper, type Marking } from './marking-picture.ts';
export type { Paper } from './svg.ts';
