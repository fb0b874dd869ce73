import type { ReactNode } from 'react';
import { pictureId } from '../../draw/index.ts';
import type { Step } from '../../plan/index.ts';
import { roundHeight, smallSize, timesHeight } from './bands.ts';
import { GlyphMark } from './glyph-mark.tsx';
import { marginParts, type MarginPart } from './margin-parts.ts';
import { countKey, sizeLines, sizeText, type SizedCount } from './part-sizes.ts';
import { narrowPartWidth } from './narrow-head.ts';
import { oneAtATime, toldSpan } from './one-at-a-time.ts';
import { PlacedPicture } from './placed-picture.tsx';
import { roundGlyph, roundOf } from './round.ts';
import { sheets } from './sheet.ts';
import { Spoken } from './spoken.tsx';
import { isolate } from '../words/index.ts';
import { WORK } from '../../work/facts.ts';
import type { BookletInput } from './types.ts';

interface StepMarginProps {
  readonly input: BookletInput;
  readonly step: Step;
  /** Height of the step's caption, which the margin stands beside, mm. */
  readonly headHeight: number;
  /** On a narrow page, the height of the parts under the caption, mm. */
  readonly partsHeight: number;
}

/** Under a step's numeral, or on a narrow page beside it: how often it is done, and its parts. */
export function StepMargin({ input, step, headHeight, partsHeight }: StepMarginProps): ReactNode {
  const { narrow } = sheets[input.paper];
  return (
    <ul className="new-parts" style={narrow ? { height: `${partsHeight}mm` } : { marginTop: `-${headHeight}mm` }}>
      <RoundOf input={input} step={step} />
      {step.times > 1 && !isTimesBeside(input, step) && <li className="times"><Times input={input} step={step} /></li>}
      <Span input={input} step={step} />
      {marginParts(input, step).map((part) => <PartOfStep key={pictureId(part.picture)} input={input} part={part} />)}
    </ul>
  );
}

/** Which side is folded, and the how-manieth. */
function RoundOf({ input: { words, plan }, step }: { readonly input: BookletInput; readonly step: Step }): ReactNode {
  const round = roundOf(plan, step);
  if (round === null) return null;
  return (
    <li className="round">
      <GlyphMark glyph={roundGlyph(round.side, words.number(round.number))} label={`${words.t(`actions.sides.${round.side}`)} ${isolate(`${words.number(round.number)}/${words.number(round.of)}`)}`} height={roundHeight - 1} />
    </li>
  );
}

/** Whether the sign for once more stands beside the first picture after the trial, since what is tried first on waste is done but once. On a narrow page there is no margin for it. */
export const isTimesBeside = ({ paper }: Pick<BookletInput, 'paper'>, { action, times }: Step): boolean => times > 1 && WORK[action].triedIn !== undefined && !sheets[paper].narrow;

/** The sign for once more, and how often it is done. */
export function Times({ input: { words, glyphs }, step }: { readonly input: BookletInput; readonly step: Step }): ReactNode {
  return (
    <>
      <GlyphMark glyph={glyphs.plain('again')} label={words.t('booklet.alt.times', { count: step.times })} height={timesHeight - 1} />
      <Spoken text={words.times(step.times)} />
    </>
  );
}

/** The steps that one of several pieces is taken through before the next is begun. */
function Span({ input: { words, plan }, step }: { readonly input: BookletInput; readonly step: Step }): ReactNode {
  const span = oneAtATime(plan, step);
  return span !== null && <li className="times"><Spoken text={isolate(toldSpan(words, span))} /></li>;
}

function PartOfStep({ input, part }: { readonly input: BookletInput; readonly part: MarginPart }): ReactNode {
  const { said, picture, counts } = part;
  const { narrow } = sheets[input.paper];
  return (
    <li style={{ minHeight: `${smallSize(input, picture).height}mm`, ...(narrow ? { width: `${narrowPartWidth(input, part)}mm` } : {}) }}>
      <PlacedPicture input={input} of={picture} alt={said(input.words)} />
      {counts.map((each) => <CountAndLength key={countKey(each)} input={input} counted={each} />)}
    </li>
  );
}

/** Tubes of different lengths look alike with their breaks, and so do flat panels: the size is told. */
function CountAndLength({ input: { words, paper }, counted }: { readonly input: BookletInput; readonly counted: SizedCount }): ReactNode {
  const { count, letter } = counted;
  const { narrow } = sheets[paper];
  const told = narrow ? [sizeText(words, counted) ?? []].flat() : sizeLines(words, counted);
  return (
    <>
      <b><Spoken text={words.times(count)} /></b>
      {told.map((line) => <span key={line} className="length">{letter !== undefined && !narrow && <><b><Spoken text={isolate(letter)} /></b> </>}<Spoken text={line} /></span>)}
    </>
  );
}
