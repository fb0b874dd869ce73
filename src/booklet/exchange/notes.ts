import { countsOf, type Entry } from './entries.ts';
import { lengthLimit } from './limits.ts';
import { asWritten, exampleOf, placeholderLength } from './placeholders.ts';

/** A note to the translator beside a text. */
export interface Note {
  /** `context`: where the text stands; `placeholders`; `plural`; `length`; `picture`. */
  readonly category: string;
  readonly text: string;
}

/** Where the texts whose keys begin so stand on the pages; the first that fits holds. */
const places: readonly (readonly [string, string])[] = [
  ['actions.sides.', 'Part of a sentence. It takes the place of {{side}} in the captions: write it in the form that fits there.'],
  ['actions.names.', 'Name of what is done in a step. It is said to those who hear the page instead of the sign for the action.'],
  ['actions.', 'Caption over the picture of a step: one short sentence that tells the worker what to do.'],
  ['booklet.chapters.', 'Heading of a chapter of the booklet.'],
  ['booklet.tools.', 'Name of a tool. It is said to those who hear the page instead of the tool’s sign.'],
  ['booklet.alt.', 'Tells what a picture shows, for those who hear the page.'],
  ['booklet.colophon.', 'On the last pages: which print this is, who read the words, which checks were made.'],
  ['booklet.', 'A line on the pages of the booklet.'],
  ['cautions.', 'Safety. The name of a safety sign, or what to do or leave to stay unhurt. Be plain and exact.'],
  ['checks.', 'What is right when a step is well done. It stands beside two pictures, the right and the wrong way.'],
  ['dimensions.', 'Name of a length of the finished item, in a table and beside its letter in a drawing.'],
  ['findings.', 'Name of an engineering check, in the table on the last pages.'],
  ['items.kits.', 'Name of the retired structure that the item is made from.'],
  ['items.', 'Name of an item or of one of its sizes, on the cover and at the foot of each page.'],
  ['parameters.', 'A size that can be changed on the workbench page: its name, and what it sets.'],
  ['parts.', 'Name of a part, or a number of such parts, in lists. One word for one part, in all texts.'],
];

/** What a translator should know of a text; `tag` is that of the target language's numbers, `pictures` the pictures that go with it and what they show. */
export function notesFor(entry: Entry, tag: string, pictures: readonly string[]): readonly Note[] {
  return [
    { category: 'context', text: places.find(([prefix]) => entry.key.startsWith(prefix))?.[1] ?? 'A text of the booklet.' },
    ...(entry.allows.length === 0 ? [] : [{ category: 'placeholders', text: placeholderNote(entry) }]),
    ...(entry.form === null ? [] : [{ category: 'plural', text: pluralNote(entry.form, tag) }]),
    ...(lengthLimit(entry.key) === null ? [] : [{ category: 'length', text: lengthNote(entry) }]),
    ...(pictures.length === 0 ? [] : [{ category: 'picture', text: `${pictures.join('; ')}.` }]),
  ];
}

function placeholderNote({ allows, needs }: Entry): string {
  const stands = allows.map((name) => `${asWritten(name)} is filled in, for example with “${exampleOf(name)}”${needs.includes(name) ? '' : ', and may be left out'}`);
  return `${stands.join('; ')}.`;
}

function pluralNote(form: string, tag: string): string {
  const counts = countsOf(tag, form);
  if (counts.length === 0) return `Plural form “${form}”: for very large numbers, or numbers with decimals.`;
  const [some, more] = [counts.slice(0, 6).join(', '), counts.length > 6 ? ' and so on' : ''];
  return `Plural form “${form}”: for ${some}${more}.`;
}

function lengthNote({ key, allows }: Entry): string {
  const counted = allows.map((name) => `${asWritten(name)} counts as ${placeholderLength(name)}`);
  return `At most ${lengthLimit(key)} characters${counted.length === 0 ? '' : `; ${counted.join(', ')}`}.`;
}
