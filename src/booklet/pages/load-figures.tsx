import type { ReactNode } from 'react';
import type { Model } from '../../model/index.ts';
import type { Use } from '../../read/index.ts';
import { GlyphMark } from './glyph-mark.tsx';
import { loadInKilograms } from './load-in-kilograms.ts';
import type { Told } from './told-pair.tsx';
import { toldWidth } from './told.ts';
import type { BookletInput, Glyph, LoadGlyph } from './types.ts';

/** Units of the pictograms' grid: numerals of one or two digits, of more, and the unit under them. */
const numeralSize = 11;
const longNumeralSize = 9.5;
const unitSize = 7.7;
/** Room of the sign ≤ before a numeral. */
const signWidth = 6;
/** Height of all decks with their loads, the most of one deck, a seat's or a bed's picture and the person beside it, mm. */
const figureHeight = 112;
const mostDeck = 28;
const oneHeight = 44;

const carriers: Readonly<Record<Use, LoadGlyph>> = { storage: 'load', table: 'load', seat: 'seat-load', bed: 'bed-load' };

/** The load that the checks support: on each deck, or on the one seat or bed. A cross where they support none. */
export function loadTold(input: BookletInput): Told {
  const { decks, height } = figureOf(input.model);
  return { name: 'load', say: said, height: height * decks, width: toldWidth(input), picture: <Load input={input} /> };
}

function Load({ input }: { readonly input: BookletInput }): ReactNode {
  const { words, model, glyphs } = input;
  const kilograms = kilogramsOf(input);
  const { one, decks, height } = figureOf(model);
  const svg = withNumeral(input, carriers[model.use], kilograms > 0 ? kilograms : null, 'kg');
  return (
    <div className="figures">
      {one && kilograms > 0 && <GlyphMark glyph={glyphs.plain('one-person')} label={words.t('booklet.people', { count: 1 })} height={model.use === 'bed' ? height * 0.6 : height} />}
      <svg className="glyph" role="img" aria-label={said(input)} direction="ltr" width={`${height}mm`} height={`${height * decks}mm`} viewBox={`0 0 48 ${48 * decks}`}
        dangerouslySetInnerHTML={{ __html: stacked(svg, decks) }} />
    </div>
  );
}

/** The load on one deck, or on the one seat or bed, without the person beside it; `height` in mm. */
export function LoadSign({ input, height }: { readonly input: BookletInput; readonly height: number }): ReactNode {
  const kilograms = kilogramsOf(input);
  return <GlyphMark glyph={{ width: 48, svg: withNumeral(input, carriers[input.model.use], kilograms > 0 ? kilograms : null, 'kg') }} label={said(input)} height={height} />;
}

function kilogramsOf({ report: { advice }, despiteFindings }: BookletInput): number {
  return advice.safeLoadPerDeck === null || despiteFindings ? 0 : loadInKilograms(advice.safeLoadPerDeck);
}

/** Whether there is one seat or bed; else how many decks, each how high on paper, mm. */
function figureOf({ use, deckTops }: Model): { readonly one: boolean; readonly decks: number; readonly height: number } {
  const one = use === 'seat' || use === 'bed';
  const decks = one ? 1 : Math.max(1, deckTops.length);
  return { one, decks, height: one ? oneHeight : Math.min(mostDeck, figureHeight / decks) };
}

function said(input: BookletInput): string {
  const kilograms = kilogramsOf(input);
  return kilograms > 0 ? supported(input, input.words.measure(kilograms, 'kg')) : input.words.t('booklet.no-safe-load');
}

function supported({ words, model }: BookletInput, load: string): string {
  switch (model.use) {
    case 'seat': return words.t('booklet.safe-seat', { load });
    case 'bed': return words.t('booklet.safe-bed', { load });
    default: return words.t('booklet.safe-load', { load, count: model.deckTops.length });
  }
}

/** A pictogram with a numeral and its unit on its empty face, at most where `most` says so, or with a cross over it. */
export function withNumeral({ words, glyphs }: Pick<BookletInput, 'words' | 'glyphs'>, name: LoadGlyph, value: number | null, unit: string, most = false): Glyph['svg'] {
  const { x, y, width, height } = glyphs.loadNumerals[name];
  if (value === null) return glyphs.plain(name).svg + glyphs.plain('wrong').svg;
  const [middle, foot] = [x + width / 2, y + height / 2 - 0.5];
  const text = (size: number, at: number, bottom: number, says: string): string =>
    `<text x="${at}" font-weight="700" text-anchor="middle" y="${bottom}" font-size="${size}">${says}</text>`;
  return glyphs.plain(name).svg
    + (most ? atMost(x, foot) : '')
    + text(most || value >= 99.5 ? longNumeralSize : numeralSize, middle + (most ? signWidth / 2 : 0), foot, words.number(value))
    + text(unitSize, middle, y + height - 1, unit);
}

/** The sign ≤, drawn: the bold face has none. `foot` is the numeral's base line. */
function atMost(x: number, foot: number): string {
  return `<path d="M${x + 5.5} ${foot - 7}L${x + 0.5} ${foot - 4.5}L${x + 5.5} ${foot - 2}M${x + 0.5} ${foot}H${x + 5.5}" fill="none" stroke="#000" stroke-width="1.5" stroke-linejoin="round"/>`;
}

function stacked(svg: string, count: number): string {
  return Array.from({ length: count }, (_, index) => `<g transform="translate(0 ${48 * index})">${svg}</g>`).join('');
}
