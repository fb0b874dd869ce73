import type { ReactNode } from 'react';

const raised = '⁰¹²³⁴⁵⁶⁷⁸⁹';
/** Raised digits that the fonts have as letters of their own (Latin-1). */
const inFont = '¹²³';

/** A source or formula in which raised digits that the fonts lack are raised by the style. */
export function Formula({ text }: { readonly text: string }): ReactNode {
  return text.split(new RegExp(`([${raised}])`)).map((piece, index) =>
    piece.length === 1 && raised.includes(piece) && !inFont.includes(piece) ? <sup key={index}>{raised.indexOf(piece)}</sup> : piece);
}
