import type { ReactNode } from 'react';
import type { WorkerCheck } from '../../plan/index.ts';
import { GlyphMark } from './glyph-mark.tsx';
import { marked, markWidth } from './marked-pair.ts';
import { Spoken } from './spoken.tsx';
import type { BookletInput } from './types.ts';

interface CheckPicturesProps {
  readonly input: Pick<BookletInput, 'words' | 'glyphs'>;
  readonly check: WorkerCheck;
  /** mm */
  readonly height: number;
}

/** Between the right and the wrong picture, each with its mark, mm: far more than between picture and mark. */
export const pairGap = 4.5;

/** Width of a check's pictures in mm where they are `height` mm high: a pair with its marks, or a gauge with its measure. */
export function checkWidth(kind: WorkerCheck['kind'], height: number): number {
  const unit = height / 48;
  return kind === 'pair' ? 2 * (72 + markWidth) * unit + pairGap : (48 + 70) * unit;
}

/** What the worker looks at: a gauge with its measure, or the right and the wrong way. */
export function CheckPictures({ input, check, height }: CheckPicturesProps): ReactNode {
  const { words, glyphs } = input;
  const name = words.t(`checks.${check.name}`);
  if (check.kind === 'measure') {
    return (
      <>
        <GlyphMark glyph={glyphs.plain('gauge')} label={name} height={height} />
        <span className="measure"><Spoken text={words.measure(check.value, 'mm', 1)} /></span>
      </>
    );
  }
  const { right, wrong } = glyphs.pair(check.name);
  return (
    <>
      <GlyphMark glyph={marked(right, glyphs.plain('right'))} label={words.t('booklet.alt.right', { check: name })} height={height} />
      <GlyphMark glyph={marked(wrong, glyphs.plain('wrong'))} label={words.t('booklet.alt.wrong', { check: name })} height={height} />
    </>
  );
}
