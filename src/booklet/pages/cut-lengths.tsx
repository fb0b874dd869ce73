import type { ReactNode } from 'react';
import type { TubeNeed } from '../../model/index.ts';
import { isolate } from '../words/index.ts';
import { ChapterHeading } from './chapter.tsx';
import { PlacedPicture } from './placed-picture.tsx';
import { Spoken } from './spoken.tsx';
import type { BookletInput } from './types.ts';

/** How the stock tubes are cut, and every piece with its length and count. */
export function cutLengths(input: BookletInput): readonly ReactNode[] {
  const { words, model } = input;
  const pieces = words.list(model.tubes.map((tube) => words.t('booklet.alt.piece', {
    piece: words.t(`parts.${tube.kind}.counted`, { count: tube.count }),
    length: words.measure(tube.length, 'mm', 1),
  })));
  return [(
    <div className="lengths main" key="lengths">
      <ChapterHeading input={input} name="lengths" />
      <PlacedPicture input={input} id="cut-bars" alt={words.t('booklet.alt.cut-bars', { pieces })} />
      <LengthTable input={input} />
    </div>
  )];
}

function LengthTable({ input }: { readonly input: BookletInput }): ReactNode {
  return (
    <table className="pieces">
      <thead>
        <tr>
          <td />
          <th scope="col"><Spoken text={isolate('mm')} /></th>
          <th scope="col"><Spoken text={isolate('×')} /></th>
        </tr>
      </thead>
      <tbody>
        {input.model.tubes.map((tube) => <LengthRow key={tube.kind} input={input} tube={tube} />)}
      </tbody>
    </table>
  );
}

function LengthRow({ input, tube }: { readonly input: BookletInput; readonly tube: TubeNeed }): ReactNode {
  const { words, edition } = input;
  const name = words.t(`parts.${tube.kind}.name`);
  return (
    <tr>
      <th scope="row" className="piece">
        <PlacedPicture input={input} id={`small:${tube.kind}`} alt={name} />
        {edition === 'words' && <span>{name}</span>}
      </th>
      <td className="figure"><Spoken text={isolate(words.number(tube.length, 1))} /></td>
      <td className="figure"><Spoken text={words.times(tube.count)} /></td>
    </tr>
  );
}
