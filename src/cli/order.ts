import type { Item } from '../read/index.ts';
import { chosen, itemsNamed, sizesOf } from './project.ts';

/** So many pieces of one size of an item. */
export interface OrderLine {
  readonly item: Item;
  readonly size: string;
  readonly count: number;
}

/** The most pieces of one line: far more than a workshop builds, and a typing mistake away from a useful number. */
const most = 1000;

/** How an order is written, with an item of the project as the example. */
function written(): string {
  const [example] = itemsNamed(undefined);
  const name = example?.name ?? '';
  return `<item>=<number> or <item>:<size>=<number> with a whole number from 1 to ${most}, for example ${name}=6 or ${name}:${example?.sizes[0]?.name ?? ''}=6`;
}

/**
 * Reads `<item>=6 <item>:<size>=24`. Without a size an item's second one is meant, as for `draw`.
 * Throws for what is not written so, an unknown item or size, and a size that is named twice.
 */
export function readOrder(words: readonly string[]): readonly OrderLine[] {
  const lines = words.map((word): OrderLine => {
    const [, name = '', size, number = ''] = /^([^:=\s]+)(?::([^:=\s]+))?=(\d+)$/.exec(word) ?? [];
    const count = Number(number);
    if (name === '' || !(count >= 1 && count <= most)) throw new Error(`${word}: not an order; would be right: ${written()}`);
    const [item] = itemsNamed(name);
    if (item === undefined) throw new Error(`${word}: no such item`);
    const sizes = sizesOf(item);
    const [known = ''] = chosen(sizes, [size ?? sizes[1] ?? sizes[0] ?? ''], 'size');
    return { item, size: known, count };
  });
  const twice = lines.find((line, index) => lines.findIndex((other) => other.item.name === line.item.name && other.size === line.size) < index);
  if (twice !== undefined) throw new Error(`${twice.item.name}:${twice.size}: named twice; would be right: one number for all of them`);
  return lines;
}
