import type { ReactNode } from 'react';
import { fittedHeight, type Band, type Fit } from './bands.ts';
import { PlacedPicture } from './placed-picture.tsx';
import { Spoken } from './spoken.tsx';
import { Said } from './in-languages.tsx';
import type { BookletInput } from './types.ts';

interface RunBandProps {
  readonly input: BookletInput;
  readonly band: Extract<Band, { kind: 'run' }>;
  readonly fit: Fit;
}

/** Announces what the steps along the line make, and how many of it when there are several alike. */
export function RunBand({ input, band, fit }: RunBandProps): ReactNode {
  const { words, edition } = input;
  const said = words.t('booklet.run', { count: band.times });
  return (
    <div className={band.times > 1 ? 'band repeated run' : 'band run'} style={{ height: `${fittedHeight(band, fit)}mm` }}>
      <span className="repeat">{band.times > 1 && <Spoken text={words.times(band.times)} />}</span>
      <div className="announced">
        {band.picture !== null && <PlacedPicture input={input} of={band.picture.of} alt={said} scale={band.picture.scale * Math.min(1, fit.scale)} />}
        {edition === 'words' && <p><Said input={input} say={(each) => each.words.t('booklet.run', { count: band.times })} how="beside" /></p>}
      </div>
    </div>
  );
}
