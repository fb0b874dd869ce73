import type { ReactNode } from 'react';
import { chapterGlyph, type ChapterName } from './chapter-glyphs.ts';
import { GlyphMark } from './glyph-mark.tsx';
import { LookedAt } from './looked-at.tsx';
import { headingHeight } from './sheet.ts';
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
  const label = input.words.t(`booklet.chapters.${name}`);
  return (
    <div className="heading" style={{ height: `${headingHeight}mm` }}>
      <h1 className="chapter">
        {input.edition === 'words' ? label : <GlyphMark glyph={chapterGlyph(input.glyphs, name)} label={label} height={14} />}
      </h1>
      <LookedAt input={input} chapter={name} />
    </div>
  );
}
