import type { ReactNode } from 'react';
import { pageRoom } from './foot.tsx';
import { ChapterHeading, headingHeight } from './chapter.tsx';
import { PlacedPicture, pictureSize } from './placed-picture.tsx';
import type { BookletInput } from './types.ts';

/** The flat pattern, and how a flap is creased: one page each. */
export function pattern(input: BookletInput): readonly ReactNode[] {
  const { words, model } = input;
  const { blank, flaps } = model.pattern;
  const creases = Math.max(...flaps.map((flap) => flap.creases.length));
  // Under a heading of several lines a high drawing is set a little smaller.
  const fit = (name: 'pattern' | 'creasing', id: string): number =>
    Math.min(1, (pageRoom(input) - headingHeight(input, name)) / pictureSize(input, id).height);
  return [
    <div className="pattern main" key="pattern">
      <ChapterHeading input={input} name="pattern" />
      <PlacedPicture input={input} id="pattern" scale={fit('pattern', 'pattern')} alt={words.t('booklet.alt.pattern', { blank: words.measures(blank.map((side) => Math.round(side)), 'mm') })} />
    </div>,
    <div className="pattern main" key="creasing">
      <ChapterHeading input={input} name="creasing" />
      <PlacedPicture input={input} id="crease-section" scale={fit('creasing', 'crease-section')} alt={words.t('booklet.alt.crease-section', { count: creases })} />
    </div>,
  ];
}
