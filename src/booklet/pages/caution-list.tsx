import type { ReactNode } from 'react';
import { pageRoom } from './foot.tsx';
import { ChapterHeading, headingHeight } from './chapter.tsx';
import type { ChapterName } from './chapter-glyphs.ts';
import { GlyphMark } from './glyph-mark.tsx';
import { packPages } from './pack.ts';
import { sheets } from './sheet.ts';
import { Said, inSeveral, saidHeight, type Say } from './tongues.tsx';
import type { BookletInput, Caution } from './types.ts';

/** Cautions whose sentence is another than `says`: the key under the caution. */
export type Sentences = Partial<Readonly<Record<Caution, string>>>;

/** Something over the cautions on a page, with its height in mm. */
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
}

/** Height of a sign, of one without words beside it, and white between sign and words, rows and columns, mm. */
export const signHeight = 19;
const bareSignHeight = 32;
export const signGap = 4;
export const rowGap = 4.5;
const bareRowGap = 9;
export const columnGap = 6;
/** White over and under all signs, mm. */
export const cautionsPad = 5;
/** Signs without words in a row. */
const bareInRow = 4;
/** The caution on local codes: pt, distance of lines and white over it, mm. */
export const deferSize = 12;
export const deferLine = 6;
export const deferPad = 3;

type Entry = { readonly height: number } & (Block | { readonly row: readonly Caution[] } | { readonly defer: true });

/**
 * A chapter that ends in cautions, on one page or more: what stands over them, safety signs, and with words each
 * sign's sentence beside it and the sentence on local codes, which has no sign.
 */
export function cautionPages(input: BookletInput, { name, className, over, cautions, sentences = {} }: CautionPagesProps): readonly ReactNode[] {
  const room = pageRoom(input);
  const entries: readonly Entry[] = [
    ...over,
    ...cautionRows(input, cautions).map((row, index) => ({ row, height: rowHeight(input, row, sentences) + (index === 0 ? 2 * cautionsPad : 0) })),
    ...(input.edition === 'words' ? [{ defer: true as const, height: deferHeight(input) }] : []),
  ];
  return packPages(entries, room, room - headingHeight(input, name)).map((page, index) => (
    <div className={`${className} main`} key={`${className} ${index}`}>
      {index === 0 && <ChapterHeading input={input} name={name} />}
      {page.map((entry) => ('node' in entry ? entry.node : null))}
      <CautionList input={input} cautions={page.flatMap((entry) => ('row' in entry ? entry.row : []))} sentences={sentences} />
      {page.some((entry) => 'defer' in entry) && <Defer input={input} />}
    </div>
  ));
}

const says = (caution: Caution, sentences: Sentences): Say => ({ words }) => words.t(`cautions.${caution}.${sentences[caution] ?? 'says'}`);
const defer: Say = ({ words }) => words.t('booklet.defer');

/** The caution on local codes. */
export function Defer({ input }: { readonly input: BookletInput }): ReactNode {
  return <p className="defer"><Said input={input} say={defer} how="beside" /></p>;
}

/** Its height with the white over it, mm. */
export function deferHeight(input: BookletInput): number {
  return deferPad + saidHeight(input, defer, sheets[input.paper].main, { size: deferSize, leading: deferLine, how: 'beside' });
}

/** Two side by side, with words in several languages one. */
function inRow(input: BookletInput): number {
  if (input.edition === 'pictures') return bareInRow;
  return inSeveral(input) ? 1 : 2;
}

function cautionRows(input: BookletInput, cautions: readonly Caution[]): readonly (readonly Caution[])[] {
  const wide = inRow(input);
  return Array.from({ length: Math.ceil(cautions.length / wide) }, (_, index) => cautions.slice(wide * index, wide * (index + 1)));
}

function rowHeight(input: BookletInput, row: readonly Caution[], sentences: Sentences): number {
  if (input.edition === 'pictures') return bareSignHeight + bareRowGap;
  const wide = inRow(input);
  const width = (sheets[input.paper].main - columnGap * (wide - 1)) / wide - signHeight - signGap;
  return rowGap + Math.max(signHeight, ...row.map((caution) => saidHeight(input, says(caution, sentences), width, { size: 11, how: 'beside' })));
}

function CautionList({ input, cautions, sentences }: { readonly input: BookletInput; readonly cautions: readonly Caution[]; readonly sentences: Sentences }): ReactNode {
  const { words, glyphs, edition } = input;
  if (cautions.length === 0) return null;
  return (
    <ul className={`cautions ${edition}${inSeveral(input) ? ' several' : ''}`}>
      {cautions.map((caution) => (
        <li key={caution}>
          <GlyphMark glyph={glyphs.caution(caution)} label={words.t(`cautions.${caution}.sign`)} height={edition === 'words' ? signHeight : bareSignHeight} />
          {edition === 'words' && <span className="says"><Said input={input} say={says(caution, sentences)} how="beside" /></span>}
        </li>
      ))}
    </ul>
  );
}
