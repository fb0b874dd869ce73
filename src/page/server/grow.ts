import { z } from 'zod';
import { isName } from '../../booklet/index.ts';
import { FaultError, faultLine, filesInMemory, listItems, readItem, withItemName, withNewSize, withSizeValues } from '../../read/index.ts';
import type { GrowAnswer, GrowOrder } from '../types.ts';
import { namedInLocales } from './locale-names.ts';
import { sizeValues } from './orders.ts';
import { markOf } from './save.ts';
import type { Workshop } from './workshop.ts';

/** A name in item files and of folders. */
const fileName = z.string().regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/, 'small letters and digits, with single dashes between, such as "long-bench"').max(40);

export const growOrder = z.strictObject({
  what: z.enum(['size', 'item']),
  path: z.string().max(200),
  size: z.string().max(60),
  name: fileName,
  title: z.string().trim().min(1).max(80).refine(isName, 'a name'),
  values: sizeValues,
  mark: z.string().length(64),
});

/** The order as the page sent it. Throws where something is missing, too long or not a plain name. */
export function readGrowOrder(value: unknown): GrowOrder {
  const read = growOrder.safeParse(value);
  if (read.success) return read.data;
  throw new Error(read.error.issues.map(({ path, message }) => `${path.join('.')}: would be right: ${message}`).join('\n'));
}

/**
 * Makes a new size of an item, or a new item, from what there is: the text as it stands with its comments, the size's
 * values as ordered, and its name for readers in every language. Nothing is written where the file is no longer the one
 * the page read, where the name is taken, or where the new text is not a sound item.
 */
export function growItem(workshop: Workshop, order: GrowOrder): GrowAnswer {
  const { files, locales } = workshop.texts();
  const text = files[order.path];
  if (text === undefined || !listItems(filesInMemory(files)).includes(order.path)) return refused(`${order.path}: no such item`);
  if (markOf(text) !== order.mark) return { saved: false, why: 'moved', told: `${order.path}: the file is another since the page read it` };
  const path = order.what === 'size' ? order.path : `steps/${order.name}/item.yaml`;
  if (order.what === 'item' && (files[path] !== undefined || order.name === 'kits')) return refused(`${path}: found already, would be right: a name of its own`);
  try {
    const grown = order.what === 'size' ? withSizeValues(withNewSize(text, order.size, order.name), order.name, order.values) : withItemName(withSizeValues(text, order.size, order.values), order.name);
    const { name } = readItem(filesInMemory({ ...files, [path]: grown }), path);
    const named = namedInLocales(locales, order, { item: name, from: folderOf(order.path) });
    workshop.write(path, grown);
    for (const [file, words] of Object.entries(named)) workshop.write(`locales/${file}`, words);
    return { saved: true, path, size: order.what === 'size' ? order.name : order.size };
  } catch (error) {
    if (error instanceof FaultError) return refused(error.faults.map(faultLine).join('\n'));
    if (error instanceof RangeError) return refused(`${order.path}: ${error.message}`);
    throw error;
  }
}

const refused = (told: string): GrowAnswer => ({ saved: false, why: 'refused', told });

const folderOf = (path: string): string => path.split('/').at(-2) ?? path;
