import type { ReactNode } from 'react';
import type { Model, NamedLength } from '../../model/index.ts';
import { isolate } from '../words/index.ts';
import { ChapterHeading } from './chapter.tsx';
import { sizeName } from './names.ts';
import { PlacedPicture, pictureSize } from './placed-picture.tsx';
import { bandRoom, headingHeight, sheets } from './sheet.ts';
import { SizeMark } from './size-mark.tsx';
import { Spoken } from './spoken.tsx';
import type { BookletInput } from './types.ts';

/** Height of a row of the table and of its head, mm. */
const rowHeight = 8;
const headHeight = 24;

/** The lettered drawing, and its letters' lengths in every size variant. */
export function dimensions(input: BookletInput): readonly ReactNode[] {
  const drawing = <PlacedPicture input={input} id="lettered" alt={lettersAlt(input)} />;
  const table = <SizeTable input={input} />;
  const heading = <ChapterHeading input={input} name="dimensions" />;
  const needed = headingHeight + pictureSize(input, 'lettered').height + headHeight + rowHeight * input.model.dimensions.length;
  return needed <= bandRoom(sheets[input.paper])
    ? [<div className="dimensions main" key={0}>{heading}{drawing}{table}</div>]
    : [<div className="dimensions main" key={0}>{heading}{drawing}</div>, <div className="dimensions main" key={1}>{table}</div>];
}

function lettersAlt({ words, model }: BookletInput): string {
  const letters = model.dimensions.map((length) => words.t('booklet.alt.letter', { letter: isolate(length.letter), name: words.t(`dimensions.${length.name}`) }));
  return words.t('booklet.alt.lettered', { letters: words.list(letters) });
}

function SizeTable({ input }: { readonly input: BookletInput }): ReactNode {
  const { words, model, variants, edition } = input;
  return (
    <table className="sizes">
      <thead>
        <tr style={{ height: `${headHeight - 4}mm` }}>
          <th scope="col" className="letter"><Spoken text={isolate('mm')} /></th>
          {edition === 'words' && <td />}
          {variants.map((variant) => <SizeHead key={variant.size} input={input} variant={variant} />)}
        </tr>
      </thead>
      <tbody>
        {model.dimensions.map((length) => (
          <tr key={length.letter} style={{ height: `${rowHeight}mm` }}>
            <th scope="row" className="letter"><Spoken text={isolate(length.letter)} /></th>
            {edition === 'words' && <td className="what">{words.t(`dimensions.${length.name}`)}</td>}
            {variants.map((variant) => <td key={variant.size} className={markClass(input, variant)}><Spoken text={isolate(valueIn(input, variant, length))} /></td>)}
          </tr>
        ))}
      </tbody>
    </table>
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
