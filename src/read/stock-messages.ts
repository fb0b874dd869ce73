/** Counts above this are a slip of the pen. */
const mostCounted = 100_000;
/** More damage than this on one panel is a panel not to use. */
const mostDefects = 12;

/** Texts about stock files and tables that a person may read. */
export const stockMessages = {
  mostCounted,
  mostDefects,
  wholeFromZero: `a whole number from 0 to ${mostCounted}, for example 24`,
  wholeFromOne: `a whole number from 1 to ${mostCounted}, for example 24`,
  defects: `at most ${mostDefects} rectangles; a panel with more of them is not worth the work`,
  oneOf: (words: readonly string[]) => `one of ${words.join(', ')}`,
  note: 'a sentence, for example who counted and where',
  nameOnce: 'a name that no other line of this list has',
  lengthFirst: 'the longer side as length, the shorter as width',
  lessThan: (what: string) => `less than the ${what}`,
  onPanel: (side: string) => `a rectangle that lies on the panel, whose ${side} it passes`,
  extent: 'a length, a width or both: without either it would cover all of the panel beyond',
  brokenCorner: 'no along or across: a broken corner begins at the corner',

  table: {
    header: (columns: readonly string[]) => `a first line with the columns ${columns.join(', ')}`,
    knownColumn: (columns: readonly string[]) => `one of the columns ${columns.join(', ')}`,
    once: 'each column once',
    part: (parts: readonly string[]) => `one of ${parts.join(', ')}`,
    ownPanel: (names: readonly string[]) => `the name of a panel on a line above: ${names.length === 0 ? 'there is none' : `one of ${names.join(', ')}`}`,
    empty: 'nothing here: the column does not go with this part',
    number: 'a number in mm without a unit, for example 2000 or 12.5',
    whole: 'a whole number, for example 24',
    needed: 'a value',
    yes: 'yes, or nothing',
    quotes: 'a table with ; or , between the columns and quotes closed on the line they open',
    oneLine: (part: string) => `one line for ${part}`,
    missing: (part: string) => `a line for ${part}`,
    fields: (most: number) => `at most ${most} columns, as in the first line`,
  },
} as const;
