import type { CutOrder } from '../cut/index.ts';
import { panelSheetPicture, tubeSheetPicture } from './flat/index.ts';
import { pictureAs } from './picture-of.ts';
import type { Picture } from './types.ts';

/** The cut plans of an order, tubes and then panels, in the order's own order. */
export const cutPlanPictures = ({ tubes, panels }: CutOrder): readonly Picture[] => [
  ...tubes.map((sheet, index) => pictureAs({ what: 'tube-sheet', place: index }, tubeSheetPicture(sheet))),
  ...panels.map((sheet, index) => pictureAs({ what: 'panel-sheet', place: index }, panelSheetPicture(sheet))),
];
