import type { ReactNode } from 'react';
import { splitIsolates } from '../words/index.ts';

/** A text of the locale files; its isolates become spans with a direction. */
export function Spoken({ text }: { readonly text: string }): ReactNode {
  return splitIsolates(text).map((piece, index) =>
    piece.dir === null ? piece.text : <span key={index} dir={piece.dir} className="apart">{piece.text}</span>);
}
