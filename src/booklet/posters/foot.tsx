import type { ReactNode } from 'react';
import { GlyphMark } from '../pages/glyph-mark.tsx';
import { SizeMark } from '../pages/size-mark.tsx';
import type { PosterInput } from './types.ts';

/** In a page's last corner: which size it is of; over it the sign that a check failed, where the poster is printed all the same. */
export function PosterFoot({ input, scale }: { readonly input: PosterInput; readonly scale: number }): ReactNode {
  const { glyphs, words, despiteFindings = false } = input;
  return (
    <li className="poster-foot">
      {despiteFindings && <GlyphMark glyph={glyphs.plain('unproved')} label={words.t('booklet.despite-findings')} height={9 * scale} />}
      <SizeMark input={input} isAlone height={6 * scale} />
    </li>
  );
}
