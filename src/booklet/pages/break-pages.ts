import { leadGroups, type Tall } from './pack.ts';

/** Something with pictures that may be set smaller. */
export interface Flexible extends Tall {
  /** The part of its height that pictures take, mm. */
  readonly flexible: number;
  /** Its pictures that may be set larger: height, mm, and the largest size against their own. None unless given. */
  readonly growing?: readonly { readonly height: number; readonly most: number }[];
}

/** What stands on one page, and how it is fitted to it. */
export interface FittedPage<Entry> {
  readonly entries: readonly Entry[];
  /** Size of the pictures against their own, `leastScale` to `mostScale`; each picture stops at its own largest. */
  readonly scale: number;
  /** Height that is left over, mm. */
  readonly white: number;
}

/**
 * Pictures are never set smaller: their smallest text, 4.5 mm or 12.8 pt, stays above the 10 pt of
 * ISO/IEC Guide 37.
 */
export const leastScale = 0.8;

/** Pictures are set larger where a page has room: beyond a quarter the steps of one booklet would look too different (found by looking). */
export const mostScale = 1.25;

/** How bad the smallest pictures are against an empty page, 1; found by looking. */
const smallestIsBad = 0.4;

/** How an entry may be parted over pages: its pieces, each of which stands on one page, and it from one of them to before another. */
export interface Parting<Entry> {
  readonly pieces: (entry: Entry) => number;
  readonly part: (entry: Entry, from: number, to: number) => Entry;
}

/** How bad it is to go on with a step on the next page, against an empty page, 1: two may be parted to save one page. */
const partedIsBad = 0.45;

const inOnePiece = { pieces: () => 1, part: <Entry,>(entry: Entry): Entry => entry };

/**
 * Breaks entries into pages, in order, so that few pages are needed, none is half empty, pictures stay large and few
 * entries go on over the page. An entry that leads stays with the first piece of the next. `room` and `first` (the first page)
 * are in mm, `least` is the smallest size of pictures. Throws when a piece with all that leads up to it is
 * higher than a page even with the smallest pictures.
 */
export function breakPages<Entry extends Flexible>(
  entries: readonly Entry[], room: number, first: number = room, least: number = leastScale, parting: Parting<Entry> = inOnePiece,
): readonly FittedPage<Entry>[] {
  const groups = leadGroups(entries).map((all): Group<Entry> => ({ leads: all.slice(0, -1), last: all.slice(-1), pieces: Math.max(1, ...all.slice(-1).map(parting.pieces)) }));
  const places = [...groups.flatMap(({ pieces }, group) => Array.from({ length: pieces }, (_, piece): Place => ({ group, piece }))), { group: groups.length, piece: 0 }];
  /** The best pages up to each place. */
  const best: (Breaking<Entry> | null)[] = [{ pages: [], cost: 0 }];
  for (const [end, to] of places.entries()) {
    if (end === 0) continue;
    let found: Breaking<Entry> | null = null;
    for (let start = end - 1; start >= 0; start -= 1) {
      const page = fitted(between(groups, parting, places[start] ?? to, to), start === 0 ? first : room, least);
      if (page === null) break;
      const before = best[start];
      if (!before) continue;
      const cost = before.cost + costOf(page, start === 0 ? first : room, end === places.length - 1, least) + (to.piece > 0 ? partedIsBad : 0);
      if (found === null || cost < found.cost - 1e-9) found = { pages: [...before.pages, page], cost };
    }
    best.push(found);
    refuseTooHigh(between(groups, parting, places[end - 1] ?? to, to), room, least);
  }
  const whole = best.at(-1);
  if (!whole) throw new Error(`booklet: the first steps do not fit a page that holds ${first} mm`);
  return whole.pages;
}

/** An entry with all that leads up to it. */
interface Group<Entry> {
  readonly leads: readonly Entry[];
  readonly last: readonly Entry[];
  readonly pieces: number;
}

/** Where a page may end: before that piece of that group. */
interface Place {
  readonly group: number;
  readonly piece: number;
}

/** What stands between two places. */
function between<Entry>(groups: readonly Group<Entry>[], { part }: Parting<Entry>, from: Place, to: Place): readonly Entry[] {
  return groups.slice(from.group, to.group + 1).flatMap(({ leads, last, pieces }, index): readonly Entry[] => {
    const [begins, ends] = [index === 0 ? from.piece : 0, from.group + index === to.group ? to.piece : pieces];
    if (ends === 0) return [];
    const own = begins === 0 && ends === pieces ? last : last.map((entry) => part(entry, begins, ends));
    return begins === 0 ? [...leads, ...own] : own;
  });
}

interface Breaking<Entry> {
  readonly pages: readonly FittedPage<Entry>[];
  readonly cost: number;
}

/** The entries as one page, or null where not even the smallest pictures fit. */
function fitted<Entry extends Flexible>(entries: readonly Entry[], room: number, least: number): FittedPage<Entry> | null {
  const height = sum(entries, (entry) => entry.height);
  if (height <= room + 1e-6) return { entries, ...grown(entries, Math.max(0, room - height)) };
  const flexible = sum(entries, (entry) => entry.flexible);
  // Rounded down to thousandths: the same pages on every machine, and never too high.
  const scale = flexible > 0 ? Math.floor(1000 * (1 - (height - room) / flexible)) / 1000 : 0;
  return scale < least ? null : { entries, scale, white: 0 };
}

/** Pictures as large as the white that is left allows, up to `mostScale`. Rounded down to thousandths as above. */
function grown(entries: readonly Flexible[], white: number): { readonly scale: number; readonly white: number } {
  const taken = (thousandths: number): number => sum(entries, (entry) => growth(entry, thousandths / 1000));
  let [scale, tooLarge] = [1000, Math.round(1000 * mostScale) + 1];
  while (tooLarge - scale > 1) {
    const between = Math.floor((scale + tooLarge) / 2);
    if (taken(between) <= white) scale = between; else tooLarge = between;
  }
  const used = taken(scale);
  return used === 0 ? { scale: 1, white } : { scale: scale / 1000, white: white - used };
}

/** How much higher an entry's pictures make it at a size of more than 1, mm. */
export function growth({ growing = [] }: Pick<Flexible, 'growing'>, scale: number): number {
  return sum(growing, ({ height, most }) => height * Math.max(0, Math.min(scale, most) - 1));
}

/** One for each page, more for an empty or a crowded one, its pictures at their own size; the last may be short. */
function costOf({ entries, scale, white }: FittedPage<Flexible>, room: number, last: boolean, least: number): number {
  const empty = white + sum(entries, (entry) => growth(entry, scale));
  return 1 + (last ? 0 : (empty / room) ** 2) + smallestIsBad * (Math.max(0, 1 - scale) / (1 - least)) ** 2;
}

function refuseTooHigh(group: readonly Flexible[], room: number, least: number): void {
  if (fitted(group, room, least) !== null) return;
  throw new Error(`booklet: ${sum(group, (entry) => entry.height)} mm of height do not fit a page that holds ${room} mm`);
}

function sum<Entry>(entries: readonly Entry[], of: (entry: Entry) => number): number {
  return entries.reduce((total, entry) => total + of(entry), 0);
}
