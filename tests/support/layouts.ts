import type { Face, Use } from '../../src/read/index.ts';

/** Decks of one piece, tops in mm over the floor, from the lowest. */
export interface DeckRow {
  readonly name: string;
  readonly tops: readonly number[];
}

/** Frames of one piece, evenly apart: tubes' axes in mm over the floor, or an expression for the lowest. */
export interface FrameRow {
  readonly name: string;
  readonly level: number | string;
  readonly rise?: number;
  readonly count?: number;
  readonly sides: readonly Face[];
}

export interface PlateRow {
  readonly name: string;
  readonly on: readonly Face[];
  readonly from: string;
  readonly to: string;
}

/** An item as a test thinks of it; all lengths mm. */
export interface Layout {
  readonly use?: Use;
  readonly width: number;
  readonly depth: number;
  readonly decks: readonly DeckRow[];
  readonly frames?: readonly FrameRow[];
  readonly plates?: readonly PlateRow[];
  readonly posts: { readonly front: number; readonly back: number };
  readonly braces?: readonly { readonly from: string; readonly to: string; readonly faces: readonly Face[] }[];
}

/** The layout as an item file called `trial`, with one size called `only`. */
export function layoutText({ use = 'storage', width, depth, decks, frames = [], plates = [], posts, braces = [] }: Layout): string {
  const standing = [...decks, ...frames].map(({ name }) => name).join(', ');
  return [
    'kind: item', 'name: trial', 'kit: stall-kit', `use: ${use}`, ...peopleOf(use), 'revision: 1',
    'parameters:', '  width:', '    range: 100 mm to 2000 mm', '    purpose: Length of the long tubes.',
    '  depth:', '    range: 100 mm to 2000 mm', '    purpose: Length of the short tubes.',
    'sizes:', '  only:', `    width: ${width} mm`, `    depth: ${depth} mm`,
    'pieces:',
    ...decks.flatMap(({ name, tops }) => [
      `  ${name}:`, '    is: deck', '    width: width', '    depth: depth', `    count: ${tops.length}`,
      `    top: ${tops[0] ?? 0} mm + index * ${(tops[1] ?? 0) - (tops[0] ?? 0)} * 1 mm`,
    ]),
    ...frames.flatMap(({ name, level, rise = 0, count = 1, sides }) => [
      `  ${name}:`, '    is: frame', ...(decks.length === 0 ? ['    width: width', '    depth: depth'] : []),
      `    count: ${count}`, `    level: ${typeof level === 'number' ? `${level} mm` : level} + index * ${rise} * 1 mm`, `    sides: [${sides.join(', ')}]`,
    ]),
    ...plates.flatMap(({ name, on, from, to }) => [`  ${name}:`, '    is: panel', `    on: [${on.join(', ')}]`, `    from: ${from}`, `    to: ${to}`]),
    '  post:', '    is: post', `    front: ${posts.front} mm`, `    back: ${posts.back} mm`, `    through: [${standing}]`,
    'connections:', '  - pin: post', `    to: [${standing}]`,
    ...braces.flatMap(({ from, to, faces }) => [`  - brace: ${from}`, ...(from === to ? [] : [`    to: ${to}`]), `    faces: [${faces.join(', ')}]`]),
    'order: []', '',
  ].join('\n');
}

/** Adults indoors, or on a bed a small child on a mattress that is a little smaller than the base. */
const peopleOf = (use: Use): readonly string[] => (use === 'bed'
  ? ['place: indoors', 'for: small-children', 'mattress: { length: width - 10 mm, width: depth - 10 mm, thickness: 80 mm }']
  : ['place: indoors', 'for: adults']);
