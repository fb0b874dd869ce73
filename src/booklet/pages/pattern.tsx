import type { ReactNode } from 'react';
import { foldedPanels, pictureId, type FoldedPanel, type PictureOf } from '../../draw/index.ts';
import { pageRoom } from './foot.tsx';
import { ChapterHeading, headingHeight } from './chapter.tsx';
import { PlacedPicture, pictureSize } from './placed-picture.tsx';
import { sheets } from './sheet.ts';
import type { BookletInput } from './types.ts';

/** The flat pattern of every panel that is folded, and how its flaps are creased; those wrapped alike tell it once. */
export function pattern(input: BookletInput): readonly ReactNode[] {
  const panels = foldedPanels(input.model);
  const firstWrapped = panels.find(({ pattern: { form } }) => form === 'wrapped');
  return panels.flatMap((panel) => [
    ...drawn(input, 'pattern', { what: 'pattern', pattern: panel.index }, patternAlt(input, panel)),
    ...(panel.pattern.form === 'wrapped' && panel !== firstWrapped ? [] : drawn(input, 'creasing', { what: 'crease-section', pattern: panel.index }, creasingAlt(input, panel))),
  ]);
}

function patternAlt({ words }: BookletInput, { pattern: { min, max } }: FoldedPanel): string {
  return words.t('booklet.alt.pattern', { blank: words.measures([max[0] - min[0], max[1] - min[1]].map((side) => Math.round(side)), 'mm') });
}

const creasingAlt = ({ words }: BookletInput, { pattern: { flaps } }: FoldedPanel): string =>
  words.t('booklet.alt.crease-section', { count: Math.max(...flaps.map(({ bends }) => bends.filter(({ is }) => is === 'crease').length)) });

/** A heading and its drawing. Under a heading of several lines a high drawing is set a little smaller; where its text would be too small, it has the next page. */
function drawn(input: BookletInput, name: 'pattern' | 'creasing', of: PictureOf, alt: string): readonly ReactNode[] {
  const sheet = sheets[input.paper];
  const { height } = pictureSize(input, of);
  const under = (pageRoom(input) - headingHeight(input, name)) / height;
  const heading = <ChapterHeading input={input} name={name} />;
  const picture = (scale: number): ReactNode => <PlacedPicture input={input} of={of} scale={Math.min(1, scale)} alt={alt} />;
  return under >= sheet.leastScale
    ? [<div className="pattern main" key={pictureId(of)}>{heading}{picture(under)}</div>]
    : [<div className="pattern main" key={`${name} ${pictureId(of)}`}>{heading}</div>, <div className="pattern main" key={pictureId(of)}>{picture(pageRoom(input) / height)}</div>];
}
