import type { CSSProperties, ReactNode } from 'react';
import type { Model, NamedLength } from '../../model/index.ts';
import type { Use } from '../../read/index.ts';
import { isolate, type Words } from '../words/index.ts';
import { leastScale } from './break-pages.ts';
import { pageRoom } from './foot.tsx';
import { ChapterHeading, headingHeight } from './chapter.tsx';
import { sizeName } from './names.ts';
import { packPages } from './pack.ts';
import { PlacedPicture, pictureSize } from './placed-picture.tsx';
import { sheets, textSize } from './sheet.ts';
import { SizeNames, sizeNamesFit, sizeNamesHeight } from './size-names.tsx';
import { SizeMark } from './size-mark.tsx';
import { Spoken } from './spoken.tsx';
import { Said, inSeveral, saidHeight } from './in-languages.tsx';
import type { BookletInput } from './types.ts';

/** Lengths that have a plainer name where the item's use is known. */
const namedByUse: Partial<Readonly<Record<Use, Readonly<Record<string, string>>>>> = {
  seat: { 'deck-top': 'seat-height' },
  table: { 'deck-top': 'table-height' },
  bed: { 'deck-top': 'bed-base', 'back-height': 'guard' },
};

/** A lettered length's name in the booklet's language. */
export function lengthName({ words, model }: { readonly words: Words; readonly model: Pick<Model, 'use'> }, { name }: Pick<NamedLength, 'name'>): string {
  return words.t(`dimensions.${namedByUse[model.use]?.[name] ?? name}`);
}

/** Room for the columns of the size variants beside the lettered drawing, and the widest column, mm. */
const columnsRoom = 58;
const widestColumn = 18.5;

/** White over the names of the letters and in each of their rows, mm. */
export const namesPad = 6;
export const namePad = 2;
/** Column of the letters, mm. */
export const letterWidth = 9;

function columnWidth({ variants }: BookletInput): number {
  return Math.min(widestColumn, columnsRoom / variants.length);
}

/** Whether the sizes are named over their columns; else their marks are, in a list under the drawing. */
function namedInHead(input: BookletInput): boolean {
  return input.edition === 'words' && sizeNamesFit(input, columnWidth(input));
}

/**
 * The lettered drawing, and beside it its letters' lengths in every size variant. With words in several languages
 * the lengths' names stand under it, on a page of their own where they must.
 */
export function dimensions(input: BookletInput, scale = letteredScale(input)): readonly ReactNode[] {
  const room = pageRoom(input);
  const entries: readonly Entry[] = [
    { lettered: true, height: scale * pictureSize(input, { what: 'lettered' }).height },
    // On a wide page the table stands beside the drawing.
    ...(sheets[input.paper].narrow ? [{ table: true as const, height: tableHeight(input) }] : []),
    ...(namedInHead(input) || input.edition === 'pictures' ? [] : [{ sizes: true as const, height: sizeNamesHeight(input) }]),
    ...namesUnder(input),
  ];
  return packPages(entries, room, room - headingHeight(input, 'dimensions')).map((page, index) => (
    <div className="dimensions" key={index}>
      {index === 0 && <div className="main"><ChapterHeading input={input} name="dimensions" /></div>}
      <div className="lettered">
        {page.some((entry) => 'lettered' in entry) && <PlacedPicture input={input} of={{ what: 'lettered' }} alt={lettersAlt(input)} scale={scale} />}
        {page.some((entry) => (sheets[input.paper].narrow ? 'table' : 'lettered') in entry) && <SizeTable input={input} />}
      </div>
      {page.some((entry) => 'sizes' in entry) && <SizeNames input={input} />}
      <Names input={input} lengths={page.flatMap((entry) => ('length' in entry ? entry.length : []))} />
    </div>
  ));
}

/** How large the drawing is where the chapter stands in a height of that many mm, its table beside it: at most its own size; null where it would be too small. For pages without words. */
export function letteredWithin(input: BookletInput, height: number): number | null {
  const { narrow } = sheets[input.paper];
  const room = height - headingHeight(input, 'dimensions');
  const scale = Math.min(1, Math.floor((1000 * room) / pictureSize(input, { what: 'lettered' }).height) / 1000);
  return narrow || scale < leastScale || room < tableHeight(input) ? null : scale;
}

type Entry = { readonly height: number } & ({ readonly lettered: true } | { readonly table: true } | { readonly sizes: true } | { readonly length: NamedLength });

/** Size of the drawing against its own: on a narrow page a little smaller where its table then stands under it. */
function letteredScale(input: BookletInput): number {
  const sheet = sheets[input.paper];
  const room = pageRoom(input) - headingHeight(input, 'dimensions') - tableHeight(input);
  const scale = Math.floor((1000 * room) / pictureSize(input, { what: 'lettered' }).height) / 1000;
  return sheet.narrow && scale < 1 && scale >= sheet.leastScale ? scale : 1;
}

