import type { ReactNode } from 'react';
import { CheckPictures } from './check-pictures.tsx';
import { signForWhom } from './for-whom.ts';
import { GlyphMark } from './glyph-mark.tsx';
import { LoadSign } from './load-figures.tsx';
import { useCautions } from './safe-load.tsx';
import type { BookletInput } from './types.ts';

interface CarriesProps {
  readonly input: BookletInput;
  /** mm */
  readonly height: number;
}

/** What the item may carry, for whom it is and for whom not, and that it is no seat where a top could be taken for one, as signs: the page on safe use says it in words. */
export function Carries({ input, height }: CarriesProps): ReactNode {
  const { glyphs, words, report: { advice: { people } } } = input;
  const sign = signForWhom(people);
  return (
    <div className="carries" style={{ height: `${height}mm` }}>
      <LoadSign input={input} height={height} />
      {sign === null
        ? <CheckPictures input={input} check={{ kind: 'pair', name: 'bed-child' }} height={height} />
        : <GlyphMark glyph={glyphs.plain(sign)} label={words.t(`booklet.${sign}`)} height={height} />}
      {useCautions(input).cautions.includes('sitting') && <GlyphMark glyph={glyphs.caution('sitting')} label={words.t('cautions.sitting.says')} height={height} />}
    </div>
  );
}
