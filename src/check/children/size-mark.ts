import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import type { Check } from '../types.ts';

/** Heights of seats and tables by size mark, mm. Marks 1 to 6 R2, three sources agree; 0 from memory, 7 rounded (R2). */
export const markHeights = {
  seat: [210, 260, 310, 350, 380, 430, 460, 510],
  table: [400, 460, 530, 590, 640, 710, 760, 820],
} as const;

/** How far the seat or table stands from the height of the size mark that the file declares, mm. */
export const sizeMark: Check = ({ model, declared: { mark }, limits: { markTolerance } }) => {
  if (mark === null || (model.use !== 'seat' && model.use !== 'table')) return [];
  const right = markHeights[model.use][mark];
  return right === undefined ? [] : [judge({
    name: 'size-mark', figure: Math.abs(Math.max(...model.deckTops) - right), limit: markTolerance.value, bound: 'most', unit: 'mm',
    source: `${right} mm for mark ${mark}, EN 1729-1 (R2); ${markTolerance.source}`, parts: idsOf(model, 'panel'), otherwise: 'caution',
  })];
};
