import type { ReactNode } from 'react';
import { SheetFrame } from './sheet-frame.tsx';
import { sidesOf } from './said.ts';
import type { CutPagesInput } from './types.ts';
import { isolate } from '../words/index.ts';

/** A page for every different way to saw a tube. */
export function tubePages(input: CutPagesInput): readonly ReactNode[] {
  const { words, order, glyphs } = input;
  const { kit } = order;
  const onTheMark = kit.practice.sawKerf <= kit.joint.endPlay;
  return order.tubes.map(({ source, times, length, usable, pieces, ends, offCut, serves }, index) => (
    <SheetFrame
      key={`tube ${index}`} input={input} kind="tube" glyph={glyphs.tool('saw')} glyphLabel={words.t('booklet.tools.saw')}
      source={source} sides={[length]} times={times} picture={{ what: 'tube-sheet', place: index }} letters={pieces}
      alt={words.t('cutting.alt.tube', { length: sidesOf(input, [length]), pieces: isolate(pieces.join(' ')), places: words.list(ends.map((end) => sidesOf(input, [end]))) })}
      rule={words.t(onTheMark ? 'cutting.mark-tube' : 'cutting.mark-tube-beyond')} damaged={usable < length}
      keep={serves.length === 0 ? [] : [{ sides: [offCut], serves }]}
    />
  ));
}
