import type { ReactNode } from 'react';
import { chapterGlyph, type ChapterName } from './chapter-glyphs.ts';
import { GlyphMark } from './glyph-mark.tsx';
import { LookedAt, lookedAtHeight, lookedAtWidth, lookedUp } from './looked-at.tsx';
import { lineScale, textWidth } from './setting.ts';
import { headingLine, headingSize, headingWhite, sheets } from './sheet.ts';
import { Said, inSeveral, saidHeight, type Say } from './tongues.tsx';
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
        {input.edition === 'words' ? <Said input={input} say={say} how="beside" /> : <GlyphMark glyph={chapterGlyph(input.glyphs, name)} label={say(input)} height={14} />}
      </h1>
      <LookedAt input={input} chapter={name} />
    </div>
  );
}

/** Height of a chapter's heading with the white below it, mm. */
export function headingHeight(input: BookletInput, name: ChapterName): number {
  if (input.edition === 'pictures') return headingLine + headingWhite;
  const { main } = sheets[input.paper];
  if (!titleAlone(input, name)) return Math.max(headingLine * lineScale(input.words) + headingWhite, lookedAtHeight(input, name) - lookedUp(input) + lookedWhite);
  const looked = lookedAtHeight(input, name, main);
  return saidHeight(input, titleOf(name), main, { ...title, how: 'beside', leading: headingLine }) + (looked === 0 ? headingWhite : looked + lookedWhite);
}

const title = { size: headingSize, bold: true } as const;
/** White between a title and what stands beside it, and under the latter, mm. */
export const titleGap = 8;
const lookedWhite = 5.5;
const titleOf = (name: ChapterName): Say => ({ words }) => words.t(`booklet.chapters.${name}`);

/** Whether a title takes the whole width, and what is only to be looked at stands under it: with several languages, or where the two are too wide. */
function titleAlone(input: BookletInput, name: ChapterName): boolean {
  if (input.edition === 'pictures') return false;
  const looked = lookedAtWidth(input, name);
  const room = sheets[input.paper].main - (looked === 0 ? 0 : looked + titleGap);
  return inSeveral(input) || textWidth(input.words, titleOf(name)(input), title) > room;
}
