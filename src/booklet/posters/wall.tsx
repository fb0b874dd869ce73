import type { CSSProperties, ReactNode } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { pictureId, pictureOf, type PictureOf } from '../../draw/index.ts';
import type { Step } from '../../plan/index.ts';
import { workCautions } from '../pages/before.tsx';
import { picturesOf } from '../pages/bands.ts';
import { CheckPictures } from '../pages/check-pictures.tsx';
import { finishedAlt } from '../pages/cover.tsx';
import { GlyphMark } from '../pages/glyph-mark.tsx';
import { marginParts, type MarginPart } from '../pages/margin-parts.ts';
import { itemAndSize, overall } from '../pages/names.ts';
import { countKey, sizeText } from '../pages/part-sizes.ts';
import { PicturePlace } from '../pages/picture-place.tsx';
import { groupWidths } from '../pages/strip.ts';
import { Wait } from '../pages/wait.tsx';
import { SizeMark } from '../pages/size-mark.tsx';
import { Spoken } from '../pages/spoken.tsx';
import { stepAlt } from '../pages/step-alt.ts';
import type { BookletPages } from '../pages/types.ts';
import { isolate } from '../words/index.ts';
import { PosterFoot } from './foot.tsx';
import { posterMargin, posterSheets, type PosterPaper } from './sheet.ts';
import { wallStyle } from './style.ts';
import type { PosterInput } from './types.ts';
import { groupGap, innerGap, turned, wall, wallPage, type WallPage } from './wall-layout.ts';

/**
 * The wall edition, free of words: one step a page, its picture as large as the page allows, lying or upright as fits.
 * The first page has the finished item with the safety signs. Takes the pictures drawn for small pages, whose texts are
 * large against their drawings.
 */
export function wallPages(input: PosterInput, paper: PosterPaper): BookletPages {
  const pages = [<Finished key="finished" input={input} paper={paper} />, ...input.plan.steps.map((step) => <StepPage key={step.number} input={input} paper={paper} step={step} />)];
  return {
    html: pages.map((page) => renderToStaticMarkup(page)).join('\n'),
    css: wallStyle(paper),
    title: itemAndSize(input),
    dir: input.words.about.direction,
    pageCount: pages.length,
  };
}

interface SheetProps {
  readonly paper: PosterPaper;
  readonly turn: WallPage['turn'];
  readonly page: number;
  readonly children: ReactNode;
}

function Sheet({ paper, turn, page, children }: SheetProps): ReactNode {
  const { width, height } = turned(paper, turn);
  return <section className={`page ${turn}`} style={{ width: `${width}mm`, height: `${height}mm` }}><div className="sheet" data-page={page}>{children}</div></section>;
}

interface PageProps {
  readonly input: PosterInput;
  readonly paper: PosterPaper;
}

function Finished({ input, paper }: PageProps): ReactNode {
  const { glyphs, words, pictures } = input;
  const { scale: large } = posterSheets[paper];
  const picture = pictureOf(pictures, { what: 'finished' }, 'poster');
  const { turn, scale } = wallPage([picture], paper);
  const cautions = workCautions(input.plan);
  const height = large * signHeight(cautions.length, turned(paper, turn).width / large);
  return (
    <Sheet paper={paper} turn={turn} page={1}>
      <div className="head">
        <h1 className="mark"><SizeMark input={input} isAlone height={wall.numeral * large} label={itemAndSize(input)} /></h1>
        <p className="overall"><Spoken text={overall(input)} /></p>
        <p className="print"><Spoken text={isolate(`${words.number(input.revision)} · ${input.contentMark}`)} /></p>
      </div>
      <div className="view"><Picture input={input} of={{ what: 'finished' }} alt={finishedAlt(input)} scale={scale} /></div>
      <ul className="strip">
        <li className="cautions">
          {cautions.map((caution) => <GlyphMark key={caution} glyph={glyphs.caution(caution)} label={words.t(`cautions.${caution}.sign`)} height={height} />)}
        </li>
        <PosterFoot input={input} scale={large} />
      </ul>
    </Sheet>
  );
}

function StepPage({ input, paper, step }: PageProps & { readonly step: Step }): ReactNode {
  const { words, pictures } = input;
  const shown = picturesOf(input, step);
  const { turn, scale, beside } = wallPage(shown.map((of) => pictureOf(pictures, of, 'poster')), paper);
  const { width } = turned(paper, turn);
  return (
    <Sheet paper={paper} turn={turn} page={step.number + 1}>
      <div className="head">
        <h1 className="numeral"><Spoken text={words.number(step.number)} /></h1>
        <Parts input={input} paper={paper} step={step} />
      </div>
      <div className={beside ? 'view beside' : 'view'}>
        {shown.map((of) => <Picture key={pictureId(of)} input={input} of={of} alt={stepAlt(input, step)} scale={scale} />)}
      </div>
      <Strip input={input} paper={paper} step={step} width={width} />
    </Sheet>
  );
}

