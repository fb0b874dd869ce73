import type { OrderLine } from '../cut/index.ts';
import { buildModel } from '../model/index.ts';
import { itemsNamed, sizesOf } from './project.ts';

/** More of one item than this is a slip of the pen. */
const MOST = 1000;
const RIGHT = `<item>=<number> or <item>:<size>=<number>, with a whole number from 1 to ${MOST}`;

/** `<item>=6` or `<item>:<size>=6`, each item and size once; the second size of an item unless given. Throws what was found and what would be right. */
export function orderLines(words: readonly string[]): readonly OrderLine[] {
  const lines = words.map(orderLine);
  const names = lines.map(({ model }) => `${model.item}:${model.size}`);
  const twice = names.find((name, index) => names.indexOf(name) < index);
  if (twice !== undefined) throw new Error(`${twice}: asked for twice; would be right: each item and size once`);
  return lines;
}

function orderLine(word: string): OrderLine {
  const [, name = '', asked, number = ''] = /^([^:=\s]+)(?::([^:=\s]+))?=(\d+)$/.exec(word) ?? [];
  const count = Number(number);
  if (name === '' || count < 1 || count > MOST) throw new Error(`${word}: not understood; would be right: ${RIGHT}`);
  const [item] = itemsNamed(name);
  if (item === undefined) throw new Error(`${word}: no such item`);
  const sizes = sizesOf(item);
  const size = asked ?? sizes[1] ?? sizes[0] ?? '';
  if (!sizes.includes(size)) throw new Error(`${word}: ${name} has no size ${size}; would be right: one of ${sizes.join(', ')}`);
  return { model: buildModel(item, size), count };
}
