import type { ReactNode } from 'react';
import type { Model } from '../../model/index.ts';
import { sizeName } from './names.ts';
import { textWidth } from './setting.ts';
import { sheets, textSize } from './sheet.ts';
import { SizeMark } from './size-mark.tsx';
import { Said, inEach, inSeveral, saidHeight } from './in-languages.tsx';
import type { BookletInput } from './types.ts';

/** Marks beside the names, white between mark and name, columns and rows, and over all of them, mm. */
const markHeight = 6;
const markWidth = 14;
export const sizeGap = 2;
export const sizeColumnGap = 4;
export const sizeRow = 8;
export const sizesPad = 6;

/** Whether every size's name fits over a column of `width` mm, its longest word on one line. */
export function sizeNamesFit(input: BookletInput, width: number): boolean {
  return inEach(input).every((each) => input.variants.every((variant) =>
    sizeName(each, variant).split(' ').every((word) => textWidth(each.words, word, { size: textSize, bold: true }) <= width)));
}

function inRow(input: BookletInput): number {
  if (inSeveral(input)) return 1;
  return sheets[input.paper].narrow ? 2 : 3;
}

/** Height of the list of sizes with the white over it, mm. */
export function sizeNamesHeight(input: BookletInput): number {
  const wide = inRow(input);
  const width = (sheets[input.paper].main - sizeColumnGap * (wide - 1)) / wide - markWidth - sizeGap;
  const height = (variant: Model): number => Math.max(sizeRow, saidHeight(input, (each) => sizeName(each, variant), width, { size: textSize, bold: true, how: 'beside' }));
  const rows = Array.from({ length: Math.ceil(input.variants.length / wide) }, (_, index) => input.variants.slice(wide * index, wide * (index + 1)));
  return sizesPad + rows.reduce((sum, row) => sum + Math.max(...row.map(height)), 0);
}

/** The sizes' marks, each with its name; this booklet's own in bold. */
export function SizeNames({ input }: { readonly input: BookletInput }): ReactNode {
  return (
    <ul className={inSeveral(input) ? 'size-names several main' : 'size-names main'}>
      {input.variants.map((variant) => {
        const Weight = variant.size === input.model.size ? 'b' : 'span';
        return (
          <li key={variant.size}>
            <SizeMark input={input} size={variant} isAlone height={markHeight} />
            <Weight><Said input={input} say={(each) => sizeName(each, variant)} how="beside" /></Weight>
          </li>
        );
      })}
    </ul>
  );
}
