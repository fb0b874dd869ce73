import type { ReactNode } from 'react';
import type { Use } from '../../read/index.ts';
import { GlyphMark } from './glyph-mark.tsx';
import { loadsSaid, printedLoads, type PrintedLoads } from './place-loads.ts';
import type { Told } from './told-pair.tsx';
import { toldWidth } from './told.ts';
import type { BookletInput, Glyph, LoadGlyph } from './types.ts';

/** Units of the pictograms' grid: numerals of one or two digits, of more, and the unit under them. */
const numeralSize = 11;
const longNumeralSize = 9.5;
const unitSize = 7.7;
/** Room of the sign ≤ before a numeral. */
const signWidth = 6;
/** The person over each of several seats, as a share of the pictogram. */
const sitter = 0.6;
/** Room of the bracket beside several places and of what they bear together. */
const sumWidth = 40;
/** How many places bear alike: room and size of the numeral. */
const timesWidth = 26;
const timesSize = 15;
/** Height of all decks with their loads, the most of one deck, a seat's or a bed's picture and the person beside it, mm. */
const figureHeight = 112;
const mostDeck = 28;
const oneHeight = 44;

const carriers: Readonly<Record<Use, LoadGlyph>> = { storage: 'load', table: 'load', seat: 'seat-load', bed: 'bed-load' };

/** The load that the checks support: on each deck and on all of them, or on each seat or the one bed. A cross where they support none. */
export function loadTold(input: BookletInput): Told {
  return { name: 'load', say: said, height: figureOf(input).height, width: toldWidth(input), picture: <Load input={input} /> };
}

function Load({ input }: { readonly input: BookletInput }): ReactNode {
  const { words, model: { use }, glyphs } = input;
  const figure = figureOf(input);
  const one = (use === 'seat' || use === 'bed') && figure.printed?.places === 1;
  return (
    <div className="figures">
      {one && <GlyphMark glyph={glyphs.plain(use === 'bed' ? 'one-child' : 'one-person')} label={words.t('booklet.people', { count: 1 })} height={use === 'bed' ? figure.height * 0.6 : figure.height} />}
      <svg className="glyph" role="img" aria-label={said(input)} direction="ltr" width={`${(figure.height * figure.across) / figure.down}mm`} height={`${figure.height}mm`} viewBox={`0 0 ${figure.across} ${figure.down}`}
        dangerouslySetInnerHTML={{ __html: figure.svg }} />
    </div>
  );
}

/** The load of each place without the person beside it, how many bear alike, and what all bear together: as the page on safe use tells it, in a row; `height` in mm. */
export function LoadSign({ input, height }: { readonly input: BookletInput; readonly height: number }): ReactNode {
  const printed = printedOf(input);
  const [levels, places] = printed === null ? [[null], 1] : [printed.levels, printed.places];
  const alike = levels.length === 1 && places > 1;
  const sum = sumBeside(input, printed, 48);
  const signs = levels.map((kilograms, index) => `<g transform="translate(${48 * index} 0)">${withNumeral(input, carriers[input.model.use], kilograms, 'kg')}</g>`);
  const [beside, across] = [48 * levels.length, 48 * levels.length + (alike ? timesWidth : 0)];
  const times = alike ? `<text x="${beside + timesWidth / 2 - 1}" font-weight="700" text-anchor="middle" y="30" font-size="${timesSize}">×${input.words.number(places)}</text>` : '';
  return <GlyphMark glyph={{ width: across + (sum === '' ? 0 : sumWidth), svg: `${signs.join('')}${times}<g transform="translate(${across} 0)">${sum}</g>` }} label={said(input)} height={height} />;
}

const printedOf = ({ report: { advice }, despiteFindings }: BookletInput): PrintedLoads | null => (despiteFindings ? null : printedLoads(advice));

const said = (input: BookletInput): string => loadsSaid(input.words, input.model, printedOf(input));

/** The picture of all places: one over the other, seats side by side, and what they bear together. */
interface Figure {
  readonly printed: PrintedLoads | null;
  readonly svg: string;
  /** Units of the pictograms' grid. */
  readonly across: number;
  readonly down: number;
  /** mm */
  readonly height: number;
}

function figureOf(input: BookletInput): Figure {
  const { use, deckTops } = input.model;
  const printed = printedOf(input);
  const picture = (kilograms: number | null): string => withNumeral(input, carriers[use], kilograms, 'kg');
  if (use === 'seat' || use === 'bed') {
    const [seats, sum] = [printed?.places ?? 1, sumBeside(input, printed, 48)];
    const across = 48 * seats + (sum === '' ? 0 : sumWidth);
    const over = seats > 1 ? 48 * sitter : 0;
    const person = over > 0 ? `<g transform="translate(${24 - over / 2} 0) scale(${sitter})">${input.glyphs.plain('one-person').svg}</g>` : '';
    const svgs = Array.from({ length: seats }, (_, index) => `<g transform="translate(${48 * index} 0)">${person}<g transform="translate(0 ${over})">${picture(printed?.levels[0] ?? null)}</g></g>`);
    return {
      printed, svg: `${svgs.join('')}<g transform="translate(${48 * seats} ${over})">${sum}</g>`, across, down: 48 + over,
      height: Math.min(oneHeight, (toldWidth(input) * (48 + over)) / across),
    };
  }
  const rows = printed === null || printed.rows.length === 0 ? Array.from({ length: Math.max(1, deckTops.length) }, () => ({ kilograms: printed?.levels[0] ?? null, count: 1 })) : printed.rows;
  const most = Math.max(...rows.map(({ count }) => count));
  const [down, sum] = [48 * rows.length, sumBeside(input, printed, 48 * rows.length)];
  const across = 48 * most + (sum === '' ? 0 : sumWidth);
  const svgs = rows.flatMap(({ kilograms, count }, row) => Array.from({ length: count }, (_, place) => `<g transform="translate(${48 * (place + (most - count) / 2)} ${48 * row})">${picture(kilograms)}</g>`));
  return {
    printed, svg: `${svgs.join('')}<g transform="translate(${48 * most} 0)">${sum}</g>`, across, down,
    height: Math.min(mostDeck * rows.length, figureHeight, (toldWidth(input) * down) / across),
  };
}

/** A bracket over so many units downwards and, beside it, what all places bear at once; nothing for one place. */
function sumBeside({ words }: BookletInput, printed: PrintedLoads | null, down: number): string {
  if (printed?.together == null) return '';
  const [middle, foot] = [down / 2, down - 4];
  const text = (size: number, bottom: number, says: string): string => `<text x="24" font-weight="700" text-anchor="middle" y="${bottom}" font-size="${size}">${says}</text>`;
  return `<path d="M2 4H6V${middle}H10M6 ${middle}V${foot}H2" fill="none" stroke="#000" stroke-width="2" stroke-linejoin="round"/>`
    + text(printed.together >= 99.5 ? longNumeralSize : numeralSize, middle, words.number(printed.together)) + text(unitSize, middle + unitSize, 'kg');
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
