import type { ReactNode } from 'react';
import type { BookletInput, PictureSize } from './types.ts';

interface PlacedPictureProps {
  readonly input: BookletInput;
  readonly id: string;
  readonly alt: string;
}

/** The place of a picture that the booklet must have. Throws where the picture is not there. */
export function PlacedPicture({ input, id, alt }: PlacedPictureProps): ReactNode {
  const size = pictureSize(input, id);
  return <div className="picture" style={{ width: `${size.width}mm`, height: `${size.height}mm` }} dangerouslySetInnerHTML={{ __html: input.placePicture({ id, ...size, alt }) }} />;
}

/** Size in mm. Throws where the picture is not there. */
export function pictureSize({ pictures }: BookletInput, id: string): PictureSize {
  const size = pictures[id];
  if (!size) throw new Error(`booklet: no picture "${id}"; there are ${Object.keys(pictures).sort().join(', ') || 'none'}`);
  return { width: size.width, height: size.height };
}
