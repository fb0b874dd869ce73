import type { OrderLine } from '../cut/index.ts';
import { buildModel } from '../model/index.ts';
import { readOrder } from './order.ts';

/** The lines of an order as `readOrder` reads them, each with its model. */
export function orderLines(words: readonly string[]): readonly OrderLine[] {
  return readOrder(words).map(({ item, size, count }) => ({ model: buildModel(item, size), count }));
}
