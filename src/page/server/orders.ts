import { z } from 'zod';
import { EDITIONS } from '../../booklet/index.ts';
import { namedSection } from '../../read/index.ts';
import { hasWords } from '../paper-groups.ts';
import type { MakeOrder, SaveOrder } from '../types.ts';

/** None begins with a dash: in the call of the command it would be an option. */
const name = z.string().regex(/^[\p{L}\p{N}][\p{L}\p{N}_-]*$/u).max(60);

/** Values of a size by their parameters, as they stand in the file. */
export const sizeValues = namedSection(z.string().max(60), z.string().max(60), 'Values of a size.');

const saveOrder = z.strictObject({
  path: z.string().max(200),
  size: name,
  values: sizeValues,
  mark: z.string().length(64),
});

const bookletOrder = z.strictObject({
  what: z.literal('booklets'),
  items: z.array(z.strictObject({ item: name, sizes: z.array(name).min(1).max(100) })).min(1).max(100),
  // One by one, or two or three side by side.
  langs: z.array(z.string().regex(/^[a-zA-Z]+(-[a-zA-Z]+)*(\+[a-zA-Z]+(-[a-zA-Z]+)*){0,2}$/).max(60)).max(100),
  editions: z.array(name).min(1).max(10),
  papers: z.array(name).min(1).max(10),
  stitched: z.boolean(),
  despiteFindings: z.boolean(),
}).refine(({ langs, editions }) => langs.length > 0 || !EDITIONS.some((edition) => hasWords(edition) && editions.includes(edition.name)), { path: ['langs'], message: 'would be right: a language for the booklets with words' });

const packOrder = z.strictObject({
  what: z.literal('pack'),
  pieces: z.array(z.strictObject({ item: name, size: name, count: z.int().min(1).max(1000) })).min(1).max(100),
  learners: z.int().min(1).max(200),
  langs: z.array(name).min(1).max(100),
  start: z.string().length(5).regex(/^\d\d:\d\d$/),
  papers: z.array(name).min(1).max(10),
});

const makeOrder = z.discriminatedUnion('what', [bookletOrder, packOrder]);

/** All that the page can order here, for the test that asks whether each part has a bound. */
export const orderSchemas = { saveOrder, makeOrder } as const;

/** Orders as the page sent them. Each throws where something is missing, too long or not a plain name. */
export const readSaveOrder = (value: unknown): SaveOrder => saveOrder.parse(value);
export const readMakeOrder = (value: unknown): MakeOrder => makeOrder.parse(value);
