import type { ReactNode } from 'react';
import { fittedHeight, pictureScale, rowGap, type Band, type Fit } from './bands.ts';
import { caption } from './captions.ts';
import { PlacedPicture } from './placed-picture.tsx';
import { Spoken } from './spoken.tsx';
import { stepAlt } from './step-alt.ts';
import { StepMargin } from './step-margin.tsx';
import { Said } from './tongues.tsx';
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
  const height = fittedHeight(band, fit) + fit.white;
  const gap = `${rowGap + fit.white / (band.pictures.length + 2)}mm`;
  return (
    <article className={band.run === null ? 'band' : 'band in-run'} style={{ height: `${height}mm` }}>
      <h2 style={{ height: `${headHeight}mm` }}>
        <span className="numeral"><Spoken text={words.number(step.number)} /></span>{' '}
        {edition === 'words' && <span className="caption"><Said input={input} say={(each) => caption(each, step)} how="beside" /></span>}
      </h2>
      <StepMargin input={input} step={step} headHeight={headHeight} />
      <div className="work" style={{ gap, paddingTop: gap }}>
        {band.pictures.map((id) => <PlacedPicture key={id} input={input} id={id} alt={stepAlt(input, step)} scale={pictureScale(input, id, fit)} />)}
        <StepStrip input={input} step={step} />
      </div>
    </article>
  );
}
