import { z } from 'zod';
import { expression, expressionName, fileName, namedSection, oneWord, patternText, pieceReference, quantity, section, sentence, shortText, wholeFromOne } from './fields.ts';
import { limits } from './limits.ts';
import { messages } from './messages.ts';
import { placesSection, structureSections, usesSection } from './structure/schema.ts';
import { useFields } from './use-schema.ts';

const orderKey = (purpose: string) => patternText(/^[a-z]+(-[a-z0-9]+)*(:[a-z0-9]+([.-][a-z0-9]+)*)?$/, limits.callLength, messages.orderKey, purpose);

const faceNames = ['back', 'left', 'right', 'front'] as const;

const face = z.enum(faceNames, { error: messages.face });

/** At least one of something, none of it twice. */
function onceEach<Entry extends z.ZodType<string>>(entry: Entry, remedy: string) {
  return z.array(entry, { error: remedy }).min(1, { error: remedy }).max(limits.entries, { error: messages.entries(limits.entries) })
    .refine((all) => new Set(all).size === all.length, { error: remedy })
    .meta({ uniqueItems: true });
}

/** One of something, or a list of it. */
function oneOrMore<Entry extends z.ZodType<string>>(entry: Entry, remedy: string, purpose: string) {
  return z.union([entry, onceEach(entry, remedy)], { error: remedy }).meta({ description: purpose });
}

const faces = (purpose: string) => onceEach(face, messages.faces).meta({ description: purpose, uniqueItems: true });

const pieceNamesList = (purpose: string) => oneOrMore(pieceReference('Name of a piece.'), messages.nameOrNames, purpose);

export const parameterSchema = section({
  range: patternText(/\bto\b/, limits.rangeLength, messages.range, 'Least and most, for example 500 mm to 1100 mm, or 2 to 5 for a count.'),
  purpose: sentence(messages.purpose, 'A sentence that says what the value sets.'),
  whole: z.boolean({ error: messages.yesOrNo }).default(false).meta({ description: 'True for counts.' }),
}, 'One measure that sizes may set.');

export const expressionSchema = expression('Worked out from parameters and other expressions, for example height - 2 * lowest.');

const quantitySchema = quantity('A number with its unit, for example 1000 mm, or a plain number for a count.');

export const deckSchema = section({
  is: oneWord('deck', messages.pieceKind, 'Four tubes in four corner joints with a panel wrapped on.'),
  width: expression('Length of the long tubes.'),
  depth: expression('Length of the short tubes.'),
  count: expression('How many decks, one over the other; 1 when left out.').default(1),
  top: expression('Height of the upper face over the floor; index counts from 0 at the lowest deck.'),
}, 'A deck.');

export const frameSchema = section({
  is: oneWord('frame', messages.pieceKind, 'Bare tubes in corner joints.'),
  width: expression('Length of the tubes along the front and back; as the deck or frame above it when left out.').optional(),
  depth: expression('Length of the tubes along the left and right; as the deck or frame above it when left out.').optional(),
  count: expression('How many frames, one over the other; 1 when left out.').default(1),
  level: expression('Height of the middle of the tubes over the floor; index counts from 0 at the lowest frame.'),
  sides: faces('Sides that have a tube; all four when left out.').default([...faceNames]),
}, 'A frame.');

export const postSchema = section({
  is: oneWord('post', messages.pieceKind, 'Four posts, one through each corner of the decks and frames.'),
  length: expression('Length of all four posts.').optional(),
  front: expression('Length of the two front posts, together with back.').optional(),
  back: expression('Length of the two back posts, together with front.').optional(),
  through: pieceNamesList('Names of the decks and frames the posts go through.'),
}, 'The posts.').check(({ value: { length, front, back }, issues }) => {
  const complain = (field: string): void => {
    issues.push({ code: 'custom', input: undefined, path: [field], message: messages.postLengths });
  };
  if (length !== undefined && front !== undefined) complain('front');
  if (length !== undefined && back !== undefined) complain('back');
  if (length === undefined && front === undefined) complain(back === undefined ? 'length' : 'front');
  if (length === undefined && front !== undefined && back === undefined) complain('back');
});

export const panelSchema = section({
  is: oneWord('panel', messages.pieceKind, 'A flat panel pinned upright on the tubes of one side.'),
  on: oneOrMore(face, messages.faceOrFaces, 'The side it stands on, or a list of sides that get one each.'),
  from: pieceReference('Name of the frame its lower edge is pinned to; the lowest of a repeated one.'),
  to: pieceReference('Name of the frame its upper edge is pinned to; the highest of a repeated one.'),
}, 'A flat panel.');

export const pieceSchema = z.discriminatedUnion('is', [deckSchema, frameSchema, postSchema, panelSchema], { error: messages.pieceKind });

export const pinSchema = section({
  pin: pieceReference('Name of the post piece that is pinned.'),
  to: pieceNamesList('Names of the decks and frames it is pinned to.'),
}, 'Posts pinned to decks and frames.');

export const braceSchema = section({
  brace: pieceReference('Name of the deck or frame the cables begin at; the lowest of a repeated one.'),
  to: pieceReference('Name of the deck or frame they end at; the highest of brace itself when left out.').optional(),
  faces: faces('Faces with crossed cables.'),
}, 'Crossed cables.');

export const connectionSchema = z.union([pinSchema, braceSchema], { error: messages.connection });

export const orderSchema = section({
  first: orderKey('The work that comes first, for example wrap-side:left.'),
  then: orderKey('The work that comes after it.'),
  because: sentence(messages.orderReason, 'The reason, in a sentence that can be printed.'),
}, 'A wish for the order of work.');

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
  use: z.enum(['storage', 'table', 'seat', 'bed'], { error: messages.use }).meta({ description: 'What it is used for: sets the loads and the checks that apply.' }),
  ...useFields,
  revision: wholeFromOne('Counts up when the item changes.'),
  parameters: namedSection(expressionName, parameterSchema, 'The measures that sizes may set.'),
  expressions: namedSection(expressionName, expressionSchema, 'Measures worked out from parameters.').optional(),
  sizes: atLeastOne(namedSection(fileName('Name of a size.'), namedSection(shortText(limits.nameLength, messages.expressionName, 'Name of a parameter.'), quantitySchema, 'A value for every parameter.'), 'The sizes that are made.'), 'size'),
  pieces: atLeastOne(namedSection(fileName('Name of a piece.'), pieceSchema, 'What the item is put together from, in short: decks, frames, posts and panels.'), 'piece').optional(),
  connections: listed(connectionSchema, 'What holds the pieces together.').optional(),
  uses: usesSection,
  ...structureSections,
  places: placesSection,
  order: listed(orderSchema, 'Wishes for the order of work, each with its reason.').optional(),
}, 'One item: its parameters, sizes, pieces and what holds them.');
