import type { ReactNode } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { findPicture, pictureOf, type PictureOf } from '../../draw/index.ts';
import type { Step } from '../../plan/index.ts';
import { workCautions } from '../pages/before.tsx';
import { finishedAlt } from '../pages/cover.tsx';
import { GlyphMark } from '../pages/glyph-mark.tsx';
import { itemAndSize, overall } from '../pages/names.ts';
import { SizeMark } from '../pages/size-mark.tsx';
import { Spoken } from '../pages/spoken.tsx';
import { stepAlt } from '../pages/step-alt.ts';
import type { BookletPages, PictureSize } from '../pages/types.ts';
import { isolate } from '../words/index.ts';
import { overview, overviewGrid, thumbScale, type Grid } from './overview-layout.ts';
import { posterSheets, type PosterPaper } from './sheet.ts';
import { overviewStyle } from './style.ts';
import type { PosterInput } from './types.ts';
import { Picture } from './wall.tsx';

/**
 * The overview, free of words: all steps on one page as numbered thumbnails, in the reading direction of `input.words`,
 * and at last the finished item. Work on the bench is shown by its pictogram.
 */
export function overviewPage(input: PosterInput, paper: PosterPaper): BookletPages {
  const { width, height } = posterSheets[paper];
  const grid = overviewGrid(input.plan.steps.length + 1, paper, thumbSize(input));
  return {
    html: renderToStaticMarkup(
      <section className="page" style={{ width: `${width}mm`, height: `${height}mm` }}>
        <div className="sheet" data-page={1}>
          <Head input={input} />
          <ol className="cells">
            {input.plan.steps.map((step) => <StepCell key={step.number} input={input} grid={grid} step={step} />)}
            <li className="cell">
              <div className="line"><GlyphMark glyph={input.glyphs.plain('right')} label={input.words.t('booklet.compare')} height={overview.glyph} /></div>
              <Picture input={input} of={{ what: 'finished-thumb' }} alt={finishedAlt(input)} scale={thumbScale(grid, thumbSize(input))} />
            </li>
          </ol>
        </div>
      </section>,
    ),
    css: overviewStyle(paper, grid),
    title: itemAndSize(input),
    dir: input.words.about.direction,
    pageCount: 1,
  };
}

/** All thumbnails are of one size. */
const thumbSize = ({ pictures }: PosterInput): PictureSize => pictureOf(pictures, { what: 'finished-thumb' }, 'poster');

function Head({ input }: { readonly input: PosterInput }): ReactNode {
  const { words, glyphs, despiteFindings = false } = input;
  return (
    <div className="head">
      <h1><SizeMark input={input} isAlone height={12} label={itemAndSize(input)} /></h1>
      <p className="overall"><Spoken text={overall(input)} /></p>
      <div className="signs">
        {workCautions(input.plan).map((caution) => <GlyphMark key={caution} glyph={glyphs.caution(caution)} label={words.t(`cautions.${caution}.sign`)} height={overview.glyph} />)}
      </div>
      {despiteFindings && <GlyphMark glyph={glyphs.plain('unproved')} label={words.t('booklet.despite-findings')} height={10} />}
      <p className="print"><Spoken text={isolate(`${words.number(input.revision)} · ${input.contentMark}`)} /></p>
    </div>
  );
}

/** A step: numeral, repetitions and action over its thumbnail; on the bench the action is the thumbnail. */
function StepCell({ input, grid, step }: { readonly input: PosterInput; readonly grid: Grid; readonly step: Step }): ReactNode {
  const { words, glyphs, pictures } = input;
  const of: PictureOf = { what: 'step-thumb', step: step.number };
  const onBench = findPicture(pictures, of) === undefined;
  const action = (height: number): ReactNode => <GlyphMark glyph={glyphs.action(step.action)} label={onBench ? stepAlt(input, step) : words.t(`actions.names.${step.action}`)} height={height} />;
  return (
    <li className={step.run === null ? 'cell' : 'cell in-run'}>
      <div className="line">
        <b className="numeral"><Spoken text={words.number(step.number)} /></b>
        {step.times > 1 && <span className="times"><Spoken text={words.times(step.times)} /></span>}
        {!onBench && action(overview.glyph)}
      </div>
      {onBench
        ? action(Math.floor(Math.min(grid.cell.height - overview.line, grid.cell.width) * overview.bench * 10) / 10)
        : <Picture input={input} of={of} alt={stepAlt(input, step)} scale={thumbScale(grid, thumbSize(input))} />}
    </li>
  );
}