/** A narrow page's table: column of the lengths' names, its text, pt, and lines, mm; a row of figures at the least, and the white over the table. */
export const namedColumn = 52;
export const namedGap = 2;
export const namedSize = 10.5;
export const namedLine = 5;
export const leastRow = 11;
export const overTable = 3;
/** A size's mark over its column with the arrow to this booklet's own, the white round them, and the table's lines, mm. */
const sizeHead = 17;

/** Height of the table of lengths on a narrow page with the white over it, mm. */
function tableHeight(input: BookletInput): number {
  const heads = namedInHead(input) ? input.variants.map((variant) => saidHeight(input, (each) => sizeName(each, variant), columnWidth(input), { size: textSize, bold: true })) : [0];
  const row = (length: NamedLength): number => (input.edition === 'pictures' || inSeveral(input)
    ? leastRow
    : Math.max(leastRow, saidHeight(input, (each) => lengthName(each, length), namedColumn - namedGap, { size: namedSize, leading: namedLine }) + 1));
  return overTable + sizeHead + Math.max(...heads) + input.model.dimensions.reduce((sum, length) => sum + row(length) + 0.3, 0);
}

function namesUnder(input: BookletInput): readonly Entry[] {
  if (input.edition === 'pictures' || !inSeveral(input)) return [];
  const width = sheets[input.paper].main - letterWidth;
  return input.model.dimensions.map((length, index) => ({
    length,
    height: (index === 0 ? namesPad : 0) + namePad + saidHeight(input, (each) => lengthName(each, length), width, { size: textSize, how: 'beside' }),
  }));
}

/** What the letters stand for, in every language. */
function Names({ input, lengths }: { readonly input: BookletInput; readonly lengths: readonly NamedLength[] }): ReactNode {
  if (lengths.length === 0) return null;
  return (
    <dl className="names main">
      {lengths.map((length) => (
        <div key={length.letter}>
          <dt className="letter"><Spoken text={isolate(length.letter)} /></dt>
          <dd><Said input={input} say={(each) => lengthName(each, length)} how="beside" /></dd>
        </div>
      ))}
    </dl>
  );
}

function lettersAlt(input: BookletInput): string {
  const { words, model } = input;
  const letters = model.dimensions.map((length) => words.t('booklet.alt.letter', { letter: isolate(length.letter), name: lengthName(input, length) }));
  return words.t('booklet.alt.lettered', { letters: words.list(letters) });
}

function SizeTable({ input }: { readonly input: BookletInput }): ReactNode {
  return (
    <table className="sizes" style={{ '--column': `${columnWidth(input)}mm` } as CSSProperties}>
      <thead>
        <tr>
          <th scope="col" className="letter"><Spoken text={isolate('mm')} /></th>
          {sheets[input.paper].narrow && input.edition === 'words' && !inSeveral(input) && <td />}
          {input.variants.map((variant) => <SizeHead key={variant.size} input={input} variant={variant} />)}
        </tr>
      </thead>
      {input.model.dimensions.map((length) => <LengthRows key={length.letter} input={input} length={length} />)}
    </table>
  );
}

/** A letter with its lengths; with words in one language, its name over them. */
function LengthRows({ input, length }: { readonly input: BookletInput; readonly length: NamedLength }): ReactNode {
  const { variants, edition, paper } = input;
  const letter = <th scope="rowgroup" className="letter"><Spoken text={isolate(length.letter)} /></th>;
  const values = variants.map((variant) => (
    <td key={variant.size} className={markClass(input, variant)}><Spoken text={isolate(valueIn(input, variant, length))} /></td>
  ));
  if (edition === 'pictures' || inSeveral(input)) return <tbody><tr>{letter}{values}</tr></tbody>;
  if (sheets[paper].narrow) return <tbody><tr>{letter}<td className="named">{lengthName(input, length)}</td>{values}</tr></tbody>;
  return (
    <tbody>
      <tr>{letter}<td className="what" colSpan={variants.length}>{lengthName(input, length)}</td></tr>
      <tr><td />{values}</tr>
    </tbody>
  );
}

function SizeHead({ input, variant }: { readonly input: BookletInput; readonly variant: Model }): ReactNode {
  const marked = variant.size === input.model.size;
  return (
    <th scope="col" className={markClass(input, variant)}>
      {marked && <svg className="pointer" aria-hidden="true" width="5mm" height="3.5mm" viewBox="0 0 10 7"><path d="M0 0H10L5 7z" /></svg>}
      <SizeMark input={input} size={variant} isAlone height={8} />
      {namedInHead(input) && <span><Said input={input} say={(each) => sizeName(each, variant)} /></span>}
    </th>
  );
}

function markClass({ model }: BookletInput, variant: Model): string {
  return variant.size === model.size ? 'figure this' : 'figure';
}

function valueIn({ words }: BookletInput, variant: Model, { letter }: NamedLength): string {
  const length = variant.dimensions.find((each) => each.letter === letter);
  return length ? words.number(Math.round(length.value)) : '–';
}
