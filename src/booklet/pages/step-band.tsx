import type { ReactNode } from 'react';
import { pictureId } from '../../draw/index.ts';
import { fittedHeight, pictureScale, rowGap, type Band, type Fit } from './bands.ts';
import { caption } from './captions.ts';
import { PlacedPicture } from './placed-picture.tsx';
import { Spoken } from './spoken.tsx';
import { stepAlt } from './step-alt.ts';
import { isTimesBeside, StepMargin, Times } from './step-margin.tsx';
import { Said } from './in-languages.tsx';
import { StepStrip } from './step-strip.tsx';
import { WORK } from '../../work/facts.ts';
import type { BookletInput } from './types.ts';

interface StepBandProps {
  readonly input: BookletInput;
  readonly band: Extract<Band, { kind: 'step' }>;
  readonly fit: Fit;
}

/** One step: numeral and new parts in the margin; caption, pictures and the strip of pictograms in the column. Of a step of several pages the first and the last have the strip: nobody begins without seeing what to take and to wear. */
export function StepBand({ input, band, fit }: StepBandProps): ReactNode {
  const { words, edition } = input;
  const { step, headHeight, partsHeight, goesOn, comes } = band;
  const height = fittedHeight(band, fit) + fit.white;
  const Head = comes ? 'div' : 'h2';
  const isBeside = isTimesBeside(input, step);
  const gap = `${rowGap + fit.white / (band.pictures.length + 2)}mm`;
  return (
    <article className={step.times > 1 && !isBeside ? 'band repeated' : 'band'} style={{ height: `${height}mm` }}>
      <Head style={{ height: `${headHeight}mm` }}>
        <span className="numeral"><Spoken text={words.number(step.number)} /></span>{' '}
        {edition === 'words' && !comes && <span className="caption"><Said input={input} say={(each) => caption(each, step)} how="beside" /></span>}
      </Head>
      {comes ? <div style={{ height: `${partsHeight}mm` }} /> : <StepMargin input={input} step={step} headHeight={headHeight} partsHeight={partsHeight} />}
      {band.pictures.length > 0 && <div className="work" style={{ gap, paddingTop: gap }}>
        {band.pictures.map((of) => {
          const picture = <PlacedPicture key={pictureId(of)} input={input} of={of} alt={stepAlt(input, step)} scale={pictureScale(input, of, fit)} />;
          return isBeside && of.what === 'step' && of.piece === WORK[step.action].triedIn ? <div key={pictureId(of)} className="on-each"><p className="times"><Times input={input} step={step} /></p>{picture}</div> : picture;
        })}
        {(!comes || !goesOn) && <StepStrip input={input} step={step} isEnd={!goesOn} />}
      </div>}
    </article>
  );
}
