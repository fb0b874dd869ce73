import type { ReactNode } from 'react';
import type { Band } from './bands.ts';
import { GlyphMark } from './glyph-mark.tsx';
import { Said } from './tongues.tsx';
import type { BookletInput } from './types.ts';

interface TurnBandProps {
  readonly input: BookletInput;
  readonly band: Extract<Band, { kind: 'turn' }>;
}

/** Announces that another side of the work is shown from here on. */
export function TurnBand({ input, band }: TurnBandProps): ReactNode {
  const { words, edition, glyphs } = input;
  const said = words.t('booklet.walk-round');
  return (
    <div className={band.times > 1 ? 'band repeated turn' : 'band turn'} style={{ height: `${band.height}mm` }}>
      <div className="announced">
        <GlyphMark glyph={glyphs.plain('turn-round')} label={said} height={14} />
        {edition === 'words' && <p><Said input={input} say={(each) => each.words.t('booklet.walk-round')} how="beside" /></p>}
      </div>
    </div>
  );
}
