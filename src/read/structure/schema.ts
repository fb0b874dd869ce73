import { z } from 'zod';
import { expression, expressionName, fileName, namedSection, oneWord, patternText, section, sentence, shortText } from '../fields.ts';
import { limits } from '../limits.ts';
import { messages } from '../messages.ts';

const say = messages.structure;

const repeats = namedSection(
  expressionName, patternText(/\.\./, limits.rangeLength, say.range, 'First and last, for example 0..decks-1.'),
  'Makes one for each value of each index, for example { x: 0..1, y: 0..1 }; they are called by their indexes in this order, for example c.0.1.',
  { least: 1, most: limits.indexes, remedy: say.repeats, error: say.repeats },
).optional();

const reference = (purpose: string) => shortText(limits.callLength, say.reference, purpose);

const references = (purpose: string) => z.union([reference(purpose), z.array(reference(purpose), { error: say.references }).min(1, { error: say.references }).max(limits.entries, { error: messages.entries(limits.entries) })], { error: say.references })
  .meta({ description: purpose });

const triple = (purpose: string) => z.tuple([expression('Across.'), expression('Back.'), expression('Up.')], { error: say.triple }).meta({ description: purpose });

const faceNames = ['up', 'down', 'left', 'right', 'front', 'back'] as const;

const direction = (purpose: string) => z.union([z.enum(faceNames, { error: say.face }), triple(purpose)], { error: say.face }).meta({ description: purpose });

const mirrorPlane = z.enum(['x', 'y'], { error: say.mirror });

const kitPart = (purpose: string) => shortText(limits.nameLength, messages.fileName, purpose);

export const pointSchema = section({
  for: repeats,
  at: triple('Where it is: across, back and up from where the item measures; the floor is at 0 up.'),
  mirror: z.union([mirrorPlane, z.tuple([mirrorPlane, mirrorPlane], { error: say.mirror })], { error: say.mirror }).optional()
    .meta({ description: 'Also makes its mirror image across x = 0 or y = 0; one more index tells them apart, 0 as written and 1 mirrored.' }),
}, 'A point, or points alike.');

export const barSchema = section({
  for: repeats,
  from: reference('The point it begins at.'),
  to: reference('The point it ends at.'),
  through: references('Points between that it runs through.').optional(),
  tube: kitPart('A tube of the kit; the usual one when left out.').optional(),
  pinned: z.boolean({ error: messages.yesOrNo }).default(true).meta({ description: 'False where a joint is to slide on it.' }),
}, 'A tube, or tubes alike.');

const panelBase = {
  for: repeats,
  panel: kitPart('A panel of the kit; the usual one when left out.').optional(),
} as const;

const wrap = z.union([z.literal('all', { error: say.wrap }), references('Bars it is folded round.')], { error: say.wrap }).default('all')
  .meta({ description: 'Bars of the loop that it is folded round; all when left out.' });

export const structurePanelSchema = z.discriminatedUnion('is', [
  section({
    is: oneWord('wrapped', say.panelKind, 'A panel folded round bars of a loop.'),
    ...panelBase,
    loop: references('The bars it spans, one after the other round it.'),
    wrap,
    face: direction('The side of the bars it lies on; up when left out.').default('up'),
  }, 'A wrapped panel.'),
  section({
    is: oneWord('flat', say.panelKind, 'A flat panel on parallel bars.'),
    ...panelBase,
    on: references('The parallel bars it lies on.'),
    face: direction('The side of the bars it lies on.'),
    pinned: z.boolean({ error: messages.yesOrNo }).default(true).meta({ description: 'False where hinges hold it.' }),
    length: expression('Its length along the bars; as long as there is room between the joints when left out.').optional(),
    over: expression('How far it stands past the middle of the outer bars; enough for the pins when left out.').optional(),
    lift: expression('Room between the bars and the panel; none when left out.').optional(),
  }, 'A flat panel.'),
  section({
    is: oneWord('tray', say.panelKind, 'A box folded of one panel, hung in a loop of bars.'),
    ...panelBase,
    loop: references('The bars it hangs in, one after the other round it.'),
    wrap,
    depth: expression('From the middle of the bars down to its floor.'),
  }, 'A tray.'),
], { error: say.panelKind });

export const cableSchema = section({
  for: repeats,
  from: reference('The point it begins at.'),
  to: reference('The point it ends at.'),
  face: direction('The side it runs on.'),
}, 'A cable, or cables alike.');

export const fittingSchema = section({
  for: repeats,
  fitting: kitPart('A fitting of the kit.'),
  on: reference('The bar it is fixed to.'),
  at: reference('The end of the bar it goes into, or a point the bar runs through.').optional(),
  along: expression('Where on the bar, from its beginning; together with no at.').optional(),
  panel: reference('The panel that a hinge or a lid stay holds.').optional(),
  face: direction('Where the wall is, for a wall bracket.').optional(),
}, 'A small part, or some alike.');

export const placeSchema = section({
  panel: references('The panels, or the deck or panel pieces.'),
  use: z.enum(['seat', 'backrest', 'table', 'shelf', 'bed', 'lid', 'box', 'screen'], { error: say.placeUse }).meta({ description: 'What it is used for: sets the loads and the checks that apply.' }),
  load: expression('What it is to carry: a mass or a force; as usual for this use when left out.').optional(),
  mattress: expression('Thickness of the mattress on a bed.').optional(),
}, 'What a panel is for.');

export const useSchema = section({
  for: repeats,
  piece: kitPart('Name of the file of the piece.'),
  at: triple('Where its own 0, 0, 0 comes to stand.'),
  turn: expression('How far it is turned about the upright, an angle; not at all when left out.').optional(),
  mirror: mirrorPlane.optional().meta({ description: 'Mirrored across its own x = 0 or y = 0 before it is turned.' }),
  with: namedSection(expressionName, expression('A value.'), 'A value for every parameter of the piece.').optional(),
}, 'A piece of the designer\'s own.');

const named = <Entry extends z.ZodType>(entry: Entry, purpose: string) => namedSection(fileName('Its name.'), entry, purpose).optional();

/** The sections that tell a structure, in an item and in a piece. */
export const structureSections = {
  points: named(pointSchema, 'Points that bars and cables go from and to.'),
  bars: named(barSchema, 'Tubes from point to point.'),
  panels: named(structurePanelSchema, 'Panels by the bars they hold to.'),
  cables: named(cableSchema, 'Cables from joint to joint.'),
  fittings: named(fittingSchema, 'Feet, castors, caps, hinges, stays and brackets.'),
} as const;

export const usesSection = named(useSchema, 'Pieces of the designer\'s own, told in steps/pieces.');

export const placesSection = named(placeSchema, 'What the panels are used for.');

export const ownParameterSchema = section({
  measures: z.enum(['length', 'angle', 'count', 'ratio'], { error: say.measures }).meta({ description: 'What its value measures.' }),
  purpose: sentence(messages.purpose, 'A sentence that says what the value sets.'),
}, 'One measure that the item gives.');

export const pieceFileSchema = section({
  kind: oneWord('piece', messages.kind('piece'), 'Says that this is the file of a piece.'),
  name: fileName('Name of the piece, the same as the file has.'),
  parameters: namedSection(expressionName, ownParameterSchema, 'The measures that items give.').optional(),
  expressions: namedSection(expressionName, expression('Worked out from parameters and other expressions.'), 'Measures worked out from parameters.').optional(),
  ...structureSections,
}, 'A piece of a designer\'s own, used by several items.');
