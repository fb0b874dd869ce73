import type { ReactNode } from 'react';
import { placeInk, placeLabel } from '../print/place.ts';
import { glyphHeight } from './sheet.ts';
import type { Glyph } from './types.ts';

interface GlyphMarkProps {
  readonly glyph: Glyph;
  /** What it says, for those who hear the page. */
  readonly label: string;
  /** mm */
  readonly height?: number;
}

/** A pictogram as a picture with its words; one that is printed once leaves its place, with a rectangle that nobody sees. */
export function GlyphMark({ glyph: { svg, width, printedAs }, label, height = glyphHeight }: GlyphMarkProps): ReactNode {
  const across = (width / 48) * height;
  const place = printedAs === undefined
    ? { 'aria-label': label, viewBox: `0 0 ${width} 48`, dangerouslySetInnerHTML: { __html: svg } }
    : { 'aria-label': placeLabel(printedAs, label), 'data-place': '', viewBox: `0 0 ${across} ${height}`, dangerouslySetInnerHTML: { __html: placeInk(across, height) } };
  return <svg className="glyph" role="img" direction="ltr" width={`${across}mm`} height={`${height}mm`} {...place} />;
}
