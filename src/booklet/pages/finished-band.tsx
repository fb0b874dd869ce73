import type { ReactNode } from 'react';
import { fittedHeight, finishedScale, pictureScale, readyPicture, type Band, type Fit } from './bands.ts';
import { finishedAlt } from './cover.tsx';
import { GlyphMark } from './glyph-mark.tsx';
import { PlacedPicture } from './placed-picture.tsx';
import { Said } from './in-languages.tsx';
import type { BookletInput } from './types.ts';

interface FinishedBandProps {
  readonly input: BookletInput;
  readonly band: Extract<Band, { kind: 'finished' }>;
  readonly fit: Fit;
}

/** After the last step: what the work should look like now. */
export function FinishedBand({ input, band, fit }: FinishedBandProps): ReactNode {
  const { words, edition, glyphs } = input;
  const of = readyPicture(input);
  const said = words.t('booklet.compare');
  return (
    <div className="band finished" style={{ height: `${fittedHeight(band, fit)}mm` }}>
      <GlyphMark glyph={glyphs.plain('right')} label={said} height={16} />
      <div className="announced">
        <PlacedPicture input={input} of={of} alt={finishedAlt(input)} scale={finishedScale * pictureScale(input, of, fit, finishedScale)} />
        {edition === 'words' && <p><Said input={input} say={(each) => each.words.t('booklet.compare')} how="beside" /></p>}
      </div>
    </div>
  );
}
