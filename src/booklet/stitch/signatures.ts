/** A page's number from 1, or null where nothing is printed. */
export type Leaf = number | null;

/** One side of a flat sheet, as one sees it with the fold upright. */
export interface SheetSide {
  readonly left: Leaf;
  readonly right: Leaf;
}

/**
 * A sheet that is folded once. The front comes to lie outside. The sheet is turned over its short edge between the
 * sides, so that the back's left is behind the front's right.
 */
export interface StitchedSheet {
  /** Which stapled bundle of sheets it belongs to, from 0. */
  readonly signature: number;
  /** How many sheets of its signature lie outside it. */
  readonly depth: number;
  readonly front: SheetSide;
  readonly back: SheetSide;
}

/** Most sheets that a stapler goes through: 15 of 80 g/m² (common practice, no source). */
export const MOST_SHEETS = 15;

/** Number of pages with the blanks that bring it to a multiple of four: each folded sheet has four. */
const paddedCount = (pages: number): number => 4 * Math.ceil(pages / 4);

/** The pages in reading order with blanks before the last one, so that the last stays outside. */
function withBlanks(pages: number): readonly Leaf[] {
  const numbers = Array.from({ length: pages }, (_, index) => index + 1);
  const blanks = Array.from({ length: paddedCount(pages) - pages }, () => null);
  return pages < 2 ? [...numbers, ...blanks] : [...numbers.slice(0, -1), ...blanks, ...numbers.slice(-1)];
}

/**
 * The sheets of a stitched booklet in the order in which they are printed: signature after signature, in each from the
 * outermost sheet to the innermost. No signature has more than `most` sheets, and none more than one sheet more than another.
 * Bound on the left for left-to-right languages, on the right for the others.
 * @throws RangeError where there is no page or `most` is no whole number above 0.
 */
export function stitchedSheets(pages: number, dir: 'ltr' | 'rtl', most: number = MOST_SHEETS): readonly StitchedSheet[] {
  if (!Number.isInteger(pages) || pages < 1) throw new RangeError(`a booklet of ${pages} pages cannot be stitched; it needs one page at least`);
  if (!Number.isInteger(most) || most < 1) throw new RangeError(`${most} sheets in a signature; right would be a whole number from 1`);
  const leaves = withBlanks(pages);
  let done = 0;
  return signatureSizes(leaves.length / 4, most).flatMap((sheets, signature) => {
    const own = leaves.slice(done, done + 4 * sheets);
    done += 4 * sheets;
    return Array.from({ length: sheets }, (_, depth) => ({ signature, depth, ...sidesOf(own, depth, dir) }));
  });
}

/** Sheets of each signature, alike as far as possible, the larger first. */
export function signatureSizes(sheets: number, most: number): readonly number[] {
  const count = Math.ceil(sheets / most);
  return Array.from({ length: count }, (_, index) => Math.floor(sheets / count) + (index < sheets % count ? 1 : 0));
}

/** Nested sheets hold the pages from both ends of the signature inwards. */
function sidesOf(leaves: readonly Leaf[], depth: number, dir: 'ltr' | 'rtl'): Pick<StitchedSheet, 'front' | 'back'> {
  const early = 2 * depth;
  const late = leaves.length - 1 - early;
  const at = (index: number): Leaf => leaves[index] ?? null;
  return {
    front: asBound({ left: at(late), right: at(early) }, dir),
    back: asBound({ left: at(early + 1), right: at(late - 1) }, dir),
  };
}

const asBound = ({ left, right }: SheetSide, dir: 'ltr' | 'rtl'): SheetSide => (dir === 'rtl' ? { left: right, right: left } : { left, right });
