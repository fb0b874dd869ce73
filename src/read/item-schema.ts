import { z } from 'zod';
import { fileName, oneWord, patternText, section, sentence, wholeFromOne } from './fields.ts';
import { limits } from './limits.ts';
import { messages } from './messages.ts';

/** A name that can stand in an expression. */
const expressionName = patternText(/^[a-z][a-z0-9]*(_[a-z0-9]+)*$/, messages.expressionName, 'A name that expressions may use.');

const orderKey = (purpose: string) => patternText(/^[a-z]+(-[a-z]+)*(:[a-z]+(-[a-z]+)*)?$/, messages.orderKey, purpose);

const expression = (purpose: string) => z.union([z.string(), z.number()], { error: messages.expression }).meta({ description: purpose });

const face = z.enum(['back', 'left', 'right', 'front'], { error: messages.face });

export const parameterSchema = section({
  range: patternText(/\bto\b/, messages.range, 'Least and most, for example 500 mm to 1100 mm, or 2 to 5 for a count.'),
  purpose: sentence(messages.purpose, 'A sentence that says what the value sets.'),
  whole: z.boolean({ error: messages.yesOrNo }).default(false).meta({ description: 'True for counts.' }),
}, 'One measure that sizes may set.');

export const expressionSchema = expression('Worked out from parameters and other expressions, for example height - 2 * lowest.');

export const quantitySchema = z.union([z.string(), z.number()], { error: messages.quantity })
  .meta({ description: 'A number with its unit, for example 1000 mm, or a plain number for a count.' });

export const deckSchema = section({
  is: oneWord('deck', messages.pieceKind, 'Four tubes in four corner joints with a panel wrapped on.'),
  width: expression('Length of the long tubes.'),
  depth: expression('Length of the short tubes.'),
  count: expression('How many decks, one over the other.'),
  top: expression('Height of the upper face over the floor; index counts from 0 at the lowest deck.'),
}, 'A deck.');

export const postSchema = section({
  is: oneWord('post', messages.pieceKind, 'Four posts, one through each corner of the decks.'),
  length: expression('Length of a post.'),
  through: fileName('Name of the deck piece the posts go through.'),
}, 'The posts.');

export const pieceSchema = z.discriminatedUnion('is', [deckSchema, postSchema], { error: messages.pieceKind });

export const pinSchema = section({
  pin: fileName('Name of the post piece that is pinned.'),
  to: fileName('Name of the deck piece it goes through.'),
}, 'Posts pinned to decks.');

export const braceSchema = section({
  brace: fileName('Name of the deck piece that is braced.'),
  faces: z.array(face, { error: messages.faces }).min(1, { error: messages.faces })
    .refine((faces) => new Set(faces).size === faces.length, { error: messages.faces })
    .meta({ description: 'Faces with crossed cables.', uniqueItems: true }),
}, 'Crossed cables.');

export const connectionSchema = z.union([pinSchema, braceSchema], { error: messages.connection });

export const orderSchema = section({
  first: orderKey('The work that comes first, for example wrap-side:left.'),
  then: orderKey('The work that comes after it.'),
  because: sentence(messages.orderReason, 'The reason, in a sentence that can be printed.'),
}, 'A wish for the order of work.');

function named<Entry extends z.ZodType>(name: z.ZodType<string, string>, entry: Entry, purpose: string) {
  return z.record(name, entry, { error: messages.namedSection })
    .refine((entries) => Object.keys(entries).length <= limits.entries, { error: messages.entries(limits.entries) })
    .meta({ description: purpose });
}

function listed<Entry extends z.ZodType>(entry: Entry, purpose: string) {
  return z.array(entry, { error: messages.list }).max(limits.entries, { error: messages.entries(limits.entries) }).meta({ description: purpose });
}

function atLeastOne<Entries extends z.ZodType<Record<string, unknown>>>(schema: Entries, what: string) {
  return schema.refine((entries) => Object.keys(entries).length > 0, { error: messages.atLeastOne(what) });
}

export const itemSchema = section({
  kind: oneWord('item', messages.kind('item'), 'Says that this is an item file.'),
  name: fileName('Name of the item, the same as its folder has.'),
  kit: fileName('Name of the kit file it is built from.'),
  revision: wholeFromOne('Counts up when the item changes.'),
  parameters: named(expressionName, parameterSchema, 'The measures that sizes may set.'),
  expressions: named(expressionName, expressionSchema, 'Measures worked out from parameters.').optional(),
  sizes: atLeastOne(named(fileName('Name of a size.'), named(z.string(), quantitySchema, 'A value for every parameter.'), 'The sizes that are made.'), 'size'),
  pieces: atLeastOne(named(fileName('Name of a piece.'), pieceSchema, 'What the item is put together from.'), 'piece'),
  connections: listed(connectionSchema, 'What holds the pieces together.'),
  order: listed(orderSchema, 'Wishes for the order of work, each with its reason.').optional(),
}, 'One item: its parameters, sizes, pieces and what holds them.');
