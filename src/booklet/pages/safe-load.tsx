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

/** What a deck may carry, fixing to the wall, and the cautions for use. */
export function safeLoad(input: BookletInput): readonly ReactNode[] {
  const { words, glyphs, edition, report: { advice } } = input;
  const fixing = words.t('booklet.fix-to-wall');
  const cautions: readonly Caution[] = ['climbing', 'children', ...(advice.fixToWall ? ['tipping' as const] : []), 'manual'];
  return [(
    <div className="load main" key="load">
      <ChapterHeading input={input} name="load" />
      <Load input={input} />
      {advice.fixToWall && (
        <figure>
          <GlyphMark glyph={glyphs.plain('wall-fix')} label={fixing} height={46} />
          {edition === 'words' && <figcaption>{fixing}</figcaption>}
        </figure>
      )}
      <CautionList input={input} cautions={cautions} />
    </div>
  )];
}

function Load({ input }: { readonly input: BookletInput }): ReactNode {
  const { words, glyphs, edition, report: { advice } } = input;
  const kilograms = advice.safeLoadPerDeck === null ? 0 : loadInKilograms(advice.safeLoadPerDeck);
  const said = kilograms > 0
    ? words.t('booklet.safe-load', { load: words.measure(kilograms, 'kg') })
    : words.t('booklet.no-safe-load');
  const { x, y, width, height } = glyphs.loadNumeral;
  const load = glyphs.plain('load');
  const over = kilograms > 0
    ? `<text x="${x + width / 2}" y="${y + height / 2 - 0.5}" font-size="${numeralSize}" font-weight="700" text-anchor="middle">${words.number(kilograms)}</text>`
      + `<text x="${x + width / 2}" y="${y + height - 1}" font-size="${numeralSize * 0.7}" font-weight="700" text-anchor="middle">kg</text>`
    : glyphs.plain('wrong').svg;
  return (
    <figure>
      <GlyphMark glyph={{ ...load, svg: load.svg + over }} label={said} height={46} />
      {edition === 'words' && <figcaption><Spoken text={said} /></figcaption>}
    </figure>
  );
}
