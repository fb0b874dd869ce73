import type { CSSProperties, ReactNode } from 'react';
import type { Model, NamedLength } from '../../model/index.ts';
import type { Use } from '../../read/index.ts';
import { isolate, type Words } from '../words/index.ts';
import { ChapterHeading } from './chapter.tsx';
import { sizeName } from './names.ts';
import { PlacedPicture } from './placed-picture.tsx';
import { SizeMark } from './size-mark.tsx';
import { Spoken } from './spoken.tsx';
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

/** The lettered drawing, and beside it its letters' lengths in every size variant. */
export function dimensions(input: BookletInput): readonly ReactNode[] {
  return [(
    <div className="dimensions" key="dimensions">
      <div className="main"><ChapterHeading input={input} name="dimensions" /></div>
      <div className="lettered">
        <PlacedPicture input={input} id="lettered" alt={lettersAlt(input)} />
        <SizeTable input={input} />
      </div>
    </div>
  )];
}

function lettersAlt(input: BookletInput): string {
  const { words, model } = input;
  const letters = model.dimensions.map((length) => words.t('booklet.alt.letter', { letter: isolate(length.letter), name: lengthName(input, length) }));
  return words.t('booklet.alt.lettered', { letters: words.list(letters) });
}

function SizeTable({ input }: { readonly input: BookletInput }): ReactNode {
  return (
    <table className="sizes" style={{ '--column': `${Math.min(widestColumn, columnsRoom / input.variants.length)}mm` } as CSSProperties}>
      <thead>
        <tr>
          <th scope="col" className="letter"><Spoken text={isolate('mm')} /></th>
          {input.variants.map((variant) => <SizeHead key={variant.size} input={input} variant={variant} />)}
        </tr>
      </thead>
      {input.model.dimensions.map((length) => <LengthRows key={length.letter} input={input} length={length} />)}
    </table>
  );
}

/** A letter with its lengths; with words, its name over them. */
function LengthRows({ input, length }: { readonly input: BookletInput; readonly length: NamedLength }): ReactNode {
  const { variants, edition } = input;
  const letter = <th scope="rowgroup" className="letter"><Spoken text={isolate(length.letter)} /></th>;
  const values = variants.map((variant) => (
    <td key={variant.size} className={markClass(input, variant)}><Spoken text={isolate(valueIn(input, variant, length))} /></td>
  ));
  if (edition === 'pictures') return <tbody><tr>{letter}{values}</tr></tbody>;
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
      <SizeMark input={input} size={variant} height={6} />
      {input.edition === 'words' && <span>{sizeName(input, variant)}</span>}
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
