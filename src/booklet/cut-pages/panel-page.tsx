import type { ReactNode } from 'react';
import { loosePieces } from '../../cut/index.ts';
import { isolate } from '../words/index.ts';
import { SheetFrame } from './sheet-frame.tsx';
import { sidesOf } from './said.ts';
import type { CutPagesInput } from './types.ts';

/** A page for every different way to cut a panel. */
export function panelPages(input: CutPagesInput): readonly ReactNode[] {
  const { words, order, glyphs } = input;
  const rule = words.t(order.kit.practice.knifeKerf > 0 ? 'cutting.mark-panel-beyond' : 'cutting.mark-panel');
  return order.panels.map(({ source, times, length, width, pieces, defects, offCuts, cuts }, index) => {
    const letters = pieces.map(({ letter }) => letter);
    const rules = [rule, ...(loosePieces(cuts).length > 0 ? [words.t('cutting.cut-out')] : []), ...(pieces.some(({ isPattern }) => isPattern) ? [words.t('cutting.pattern')] : [])];
    return (
      <SheetFrame
        key={`panel ${index}`} input={input} kind="panel" glyph={glyphs.tool('knife')} glyphLabel={words.t('booklet.tools.knife')}
        source={source} sides={[length, width]} times={times} picture={{ what: 'panel-sheet', place: index }} letters={letters}
        alt={words.t('cutting.alt.panel', { sides: sidesOf(input, [length, width]), pieces: isolate(letters.join(' ')) })}
        rule={rules.join(' ')} damaged={defects.length > 0}
        keep={offCuts.flatMap(({ clear, serves }) => (clear === null || serves.length === 0 ? [] : [{ sides: [clear.width, clear.height], serves }]))}
      />
    );
  });
}