interface PictureProps {
  readonly input: PosterInput;
  readonly of: PictureOf;
  readonly alt: string;
  readonly scale: number;
}

/** The place of a picture at a size against its own. */
export function Picture({ input, of, alt, scale }: PictureProps): ReactNode {
  const own = pictureOf(input.pictures, of, 'poster');
  const [width, height] = [own.width, own.height].map((side) => Math.floor(side * scale * 1000) / 1000) as [number, number];
  return <PicturePlace place={input.placePicture} of={of} size={{ width, height }} alt={alt} />;
}

/** Size of a part's small picture against its own, on A4. */
const partScale = 1.2;

function Parts({ input, paper, step }: PageProps & { readonly step: Step }): ReactNode {
  const { words, glyphs } = input;
  const { scale } = posterSheets[paper];
  return (
    <ul className="parts">
      {step.times > 1 && (
        <li className="times">
          <GlyphMark glyph={glyphs.plain('again')} label={words.t('booklet.alt.times', { count: step.times })} height={16 * scale} />
          <b><Spoken text={words.times(step.times)} /></b>
        </li>
      )}
      {marginParts(input, step).map((part) => <PartOfStep key={pictureId(part.picture)} input={input} part={part} scale={partScale * scale} />)}
    </ul>
  );
}

function PartOfStep({ input, part: { said, picture, counts }, scale }: { readonly input: PosterInput; readonly part: MarginPart; readonly scale: number }): ReactNode {
  const { words } = input;
  return (
    <li>
      <Picture input={input} of={picture} alt={said(words)} scale={scale} />
      {counts.map((each) => {
        const length = sizeText(words, each);
        return (
          <span key={countKey(each)} className="counted">
            <b><Spoken text={words.times(each.count)} /></b>
            {length !== null && <span><Spoken text={length} /></span>}
          </span>
        );
      })}
    </li>
  );
}

/** Action, tools, people, cautions; at the far end what to look at: as high as the page's width allows. */
function Strip({ input, paper, step, width }: PageProps & { readonly step: Step; readonly width: number }): ReactNode {
  const { words, glyphs } = input;
  const { scale } = posterSheets[paper];
  const height = scale * stripHeight(step, width / scale);
  return (
    <ul className="strip" style={{ '--glyph': `${height}mm` } as CSSProperties}>
      <li className="action"><GlyphMark glyph={glyphs.action(step.action)} label={words.t(`actions.names.${step.action}`)} height={height} /></li>
      <li className="tools">{step.tools.map((tool) => <GlyphMark key={tool} glyph={glyphs.tool(tool)} label={words.t(`booklet.tools.${tool}`)} height={height} />)}</li>
      <li className="people"><GlyphMark glyph={glyphs.plain(step.people === 2 ? 'two-people' : 'one-person')} label={words.t('booklet.people', { count: step.people })} height={height} /></li>
      {step.cautions.length > 0 && <li className="cautions">{step.cautions.map((caution) => <GlyphMark key={caution} glyph={glyphs.caution(caution)} label={words.t(`cautions.${caution}.sign`)} height={height} />)}</li>}
      <Wait input={input} step={step} height={height} />
      {step.check && <li className="check"><CheckPictures input={input} check={step.check} height={height} /></li>}
      <PosterFoot input={input} scale={scale} />
    </ul>
  );
}

/** The highest pictograms with which a strip fits a page `width` mm wide on A4's scale. Throws where not even the least do. */
function stripHeight(step: Step, width: number): number {
  return highest(`the pictograms of step ${step.number} (${step.key})`, width, (height) => groupWidths(step, height, innerGap).filter((each) => each > 0));
}

/** The highest signs of which so many stand on a page `width` mm wide on A4's scale. Throws where not even the least do. */
function signHeight(count: number, width: number): number {
  return highest(`${count} signs`, width, (height) => [count * (height + innerGap)]);
}

/** The highest pictograms with which groups, as wide as told at each height, fit a strip. */
function highest(what: string, width: number, groupsAt: (height: number) => readonly number[]): number {
  const found = wall.stripHeights.find((height) => {
    const groups = groupsAt(height);
    return groups.reduce((sum, each) => sum + each, 0) + groupGap * groups.length <= width - 2 * posterMargin - wallFoot;
  });
  if (found === undefined) throw new Error(`poster: ${what} are more than a strip of ${width} mm holds`);
  return found;
}

/** Room at the far end of the strip for the size's mark, mm on A4. */
const wallFoot = 14;
