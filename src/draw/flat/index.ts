export { cutBarsPaper, cutBarsPicture, type CutPattern, type TubeCuts } from './cut-bars.ts';
export { markingPicture, type Marking } from './marking-picture.ts';
export { patternPaper, patternPicture } from './pattern-picture.ts';
export { platePaper, platePicture } from './plate-picture.ts';
export { sectionSeries, type Hardware } from './section-series.ts';
export { spacingPicture, type PostMarks } from './spacing-picture.ts';
export { stepPaper } from './step-paper.ts';
export type { Paper } from './svg.ts';
