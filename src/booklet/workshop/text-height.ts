import { lineScale, textLines } from '../pages/setting.ts';
import type { Words } from '../words/index.ts';

/**
 * Height of a text in `width` mm at `size` pt, in lines as Latin's are apart: those of other scripts stand farther
 * apart. Notes may be in another language than the pack's own.
 */
export function linesIn(words: Words, lang: string, text: string, width: number, size: number): number {
  const written = { ...words, lang };
  return textLines(written, text, width, { size }) * lineScale(written);
}
