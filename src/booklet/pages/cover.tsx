import type { ReactNode } from 'react';
import { isolate } from '../words/index.ts';
import { Languages } from './languages.tsx';
import { itemName, sizeName } from './names.ts';
import { PlacedPicture } from './placed-picture.tsx';
import { SizeMark } from './size-mark.tsx';
import { Spoken } from './spoken.tsx';
import type { BookletInput } from './types.ts';

/** The item's name, the finished item, its size, and which print this is. */
export function cover(input: BookletInput): readonly ReactNode[] {
  const { model, edition } = input;
  return [(
    <div className="cover" key="cover">
      <h1 className="name">{itemName(input)}</h1>
      <div className="view">
        <PlacedPicture input={input} id="finished" alt={finishedAlt(input)} />
      </div>
      <div className="facts">
        <SizeMark input={input} height={14} />
        <div>
          {edition === 'words' && <p className="size">{sizeName(input, model)}</p>}
          <p className="overall"><Spoken text={overall(input)} /></p>
        </div>
        <Print input={input} />
      </div>
    </div>
  )];
}

/** The finished item's picture in words. */
export function finishedAlt(input: Pick<BookletInput, 'words' | 'model'>): string {
  return input.words.t('booklet.alt.finished', { item: itemName(input), size: sizeName(input, input.model), overall: overall(input) });
}

/** Width, depth and height over all: the lengths of these names, `1084 × 584 × 1500 mm`. */
export function overall({ model, words }: Pick<BookletInput, 'words' | 'model'>): string {
  const lengths = ['width', 'depth', 'height'].flatMap((name) => model.dimensions.filter((length) => length.name === name));
  return words.measures(lengths.map((length) => Math.round(length.value)), 'mm');
}

/** Languages, revision and content mark. */
function Print({ input }: { readonly input: BookletInput }): ReactNode {
  const { words, edition, revision, contentMark } = input;
  return (
    <div className="print">
      <p><Languages input={input} /></p>
      {edition === 'words'
        ? <p><Spoken text={words.t('booklet.revision', { revision })} /> · <Spoken text={isolate(contentMark)} /></p>
        : <p><Spoken text={isolate(`${words.number(revision)} · ${contentMark}`)} /></p>}
    </div>
  );
}
