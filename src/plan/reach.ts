import type { Model } from '../model/index.ts';

/** Higher than this over the floor, one stands on something, mm: common practice, no source. */
const REACH = 1800;

/** Whether anything of the item is out of reach from the floor. */
export const isHigh = ({ dimensions }: Pick<Model, 'dimensions'>): boolean => dimensions.some(({ name, value }) => name === 'height' && value > REACH);
