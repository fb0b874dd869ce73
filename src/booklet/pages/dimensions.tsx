import type { ReactNode } from 'react';
import type { Model, NamedLength } from '../../model/index.ts';
import { isolate } from '../words/index.ts';
import { ChapterHeading } from './chapter.tsx';
import { sizeName } from './names.ts';
import { PlacedPicture } from './placed-picture.tsx';
import { SizeMark } from './size-mark.tsx';
import { Spoken } from './spoken.tsx';
import type { BookletInput } from './types.ts';

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

function lettersAlt({ words, model }: BookletInput): string {
  const letters = model.dimensions.map((length) => words.t('booklet.alt.letter', { letter: isolate(length.letter), name: words.t(`dimensions.${length.name}`) }));
  return words.t('booklet.alt.lettered', { letters: words.list(letters) });
}

function SizeTable({ input }: { readonly input: BookletInput }): ReactNode {
  return (
    <table className="sizes">
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
  const { words, variants, edition } = input;
  const letter = <th scope="rowgroup" className="letter"><Spoken text={isolate(length.letter)} /></th>;
  const values = variants.map((variant) => (
    <td key={variant.size} className={markClass(input, variant)}><Spoken text={isolate(valueIn(input, variant, length))} /></td>
  ));
  if (edition === 'pictures') return <tbody><tr>{letter}{values}</tr></tbody>;
  return (
    <tbody>
      <tr>{letter}<td className="what" colSpan={variants.length}>{words.t(`dimensions.${length.name}`)}</td></tr>
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
