import type { ReactNode } from 'react';
import type { WorkerCheck } from '../../plan/index.ts';
import { GlyphMark } from './glyph-mark.tsx';
import { Spoken } from './spoken.tsx';
import type { BookletInput, Glyph } from './types.ts';

interface CheckPicturesProps {
  readonly input: BookletInput;
  readonly check: WorkerCheck;
  /** mm */
  readonly height: number;
}

/** Units of the pictograms' grid: where tick or cross stands beside its picture, and how much it adds to the width. */
const markAt = { x: 73, y: 24, scale: 0.5 } as const;
const markWidth = 25;

/** Width of a check's pictures in units: a pair with tick and cross and the gap between them, or a gauge with its measure. */
export const checkUnits = { pair: 2 * (72 + markWidth), measure: 48 + 70 } as const;

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

function marked(picture: Glyph, mark: Glyph): Glyph {
  const { x, y, scale } = markAt;
  return { width: picture.width + markWidth, svg: `${picture.svg}<g transform="translate(${x} ${y}) scale(${scale})">${mark.svg}</g>` };
}
