import { z } from 'zod';
import { fileName, measure, oneWord, section, sentence, wholeFromOne } from './fields.ts';
import { limits } from './limits.ts';
import { messages } from './messages.ts';
import { stockMessages } from './stock-messages.ts';

/** Words of the stock file. */
const CORNERS_OF_PANEL = ['lower-left', 'lower-right', 'upper-left', 'upper-right'] as const;
const DAMAGE = ['hole', 'broken-corner', 'rib', 'seam', 'other'] as const;
const GRAIN = ['length', 'width'] as const;

const zeroOrMore = (purpose: string) =>
  z.int({ error: stockMessages.wholeFromZero }).min(0, { error: stockMessages.wholeFromZero }).max(stockMessages.mostCounted, { error: stockMessages.wholeFromZero }).default(0).meta({ description: purpose });

const counted = (purpose: string) => wholeFromOne(purpose, stockMessages.mostCounted, stockMessages.wholeFromOne);

const name = fileName('What the pieces are marked with on the pile.');
const nonNegative = (purpose: string) => measure('length', purpose, { zero: true }).optional();

const tube = section({
  name,
  count: counted('How many tubes are so.'),
  length: measure('length', 'From end to end.'),
  'not-from-end': nonNegative('So much of one end is crushed, split or drilled and not to be used; zero unless given.'),
  cracked: z.boolean({ error: messages.yesOrNo }).optional().meta({ description: 'Cracked all along: not to be used at all.' }),
}, 'Tubes alike.');

const notToUse = section({
  is: z.enum(DAMAGE, { error: stockMessages.oneOf(DAMAGE) }).meta({ description: 'What is there: a hole, a broken corner, a stiffening rib, a seam between two panels, or something other.' }),
  corner: z.enum(CORNERS_OF_PANEL, { error: stockMessages.oneOf(CORNERS_OF_PANEL) }).meta({ description: 'The corner it is measured from, with the length of the panel lying from left to right.' }),
  along: nonNegative('From that corner along the length to where it begins; zero unless given.'),
  across: nonNegative('From that corner along the width to where it begins; zero unless given.'),
  length: measure('length', 'Its extent along the length of the panel.').optional(),
  width: measure('length', 'Its extent along the width of the panel.').optional(),
}, 'A rectangle not to be used. Without length or width it reaches to the far edge, as a rib does.');

const panel = section({
  name,
  count: counted('How many panels are so.'),
  length: measure('length', 'The longer side, which lies from left to right.'),
  width: measure('length', 'The other side.'),
  grain: z.enum(GRAIN, { error: stockMessages.oneOf(GRAIN) }).optional().meta({ description: 'The side its grain or flutes run along: the long sides of pieces then lie along it. Any way will do unless given.' }),
  'not-to-use': z.array(notToUse, { error: messages.list }).max(stockMessages.mostDefects, { error: stockMessages.defects }).optional()
    .meta({ description: 'Rectangles not to be used: holes, broken corners, ribs.' }),
}, 'Panels alike.');

const cable = section({
  name,
  count: counted('How many cables are so.'),
  length: measure('length', 'From loop to loop.'),
}, 'Cables alike.');

const listOf = <Schema extends z.ZodType>(schema: Schema, purpose: string) =>
  z.array(schema, { error: messages.list }).max(limits.entries, { error: messages.entries(limits.entries) }).default([]).meta({ description: purpose });

export const stockSchema = section({
  kind: oneWord('stock', messages.kind('stock'), 'Says that this is a stock file.'),
  name: fileName('Name of the stock.'),
  kit: fileName('The kit the parts came from: whole ones of it make up for what is short.'),
  note: sentence(stockMessages.note, 'Who counted, where and when.').optional(),
  tubes: listOf(tube, 'Tubes.'),
  panels: listOf(panel, 'Panels.'),
  cables: listOf(cable, 'Cables.'),
  joints: zeroOrMore('Corner joints.'),
  'panel-pins': zeroOrMore('Panel pins.'),
  'joint-pins': zeroOrMore('Joint pins.'),
  'wing-nuts': zeroOrMore('Wing nuts.'),
}, 'What was counted of retired structures. Every measure carries its unit; counts carry none.');

export type StockFile = z.output<typeof stockSchema>;
