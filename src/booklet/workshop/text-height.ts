import { linesOf } from '../pages/sheet.ts';
import { wrappedLines } from '../pages/wrapped-lines.ts';
import type { Words } from '../words/index.ts';

/** Lines that a text takes in `width` mm at `size` pt. Letters' widths are known for Latin; other scripts are reckoned on the safe side. */
export function linesIn({ about }: Words, lang: string, text: string, width: number, size: number): number {
  const plain = text.replace(/[\u2066-\u2069]/g, '');
  return new Intl.Locale(lang).maximize().script === 'Latn' ? wrappedLines(plain, width, size) : linesOf(plain, width, size * about.textScale);
}
