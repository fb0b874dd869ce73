import type { ReactNode } from 'react';
import { sheets } from './sheet.ts';
import type { BookletInput, PictureSize } from './types.ts';

interface PlacedPictureProps {
  readonly input: BookletInput;
  readonly id: string;
  readonly alt: string;
  /** Size against the picture's own, 1 unless given. */
  readonly scale?: number;
}

/** The place of a picture that the booklet must have. Throws where the picture is not there. */
export function PlacedPicture({ input, id, alt, scale = 1 }: PlacedPictureProps): ReactNode {
  const own = pictureSize(input, id);
  const size = { width: scaled(own.width, scale), height: scaled(own.height, scale) };
  return <div className="picture" style={{ width: `${size.width}mm`, height: `${size.height}mm` }} dangerouslySetInnerHTML={{ __html: input.placePicture({ id, ...size, alt }) }} />;
}

/** Size on the page in mm. Throws where the picture is not there. */
export function pictureSize({ pictures, paper }: BookletInput, id: string): PictureSize {
  const size = pictures[id];
  if (!size) throw new Error(`booklet: no picture "${id}"; there are ${Object.keys(pictures).sort().join(', ') || 'none'}`);
  const scale = id.startsWith('part:') ? 1 : sheets[paper].pictureScale;
  return { width: scaled(size.width, scale), height: scaled(size.height, scale) };
}

/** Rounded where it is set smaller, so that the page's numbers stay short. */
function scaled(length: number, scale: number): number {
  return scale === 1 ? length : Math.floor(length * scale * 1000) / 1000;
}
