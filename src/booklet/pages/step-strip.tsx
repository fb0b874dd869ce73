import type { ReactNode } from 'react';
import type { Step } from '../../plan/index.ts';
import { CheckPictures } from './check-pictures.tsx';
import { GlyphMark } from './glyph-mark.tsx';
import { sheets } from './sheet.ts';
import { stripOf } from './strip.ts';
import type { BookletInput } from './types.ts';
import { Wait } from './wait.tsx';

/** By what stands in the second row. */
const CLASSES = { nothing: 'strip', check: 'strip parted', cautions: 'strip parted low' } as const;

interface StepStripProps {
  readonly input: BookletInput;
  readonly step: Step;
  /** Whether it stands under the last of the step's pictures: how long to wait and what to look at come when all is done. */
  readonly isEnd: boolean;
}

/** Under a step's picture: action, tools, people, cautions, how long to wait; at the far end, or in a second row, what to look at. */
export function StepStrip({ input, step, isEnd }: StepStripProps): ReactNode {
  const { words, glyphs } = input;
  const { glyph: height, gap, below, height: whole } = stripOf(step, sheets[input.paper]);
  return (
    <ul className={CLASSES[below]} style={{ height: `${whole}mm`, columnGap: `${gap}mm` }}>
      <li className="action">
        <GlyphMark glyph={glyphs.action(step.action)} label={words.t(`actions.names.${step.action}`)} height={height} />
      </li>
      <li className="tools">
        {step.tools.map((tool) => <GlyphMark key={tool} glyph={glyphs.tool(tool)} label={words.t(`booklet.tools.${tool}`)} height={height} />)}
      </li>
      <li className="people">
        <GlyphMark glyph={glyphs.plain(step.people === 2 ? 'two-people' : 'one-person')} label={words.t('booklet.people', { count: step.people })} height={height} />
      </li>
      {step.cautions.length > 0 && (
        <li className="cautions">
          {step.cautions.map((caution) => <GlyphMark key={caution} glyph={glyphs.caution(caution)} label={words.t(`cautions.${caution}.sign`)} height={height} />)}
        </li>
      )}
      {isEnd && <Wait input={input} step={step} height={height} />}
      {isEnd && step.check && <li className="check"><CheckPictures input={input} check={step.check} height={height} /></li>}
    </ul>
  );
}
