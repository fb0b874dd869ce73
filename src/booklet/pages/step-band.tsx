import type { ReactNode } from 'react';
import type { Step } from '../../plan/index.ts';
import { rowGap, smallSize, timesHeight, toldLength, type Band, type Fit } from './bands.ts';
import { caption } from './captions.ts';
import { GlyphMark } from './glyph-mark.tsx';
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
        {edition === 'words' && <span className="caption"><Spoken text={caption(input, step)} /></span>}
      </h2>
      <NewParts input={input} band={band} />
      <div className="work" style={{ gap, paddingTop: gap }}>
        {band.pictures.map((id) => <PlacedPicture key={id} input={input} id={id} alt={stepAlt(input, step)} scale={fit.scale} />)}
        <StepStrip input={input} step={step} />
      </div>
    </article>
  );
}

/** What is made several times: a flat panel, a bare frame, or a deck. */
function repeatedGlyph({ groups }: BookletInput['model'], { run, action }: Step): 'plate' | 'frame' | 'deck' {
  if (action === 'cut-panel') return 'plate';
  return groups.find((group) => group.piece === run)?.kind === 'frame' ? 'frame' : 'deck';
}

/** Tubes of different lengths look alike with their breaks: the length is told, and that of a cable. */
function NewPartLength({ input: { model, words }, id }: { readonly input: BookletInput; readonly id: string }): ReactNode {
  const length = toldLength(model, id);
  return length === null ? null : <span className="length"><Spoken text={words.measure(Math.round(length), 'mm')} /></span>;
}

function NewParts({ input, band: { step, headHeight } }: Omit<StepBandProps, 'fit'>): ReactNode {
  const { words, glyphs } = input;
  return (
    <ul className="new-parts" style={{ marginTop: `-${headHeight}mm` }}>
      {step.times > 1 && (
        <li className="times">
          <GlyphMark glyph={glyphs.plain(repeatedGlyph(input.model, step))} label={words.t('booklet.alt.times', { count: step.times })} height={timesHeight} />
          <Spoken text={words.times(step.times)} />
        </li>
      )}
      {step.newParts.map(({ kind, ids }) => (
        <li key={kind} style={{ minHeight: `${smallSize(input, kind).height}mm` }}>
          <PlacedPicture input={input} id={`small:${kind}`} alt={words.t(`parts.${kind}.counted`, { count: ids.length })} />
          <b><Spoken text={words.times(ids.length)} /></b>
          <NewPartLength input={input} id={ids[0] ?? ''} />
        </li>
      ))}
    </ul>
  );
}
