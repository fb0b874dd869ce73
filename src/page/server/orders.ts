import { z } from 'zod';
import type { MakeOrder, SaveOrder } from '../types.ts';

const name = z.string().regex(/^[\p{L}\p{N}][\p{L}\p{N}_-]*$/u).max(60);

const saveOrder = z.strictObject({
  path: z.string().max(200),
  size: name,
  values: z.record(z.string().max(60), z.string().max(60)),
  mark: z.string().length(64),
});

const makeOrder = z.strictObject({
  items: z.array(z.strictObject({ item: name, sizes: z.array(name).min(1).max(100) })).min(1).max(100),
  langs: z.array(name).min(1).max(100),
  editions: z.array(name).min(1).max(10),
  papers: z.array(name).min(1).max(10),
  despiteFindings: z.boolean(),
});

/** Orders as the page sent them. Each throws where something is missing, too long or not a plain name. */
export const readSaveOrder = (value: unknown): SaveOrder => saveOrder.parse(value);
export const readMakeOrder = (value: unknown): MakeOrder => makeOrder.parse(value);
