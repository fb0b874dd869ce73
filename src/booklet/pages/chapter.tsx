import type { ReactNode } from 'react';
import { headingGlyph, type ChapterName } from './chapter-glyphs.ts';
import { GlyphMark } from './glyph-mark.tsx';
import { LookedAt, leastLookedAt, lookedAtHeight, lookedAtWidth, lookedUp } from './looked-at.tsx';
import { lineScale, textWidth } from './setting.ts';
import { heading, headingLine, headingWhite, sheets } from './sheet.ts';
import { Said, inSeveral, saidHeight, type Say } from './in-languages.tsx';
import type { BookletInput } from './types.ts';

interface ChapterHeadingProps {
  readonly input: BookletInput;
  readonly name: ChapterName;
}

/**
 * A chapter's first line: words, or a pictogram alone. The pictogram's words become the entry in the
 * file's outline, so the edition without words has an outline too. Beside it stands whether the chapter is only to be looked at.
 */
export function ChapterHeading({ input, name }: ChapterHeadingProps): ReactNode {
  const say = titleOf(name);
  return (
    <div className={titleAlone(input, name) ? 'heading alone' : 'heading'} style={{ height: `${headingHeight(input, name)}mm` }}>
      <h1 className="chapter">
        {input.edition === 'words' ? <Said input={input} say={say} how="beside" /> : <GlyphMark glyph={headingGlyph(input.glyphs, name)} label={say(input)} height={14} />}
      </h1>
      <LookedAt input={input} chapter={name} />
    </div>
  );
}

/** Height of a chapter's heading with the white below it, mm. */
export function headingHeight(input: BookletInput, name: ChapterName): number {
  if (input.edition === 'pictures') return headingLine + headingWhite;
  const { main, narrow } = sheets[input.paper];
  const { leading, ...title } = titleOn(input);
  const white = narrow ? lookedWhite.narrow : lookedWhite.wide;
  if (titleAlone(input, name)) {
    const looked = lookedAtHeight(input, name, main);
    return saidHeight(input, titleOf(name), main, { ...title, how: 'beside', leading }) + (looked === 0 ? headingWhite : looked + white);
  }
  const looked = lookedAtHeight(input, name, Math.min(lookedAtWidth(input, name), roomBeside(input, name)));
  return Math.max(Math.max(headingLine, leading * lineScale(input.words)) + headingWhite, looked - lookedUp(input) + white);
}

/** White under what is only to be looked at, mm. */
const lookedWhite = { wide: 5.5, narrow: 2 } as const;

function titleOn({ paper }: BookletInput): { readonly size: number; readonly leading: number; readonly bold: true } {
  const { size, leading } = sheets[paper].narrow ? heading.narrow : heading.wide;
  return { size, leading, bold: true };
}

const titleOf = (name: ChapterName): Say => ({ words }) => words.t(`booklet.chapters.${name}`);

/** What a title on one line leaves of the width, mm. */
function roomBeside(input: BookletInput, name: ChapterName): number {
  const { main } = sheets[input.paper];
  return main - textWidth(input.words, titleOf(name)(input), titleOn(input)) - titleGapOf(input);
}

/** Whether a title takes the whole width, and what is only to be looked at stands under it: with several languages, or where the two are too wide. */
function titleAlone(input: BookletInput, name: ChapterName): boolean {
  if (input.edition === 'pictures') return false;
  if (inSeveral(input)) return true;
  const least = leastLookedAt(input, name);
  return least === 0 ? roomBeside(input, name) < -titleGapOf(input) : roomBeside(input, name) < least;
}

function titleGapOf({ paper }: BookletInput): number {
  return (sheets[paper].narrow ? heading.narrow : heading.wide).gap;
}
