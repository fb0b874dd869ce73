import type { ReactNode } from 'react';
import { glyphHeight } from './sheet.ts';
import type { Glyph } from './types.ts';

interface GlyphMarkProps {
  readonly glyph: Glyph;
  /** What it says, for those who hear the page. */
  readonly label: string;
  /** mm */
  readonly height?: number;
}

/** A pictogram as a picture with its words. */
export function GlyphMark({ glyph, label, height = glyphHeight }: GlyphMarkProps): ReactNode {
  return (
    <svg
      className="glyph"
      role="img"
      aria-label={label}
      direction="ltr"
      width={`${(glyph.width / 48) * height}mm`}
      height={`${height}mm`}
      viewBox={`0 0 ${glyph.width} 48`}
      dangerouslySetInnerHTML={{ __html: glyph.svg }}
    />
  );
}
