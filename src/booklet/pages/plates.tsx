import type { ReactNode } from 'react';
import { pictureId, type PictureOf } from '../../draw/index.ts';
import type { FlatPanel } from '../../model/index.ts';
import { pageRoom } from './foot.tsx';
import { ChapterHeading, headingHeight } from './chapter.tsx';
import { packPages } from './pack.ts';
import { PlacedPicture, pictureSize } from './placed-picture.tsx';
import type { BookletInput } from './types.ts';

/** White under each drawing, mm. */
export const plateGap = 8;

/** Every flat panel as it is cut from a stock panel; no page where the item has none. */
export function plates(input: BookletInput): readonly ReactNode[] {
  const room = pageRoom(input);
  const drawings = input.model.plates.map((plate, index) => {
    const of: PictureOf = { what: 'plate', plate: index };
    return { plate, of, height: pictureSize(input, of).height + plateGap };
  });
  return packPages(drawings, room, room - headingHeight(input, 'plates')).map((page, index) => (
    <div className="plates main" key={index}>
      {index === 0 && <ChapterHeading input={input} name="plates" />}
      {page.map(({ plate, of }) => <PlacedPicture key={pictureId(of)} input={input} of={of} alt={plateAlt(input, plate)} />)}
    </div>
  ));
}

function plateAlt({ words }: BookletInput, { width, height, holes, partIds }: FlatPanel): string {
  return words.t('booklet.alt.plate', {
    count: partIds.length,
    sides: words.measures([width, height].map((side) => Math.round(side)), 'mm'),
    holes: holes.length,
  });
}
