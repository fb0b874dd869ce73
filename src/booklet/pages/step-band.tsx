import type { ReactNode } from 'react';
import { rowGap, smallSize, type Band, type Fit } from './bands.ts';
import { caption } from './captions.ts';
import { PlacedPicture } from './placed-picture.tsx';
import { Spoken } from './spoken.tsx';
import { stepAlt } from './step-alt.ts';
import { StepStrip } from './step-strip.tsx';
import type { BookletInput } from './types.ts';

interface StepBandProps {
  readonly input: BookletInput;
  readonly band: Extract<Band, { kind: 'step' }>;
  readonly fit: Fit;
}

/** One step: numeral and new parts in the margin; caption, pictures and the strip of pictograms in the column. */
export function StepBand({ input, band, fit }: StepBandProps): ReactNode {
  const { words, edition } = input;
  const { step, headHeight } = band;
  const height = band.height - (1 - fit.scale) * band.flexible + fit.white;
  const gap = `${rowGap + fit.white / (band.pictures.length + 2)}mm`;
  return (
    <article className={band.run === null ? 'band' : 'band in-run'} style={{ height: `${height}mm` }}>
      <h2 style={{ height: `${headHeight}mm` }}>
        <span className="numeral"><Spoken text={words.number(step.number)} /></span>{' '}
        {edition === 'words' && <span className="caption"><Spoken text={caption(words, step)} /></span>}
      </h2>
      <NewParts input={input} band={band} />
      <div className="work" style={{ gap, paddingTop: gap }}>
        {band.pictures.map((id) => <PlacedPicture key={id} input={input} id={id} alt={stepAlt(words, step)} scale={fit.scale} />)}
        <StepStrip input={input} step={step} />
      </div>
    </article>
  );
}

function NewParts({ input, band: { step, headHeight } }: Omit<StepBandProps, 'fit'>): ReactNode {
  const { words } = input;
  return (
    <ul className="new-parts" style={{ marginTop: `-${headHeight}mm` }}>
      {step.newParts.map(({ kind, ids }) => (
        <li key={kind} style={{ minHeight: `${smallSize(input, kind).height}mm` }}>
          <PlacedPicture input={input} id={`small:${kind}`} alt={words.t(`parts.${kind}.counted`, { count: ids.length })} />
          <b><Spoken text={words.times(ids.length)} /></b>
        </li>
      ))}
    </ul>
  );
}
