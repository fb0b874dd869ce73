import type { ReactNode } from 'react';
import { pageRoom } from './foot.tsx';
import { ChapterHeading, headingHeight } from './chapter.tsx';
import type { ChapterName } from './chapter-glyphs.ts';
import { GlyphMark } from './glyph-mark.tsx';
import { packPages } from './pack.ts';
import { sheets } from './sheet.ts';
import { Said, inSeveral, saidHeight, type Say } from './in-languages.tsx';
import type { BookletInput, Caution } from './types.ts';

/** Cautions whose sentence is another than `says`: the key under the caution. */
export type Sentences = Partial<Readonly<Record<Caution, string>>>;

/** Something on a page, with its height in mm. */
export interface Block {
  readonly height: number;
  readonly node: ReactNode;
}

interface CautionPagesProps {
  readonly name: ChapterName;
  readonly className: string;
  readonly over: readonly Block[];
  readonly cautions: readonly Caution[];
  readonly sentences?: Sentences;
  /** How much of its first page is taken by what stands over it, mm; nothing unless told. */
  readonly taken?: number;
}

/** Height of a sign, of one without words beside it, and white between sign and words, rows and columns, mm. */
export const signHeight = 19;
/** Without words: the largest by which the signs stand on one page with what is over them, or the largest of all. */
const bareSignHeights = [32, 28, 24, 21] as const;
export const signGap = 4;
export const rowGap = 4.5;
export const bareRowGap = 9;
export const columnGap = 6;
/** White over and under all signs, mm. */
export const cautionsPad = 5;
/** White between signs without words, mm. */
export const bareColumnGap = 12;
/** The caution on local codes: pt, distance of lines and white over it, mm. */
export const deferSize = 12;
export const deferLine = 6;
export const deferPad = 3;

type Entry = { readonly height: number } & (Block | { readonly row: readonly Caution[] } | { readonly defer: true });

/**
 * A chapter that ends in cautions, on one page or more: what stands over them, safety signs, and with words each
 * sign's sentence beside it and the sentence on local codes, which has no sign. Each page with how much of it is taken.
 */
export function cautionPages(input: BookletInput, { name, className, over, cautions, sentences = {}, taken = 0 }: CautionPagesProps): readonly Block[] {
  const room = pageRoom(input);
  const first = room - taken - headingHeight(input, name);
  const told = over.reduce((sum, { height }) => sum + height, 0);
  const bare = bareSignHeights.find((sign) => told + bareRows(input, cautions, sign) <= first) ?? bareSignHeights[0];
  const wide = inRow(input, cautions, sentences, bare);
  const entries: readonly Entry[] = [
    ...over,
    ...rowsOf(cautions, wide).map((row, index) => ({ row, height: rowHeight(input, row, wide, sentences, bare) + (index === 0 ? 2 * cautionsPad : 0) })),
    ...(input.edition === 'words' ? [{ defer: true as const, height: deferHeight(input) }] : []),
  ];
  // Signs that go on on a further page have their white there as well.
  return packPages(entries, room - 2 * cautionsPad, first).map((page, index) => ({
    height: (index === 0 ? headingHeight(input, name) : 0) + page.reduce((sum, { height }) => sum + height, 0),
    node: (
      <div className={`${className} main`} key={`${className} ${index}`}>
        {index === 0 && <ChapterHeading input={input} name={name} />}
        {page.map((entry) => ('node' in entry ? entry.node : null))}
        <CautionList input={input} wide={wide} bare={bare} cautions={page.flatMap((entry) => ('row' in entry ? entry.row : []))} sentences={sentences} />
        {page.some((entry) => 'defer' in entry) && <Defer input={input} />}
      </div>
    ),
  }));
}

const says = (caution: Caution, sentences: Sentences): Say => ({ words }) => words.t(`cautions.${caution}.${sentences[caution] ?? 'says'}`);
const defer: Say = ({ words }) => words.t('booklet.defer');
const sources: Say = ({ words }) => words.t('booklet.colophon.sources');

/** The caution on local codes. */
export function Defer({ input }: { readonly input: BookletInput }): ReactNode {
  return <p className="defer"><Said input={input} say={defer} how="beside" /></p>;
}

/** Its height with the white over it, mm. */
export function deferHeight(input: BookletInput): number {
  return noteHeight(input, defer);
}

/** What the letters behind a source say. */
export function Sources({ input }: { readonly input: BookletInput }): ReactNode {
  return <p className="defer"><Said input={input} say={sources} how="beside" /></p>;
}

/** Its height with the white over it, mm. */
export function sourcesHeight(input: BookletInput): number {
  return noteHeight(input, sources);
}

function noteHeight(input: BookletInput, say: Say): number {
  return deferPad + saidHeight(input, say, sheets[input.paper].main, { size: deferSize, leading: deferLine, how: 'beside' });
}

/** Signs side by side: with words two, or one where that takes less height, as with several languages or long words on a narrow page. */
function inRow(input: BookletInput, cautions: readonly Caution[], sentences: Sentences, bare: number): number {
  if (input.edition === 'pictures') return bareInRow(input, bare);
  if (inSeveral(input) || !sheets[input.paper].narrow) return inSeveral(input) ? 1 : 2;
  const [one = 0, two = 0] = [1, 2].map((wide) => rowsOf(cautions, wide).reduce((sum, row) => sum + rowHeight(input, row, wide, sentences, bare), 0));
  return one < two ? 1 : 2;
}

const bareInRow = ({ paper }: BookletInput, bare: number): number => Math.floor((sheets[paper].main + bareColumnGap) / (bare + bareColumnGap));

/** Height of all signs of that height without words, mm. */
const bareRows = (input: BookletInput, cautions: readonly Caution[], bare: number): number =>
  2 * cautionsPad + Math.ceil(cautions.length / bareInRow(input, bare)) * (bare + bareRowGap);

function rowsOf(cautions: readonly Caution[], wide: number): readonly (readonly Caution[])[] {
  return Array.from({ length: Math.ceil(cautions.length / wide) }, (_, index) => cautions.slice(wide * index, wide * (index + 1)));
}

function rowHeight(input: BookletInput, row: readonly Caution[], wide: number, sentences: Sentences, bare: number): number {
  if (input.edition === 'pictures') return bare + bareRowGap;
  const width = (sheets[input.paper].main - columnGap * (wide - 1)) / wide - signHeight - signGap;
  return rowGap + Math.max(signHeight, ...row.map((caution) => saidHeight(input, says(caution, sentences), width, { size: 11, how: 'beside' })));
}

function CautionList({ input, wide, bare, cautions, sentences }: { readonly input: BookletInput; readonly wide: number; readonly bare: number; readonly cautions: readonly Caution[]; readonly sentences: Sentences }): ReactNode {
  const { words, glyphs, edition } = input;
  if (cautions.length === 0) return null;
  return (
    <ul className={`cautions ${edition}${wide === 1 ? ' one' : ''}`}>
      {cautions.map((caution) => (
        <li key={caution}>
          <GlyphMark glyph={glyphs.caution(caution)} label={words.t(`cautions.${caution}.sign`)} height={edition === 'words' ? signHeight : bare} />
          {edition === 'words' && <span className="says"><Said input={input} say={says(caution, sentences)} how="beside" /></span>}
        </li>
      ))}
    </ul>
  );
}
