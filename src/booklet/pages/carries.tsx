import type { ReactNode } from 'react';
import { CheckPictures } from './check-pictures.tsx';
import { signForWhom } from './for-whom.ts';
import { GlyphMark } from './glyph-mark.tsx';
import { LoadSign } from './load-figures.tsx';
import type { BookletInput } from './types.ts';

interface CarriesProps {
  readonly input: BookletInput;
  /** mm */
  readonly height: number;
}

/** What the item may carry, and for whom it is and for whom not, as signs: the page on safe use says it in words. */
export function Carries({ input, height }: CarriesProps): ReactNode {
  const { glyphs, words, report: { advice: { people } } } = input;
  const sign = signForWhom(people);
  return (
    <div className="carries" style={{ height: `${height}mm` }}>
      <LoadSign input={input} height={height} />
      {sign === null
        ? <CheckPictures input={input} check={{ kind: 'pair', name: 'bed-child' }} height={height} />
        : <GlyphMark glyph={glyphs.plain(sign)} label={words.t(`booklet.${sign}`)} height={height} />}
    </div>
  );
}
