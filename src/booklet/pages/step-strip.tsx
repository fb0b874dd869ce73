import type { ReactNode } from 'react';
import type { Step } from '../../plan/index.ts';
import { CheckPictures, checkWidth } from './check-pictures.tsx';
import { GlyphMark } from './glyph-mark.tsx';
import { glyphHeight, sheets, type Sheet } from './sheet.ts';
import type { BookletInput } from './types.ts';

/** Between pictograms of one group, and between groups where there is room and at the least, mm. */
export const innerGap = 1.2;
const widestGap = 6;
const leastGap = 2.4;
/** Heights of the pictograms that are tried, mm; at 8 mm they can still be told apart. */
const heights = [glyphHeight, 10, 9, 8];

interface StepStripProps {
  readonly input: BookletInput;
  readonly step: Step;
}

/** Under a step's picture: action, tools, people, cautions; at the far end what to look at. */
export function StepStrip({ input, step }: StepStripProps): ReactNode {
  const { words, glyphs } = input;
  const sheet = sheets[input.paper];
  const { main } = sheet;
  const height = stripHeight(step, sheet);
  return (
    <ul className="strip" style={{ height: `${glyphHeight}mm`, columnGap: `${groupGap(step, main, height)}mm` }}>
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
      {step.check && <li className="check"><CheckPictures input={input} check={step.check} height={height} /></li>}
    </ul>
  );
}

/** The highest pictograms with which the strip fits its column: those of a long strip are set smaller. Throws where not even the least do. */
function stripHeight(step: Step, { main: width }: Sheet): number {
  const height = heights.find((each) => widestGapIn(step, width, each) >= leastGap);
  if (height === undefined) throw new Error(`booklet: step ${step.number} (${step.key}) has more pictograms than a strip of ${width} mm holds`);
  return height;
}

/** Gap between groups, mm. */
const groupGap = (step: Step, width: number, height: number): number => Math.min(widestGap, Math.floor(widestGapIn(step, width, height) * 10) / 10);

function widestGapIn(step: Step, width: number, height: number): number {
  const groups = groupWidths(step, height);
  return (width - groups.reduce((sum, each) => sum + each, 0)) / (groups.length - 1);
}

function groupWidths({ tools, cautions, check }: Step, height: number): readonly number[] {
  const row = (count: number): number => count * height + Math.max(0, count - 1) * innerGap;
  return [
    row(1),
    row(tools.length),
    row(1),
    ...(cautions.length > 0 ? [row(cautions.length)] : []),
    ...(check ? [checkWidth(check.kind, height)] : []),
  ];
}
