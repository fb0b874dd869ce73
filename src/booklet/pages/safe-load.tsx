import type { ReactNode } from 'react';
import type { Caution } from '../../plan/index.ts';
import { CautionList } from './caution-list.tsx';
import { ChapterHeading } from './chapter.tsx';
import { GlyphMark } from './glyph-mark.tsx';
import { loadInKilograms } from './load-in-kilograms.ts';
import { Spoken } from './spoken.tsx';
import type { BookletInput } from './types.ts';

/** Units of the pictograms' grid. */
const numeralSize = 11;
/** Height of all decks with their loads, the most of one deck, and the wall fixing's picture, mm. */
const figureHeight = 112;
const mostDeck = 28;
const wallHeight = 72;

/** What each deck may carry, fixing to the wall, and the cautions for use. */
export function safeLoad(input: BookletInput): readonly ReactNode[] {
  const { words, glyphs, edition, report: { advice } } = input;
  const fixing = words.t('booklet.fix-to-wall');
  const cautions: readonly Caution[] = ['climbing', 'children', ...(advice.fixToWall ? ['tipping' as const] : []), 'manual'];
  return [(
    <div className="load main" key="load">
      <ChapterHeading input={input} name="load" />
      <div className="safe">
        <Load input={input} />
        {advice.fixToWall && (
          <div className="told">
            <GlyphMark glyph={glyphs.plain('wall-fix')} label={fixing} height={wallHeight} />
            {edition === 'words' && <p>{fixing}</p>}
          </div>
        )}
      </div>
      <CautionList input={input} cautions={cautions} />
    </div>
  )];
}

/** One deck with its load over the other, as many as the item has. */
function Load({ input }: { readonly input: BookletInput }): ReactNode {
  const { words, edition, model, report: { advice } } = input;
  const kilograms = advice.safeLoadPerDeck === null ? 0 : loadInKilograms(advice.safeLoadPerDeck);
  const said = kilograms > 0
    ? words.t('booklet.safe-load', { load: words.measure(kilograms, 'kg') })
    : words.t('booklet.no-safe-load');
  const decks = Math.max(1, model.deckTops.length);
  const deck = Math.min(mostDeck, figureHeight / decks);
  return (
    <div className="told">
      <svg className="glyph" role="img" aria-label={said} direction="ltr" width={`${deck}mm`} height={`${deck * decks}mm`} viewBox={`0 0 48 ${48 * decks}`}
        dangerouslySetInnerHTML={{ __html: stacked(loadedDeck(input, kilograms), decks) }} />
      {edition === 'words' && <p><Spoken text={said} /></p>}
    </div>
  );
}

/** A deck with its load in figures, or with a cross over it. */
function loadedDeck({ words, glyphs }: BookletInput, kilograms: number): string {
  const { x, y, width, height } = glyphs.loadNumeral;
  const middle = `x="${x + width / 2}" font-weight="700" text-anchor="middle"`;
  const over = kilograms > 0
    ? `<text ${middle} y="${y + height / 2 - 0.5}" font-size="${numeralSize}">${words.number(kilograms)}</text>`
      + `<text ${middle} y="${y + height - 1}" font-size="${numeralSize * 0.7}">kg</text>`
    : glyphs.plain('wrong').svg;
  return glyphs.plain('load').svg + over;
}

function stacked(svg: string, count: number): string {
  return Array.from({ length: count }, (_, index) => `<g transform="translate(0 ${48 * index})">${svg}</g>`).join('');
}
