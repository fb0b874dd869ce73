import type { CutOrder } from '../cut/index.ts';
import { panelSheetPicture, tubeSheetPicture } from './flat/index.ts';
import type { Picture } from './types.ts';

/** The cut plans of an order: `tube:<number>` and `panel:<number>`, from 1 in the order's own order. */
export const cutPlanPictures = ({ tubes, panels }: CutOrder): readonly Picture[] => [
  ...tubes.map((sheet, index) => tubeSheetPicture(`tube:${index + 1}`, sheet)),
  ...panels.map((sheet, index) => panelSheetPicture(`panel:${index + 1}`, sheet)),
];
