import type { ReactNode } from 'react';
import { pictureId, type PictureOf } from '../../draw/index.ts';
import { pageRoom } from './foot.tsx';
import { ChapterHeading, headingHeight } from './chapter.tsx';
import { PlacedPicture, pictureSize } from './placed-picture.tsx';
import { sheets } from './sheet.ts';
import type { BookletInput } from './types.ts';

/** The flat pattern, and how a flap is creased. */
export function pattern(input: BookletInput): readonly ReactNode[] {
  const { words, model } = input;
  const { blank, flaps } = model.pattern;
  const creases = Math.max(...flaps.map((flap) => flap.creases.length));
  return [
    ...drawn(input, 'pattern', { what: 'pattern' }, words.t('booklet.alt.pattern', { blank: words.measures(blank.map((side) => Math.round(side)), 'mm') })),
    ...drawn(input, 'creasing', { what: 'crease-section' }, words.t('booklet.alt.crease-section', { count: creases })),
  ];
}

/** A heading and its drawing. Under a heading of several lines a high drawing is set a little smaller; where its text would be too small, it has the next page. */
function drawn(input: BookletInput, name: 'pattern' | 'creasing', of: PictureOf, alt: string): readonly ReactNode[] {
  const sheet = sheets[input.paper];
  const { height } = pictureSize(input, of);
  const under = (pageRoom(input) - headingHeight(input, name)) / height;
  const heading = <ChapterHeading input={input} name={name} />;
  const picture = (scale: number): ReactNode => <PlacedPicture input={input} of={of} scale={Math.min(1, scale)} alt={alt} />;
  return under >= sheet.leastScale
    ? [<div className="pattern main" key={name}>{heading}{picture(under)}</div>]
    : [<div className="pattern main" key={name}>{heading}</div>, <div className="pattern main" key={pictureId(of)}>{picture(pageRoom(input) / height)}</div>];
}
