import type { ReactNode } from 'react';
import type { Action, Plan } from '../../plan/index.ts';
import { isolate } from '../words/index.ts';
import type { ChapterName } from './chapter-glyphs.ts';
import { GlyphMark } from './glyph-mark.tsx';
import { Spoken } from './spoken.tsx';
import type { BookletInput } from './types.ts';

/** The work that a chapter before the steps shows beforehand. */
const workShown: Partial<Readonly<Record<ChapterName, readonly Action[]>>> = {
  lengths: ['cut-tubes'],
  pattern: ['cut-blank', 'mark-inside', 'mark-creases', 'mark-notches', 'punch-holes', 'cut-notches', 'crease', 'half-cut'],
  creasing: ['wrap-side', 'pin-ends', 'pin-middle'],
  plates: ['cut-panel'],
};

/** First and last number of each unbroken row of a chapter's steps, in order; none where it shows no work. */
export function stepsShown({ steps }: Plan, chapter: ChapterName): readonly (readonly [number, number])[] {
  const numbers = steps.filter(({ action }) => workShown[chapter]?.includes(action)).map(({ number }) => number);
  const firsts = numbers.filter((number) => !numbers.includes(number - 1));
  const lasts = numbers.filter((number) => !numbers.includes(number + 1));
  return firsts.map((first, index) => [first, lasts[index] ?? first]);
}

/** Height of the eye beside a chapter's heading, mm. */
const eyeHeight = 13;

/** Says that a chapter is there to be looked at, and at which steps the work comes, so that it is not done twice. */
export function LookedAt({ input, chapter }: { readonly input: BookletInput; readonly chapter: ChapterName }): ReactNode {
  const { words, plan, glyphs, edition } = input;
  const rows = stepsShown(plan, chapter);
  if (rows.length === 0) return null;
  const said = words.t('booklet.look-at');
  return (
    <p className="looked-at">
      <GlyphMark glyph={glyphs.plain('look')} label={said} height={eyeHeight} />
      {edition === 'words' && <span>{said}</span>}
      {rows.map(([first, last]) => (
        <b key={first}><Spoken text={isolate([...new Set([first, last])].map((number) => words.number(number)).join('–'))} /></b>
      ))}
    </p>
  );
}
