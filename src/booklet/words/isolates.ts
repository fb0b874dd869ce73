/**
 * Text of a known or an own direction stands between the isolates of UAX #9: U+2066 (left to right) or
 * U+2068 (as its first letter says) before it, U+2069 after it. The pages turn them into elements with
 * `dir`; in alternative texts the characters stay.
 */
const leftToRight = '\u2066';
const byFirstLetter = '\u2068';
const close = '\u2069';

/** Keeps a measure, a letter or a counter in left-to-right order inside any text. */
export function isolate(text: string): string {
  return `${leftToRight}${text}${close}`;
}

/** Lets a name, perhaps in another script, keep its own direction. */
export function isolateName(text: string): string {
  return `${byFirstLetter}${text}${close}`;
}

export interface Piece {
  readonly text: string;
  /** Null outside isolates. */
  readonly dir: 'ltr' | 'auto' | null;
}

/** A text cut at its isolates, in order; isolates are not nested. */
export function splitIsolates(text: string): readonly Piece[] {
  return text
    .split(new RegExp(`([${leftToRight}${byFirstLetter}][^${close}]*${close})`))
    .filter((piece) => piece !== '')
    .map((piece) => {
      if (piece.startsWith(leftToRight)) return { text: piece.slice(1, -1), dir: 'ltr' };
      if (piece.startsWith(byFirstLetter)) return { text: piece.slice(1, -1), dir: 'auto' };
      return { text: piece, dir: null };
    });
}
