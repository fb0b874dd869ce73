export { cutBarsPaper, cutBarsPicture } from './cut-bars.ts';
export { markingPicture, type Marking } from './marking-picture.ts';
export { patternPaper, patternPicture } from './pattern-picture.ts';
export { platePaper, platePicture } from './plate-picture.ts';
export { sectionSeries, type Hardware } from './section-series.ts';
export { spacingPicture } from './spacing-picture.ts';
export { stepPaper } from './step-paper.ts';
export { panelSheetPicture } from './cut-plan/panel-sheet.ts';
export { tubeSheetPicture } from './cut-plan/tube-sheet.ts';
