import type { ReactNode } from 'react';
import type { Step } from '../../plan/index.ts';
import { GlyphMark } from './glyph-mark.tsx';
import { Spoken } from './spoken.tsx';
import type { BookletInput } from './types.ts';

interface WaitProps {
  readonly input: Pick<BookletInput, 'words' | 'glyphs'>;
  readonly step: Step;
  /** Of the pictogram, mm. */
  readonly height: number;
}

/** How long to wait when a step is done, in a strip of pictograms; nothing where the work goes on at once. */
export function Wait({ input: { words, glyphs }, step: { waits }, height }: WaitProps): ReactNode {
  if (waits === 0) return null;
  return (
    <li className="waits">
      <GlyphMark glyph={glyphs.plain('time')} label={words.t('booklet.alt.time')} height={height} />
      <b><Spoken text={words.duration(waits)} /></b>
    </li>
  );
}
