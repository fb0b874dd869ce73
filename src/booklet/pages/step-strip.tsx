import type { ReactNode } from 'react';
import type { Step } from '../../plan/index.ts';
import { CheckPictures, checkWidth } from './check-pictures.tsx';
import { GlyphMark } from './glyph-mark.tsx';
import { glyphHeight, sheets } from './sheet.ts';
import type { BookletInput } from './types.ts';

/** Between pictograms of one group, and between groups where there is room and at the least, mm. */
export const innerGap = 1.2;
const widestGap = 6;
const leastGap = 2.4;

interface StepStripProps {
  readonly input: BookletInput;
  readonly step: Step;
}

/** Under a step's picture: action, tools, people, cautions; at the far end what to look at. */
export function StepStrip({ input, step }: StepStripProps): ReactNode {
  const { words, glyphs } = input;
  return (
    <ul className="strip" style={{ height: `${glyphHeight}mm`, columnGap: `${groupGap(step, sheets[input.paper].main)}mm` }}>
      <li className="action">
        <GlyphMark glyph={glyphs.action(step.action)} label={words.t(`actions.names.${step.action}`)} />
      </li>
      <li className="tools">
        {step.tools.map((tool) => <GlyphMark key={tool} glyph={glyphs.tool(tool)} label={words.t(`booklet.tools.${tool}`)} />)}
      </li>
      <li className="people">
        <GlyphMark glyph={glyphs.plain(step.people === 2 ? 'two-people' : 'one-person')} label={words.t('booklet.people', { count: step.people })} />
      </li>
      {step.cautions.length > 0 && (
        <li className="cautions">
          {step.cautions.map((caution) => <GlyphMark key={caution} glyph={glyphs.caution(caution)} label={words.t(`cautions.${caution}.sign`)} />)}
        </li>
      )}
      {step.check && <li className="check"><CheckPictures input={input} check={step.check} height={glyphHeight} /></li>}
    </ul>
  );
}

/** Gap between groups, mm, so that the strip fits `width`. Throws where even the least gap is too wide. */
function groupGap(step: Step, width: number): number {
  const groups = groupWidths(step);
  const gap = (width - groups.reduce((sum, each) => sum + each, 0)) / (groups.length - 1);
  if (gap < leastGap) throw new Error(`booklet: step ${step.number} (${step.key}) has more pictograms than a strip of ${width} mm holds`);
  return Math.min(widestGap, Math.floor(gap * 10) / 10);
}

function groupWidths({ tools, cautions, check }: Step): readonly number[] {
  const row = (count: number): number => count * glyphHeight + Math.max(0, count - 1) * innerGap;
  return [
    row(1),
    row(tools.length),
    row(1),
    ...(cautions.length > 0 ? [row(cautions.length)] : []),
    ...(check ? [checkWidth(check.kind, glyphHeight)] : []),
  ];
}
