import type { CSSProperties, ReactNode } from 'react';
import type { Plan } from '../../plan/index.ts';
import { WORK } from '../../work/facts.ts';
import { isolate } from '../words/index.ts';
import type { ChapterName } from './chapter-glyphs.ts';
import { GlyphMark } from './glyph-mark.tsx';
import { lineScale } from './setting.ts';
import { sheets, textSize } from './sheet.ts';
import { Spoken } from './spoken.tsx';
import { rowText, stepRows } from './step-rows.ts';
import { Said, saidHeight } from './in-languages.tsx';
import type { BookletInput } from './types.ts';

/** The rows of a chapter's steps; none where it shows no work. */
const stepsShown = ({ steps }: Plan, chapter: ChapterName): ReturnType<typeof stepRows> =>
  stepRows(steps.filter(({ action }) => WORK[action].shownIn === chapter).map(({ number }) => number));

/** Height of the eye beside a chapter's heading and of its line, and the room of the sentence and of a row's numerals with the white beside each, mm. */
const eyeHeight = 13;
export const lookedLine = 14;
export const sentenceWidth = { wide: 52, narrow: 30 } as const;
export const lookedGap = 3;
const rowWidth = 26;
/** How far the eye may reach over the title beside it, mm. */
const eyeOver = 1.5;

/** How far all of it is moved up beside a title, mm; not where its lines take the height of the eye themselves. */
export function lookedUp({ words }: BookletInput): number {
  return lineScale(words) === 1 ? eyeOver : 0;
}

/** Width of what says that a chapter is only to be looked at, where it stands beside the title, mm; 0 where nothing says so. */
export function lookedAtWidth({ plan }: BookletInput, chapter: ChapterName, sentence: number = sentenceWidth.wide): number {
  const rows = stepsShown(plan, chapter).length;
  return rows === 0 ? 0 : eyeHeight + lookedGap + sentence + rows * (lookedGap + rowWidth);
}

/** The least width it is set in beside a title, mm: a narrow page breaks its sentence into more lines. */
export function leastLookedAt(input: BookletInput, chapter: ChapterName): number {
  return lookedAtWidth(input, chapter, sheets[input.paper].narrow ? sentenceWidth.narrow : sentenceWidth.wide);
}

/** Its height in a column of `width` mm, or beside the title; 0 where nothing says so. */
export function lookedAtHeight(input: BookletInput, chapter: ChapterName, width = lookedAtWidth(input, chapter)): number {
  const rows = stepsShown(input.plan, chapter).length;
  if (rows === 0) return 0;
  const room = width - eyeHeight - lookedGap - rows * (lookedGap + rowWidth);
  return Math.max(lookedLine, saidHeight(input, ({ words }) => words.t('booklet.look-at'), room, { size: textSize, how: 'beside' }));
}

/** Says that a chapter is there to be looked at, and at which steps the work comes, so that it is not done twice. */
export function LookedAt({ input, chapter }: { readonly input: BookletInput; readonly chapter: ChapterName }): ReactNode {
  const { words, plan, glyphs } = input;
  const rows = stepsShown(plan, chapter);
  if (rows.length === 0) return null;
  return (
    <p className="looked-at" style={{ '--up': `${lookedUp(input)}mm` } as CSSProperties}>
      <GlyphMark glyph={glyphs.plain('look')} label={words.t('booklet.look-at')} height={eyeHeight} />
      <span className="only"><Said input={input} say={(each) => each.words.t('booklet.look-at')} how="beside" /></span>
      {rows.map((row) => (
        <b key={row[0]}><Spoken text={isolate(rowText(words, row))} /></b>
      ))}
    </p>
  );
}
