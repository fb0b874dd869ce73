import type { Words } from '../words/index.ts';
import { captionSize, lineHeight } from './sheet.ts';
import { latinAdvance } from './latin-advances.ts';

const mmPerPoint = 25.4 / 72;
const isolates = /[\u2066-\u2069]/g;
/** Letters' parts that stand over, under or inside others and take no room of their own. */
const marks = /\p{Mn}/gu;
/** Bold letters against regular ones, measured on the locale files. */
const boldness = 1.08;

/** How the letters of a script stand in a line. Measured in the browser on the texts of the locale files. */
interface Hand {
  /** Distance of lines against the size of the letters that keeps those of one line out of the next. */
  readonly leading: number;
  /** Width of a letter without its marks against its size, on average over a text: not passed in 98 of 100 texts; 0 where each letter's own is known. */
  readonly letter: number;
  /** Width of a space; Latin's unless given. */
  readonly space?: number;
  /** Words are written without spaces and are broken between syllables. */
  readonly unspaced?: true;
}

const latin: Hand = { leading: 1.3, letter: 0 };
const hands: Readonly<Record<string, Hand>> = {
  Arab: { leading: 1.5, letter: 0.54 },
  Beng: { leading: 1.5, letter: 0.6 },
  Cyrl: { leading: 1.3, letter: 0.6 },
  Ethi: { leading: 1.3, letter: 0.71 },
  Grek: { leading: 1.3, letter: 0.6 },
  Latn: latin,
  Mymr: { leading: 1.7, letter: 0.83, unspaced: true },
};
/** Languages in another hand than the rest of their script. */
const ownHands: Readonly<Record<string, Hand>> = {
  ur: { leading: 2.5, letter: 0.5, space: 0.14 },
};

const handOf = ({ written }: Words): Hand => ownHands[written.language] ?? hands[written.script] ?? latin;

/** How much farther apart a language's lines stand than Latin's: 1 or more, in steps of 0.05. */
export function lineScale(words: Words): number {
  const needed = (handOf(words).leading * captionSize * words.about.textScale * mmPerPoint) / lineHeight;
  return Math.max(1, Math.ceil(needed * 20 - 1e-9) / 20);
}

/** How a text is set: size of its letters, pt, before the language's own scale, and whether they are bold. */
export interface Setting {
  readonly size: number;
  readonly bold?: boolean;
}

/** Lines that a text takes in `width` mm when it is broken at its spaces: as many as on paper, or more. */
export function textLines(words: Words, text: string, width: number, { size, bold = false }: Setting): number {
  const hand = handOf(words);
  const room = width / (size * words.about.textScale * mmPerPoint * (bold ? boldness : 1));
  if (hand.unspaced) return Math.max(1, Math.ceil(widthIn(hand, text) / (room - 2 * hand.letter)));
  return linesOfWords(text.split(' ').map((word) => widthIn(hand, word)), letterWidth(hand, ' '), room);
}

/** Width of a text on one line, on the safe side, mm. */
export function textWidth(words: Words, text: string, { size, bold = false }: Setting): number {
  return widthIn(handOf(words), text) * size * words.about.textScale * mmPerPoint * (bold ? boldness : 1);
}

/** In em. */
function widthIn(hand: Hand, text: string): number {
  const plain = text.replace(isolates, '').normalize('NFD').replace(marks, '');
  return [...plain].reduce((sum, letter) => sum + letterWidth(hand, letter), 0);
}

/** Lines of a text in Latin letters, whatever the booklet's language. `size` in pt. */
export function latinLines(text: string, width: number, size: number): number {
  return linesOfWords(text.split(' ').map((word) => [...word].reduce((sum, letter) => sum + latinAdvance(letter), 0)), latinAdvance(' '), width / (size * mmPerPoint));
}

function letterWidth({ letter, space }: Hand, character: string): number {
  if (character === ' ' && space !== undefined) return space;
  return letter === 0 || character <= '\u024f' ? latinAdvance(character) : letter;
}

function linesOfWords(widths: readonly number[], space: number, room: number): number {
  let lines = 1;
  let used = 0;
  for (const word of widths) {
    if (used > 0 && used + space + word > room) { lines += 1; used = word; } else used += (used > 0 ? space : 0) + word;
    // A word that is wider than the room reaches out of it on one line: that is found by measuring the pages.
  }
  return lines;
}
