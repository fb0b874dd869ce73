import type { ReactNode } from 'react';
import { pictureOf, type PictureOf } from '../../draw/index.ts';
import { PicturePlace } from './picture-place.tsx';
import { sheets } from './sheet.ts';
import type { BookletInput, PictureSize } from './types.ts';

interface PlacedPictureProps {
  readonly input: BookletInput;
  readonly of: PictureOf;
  readonly alt: string;
  /** Size against the picture's own, 1 unless given. */
  readonly scale?: number;
}

/** The place of a picture that the booklet must have. Throws where the picture is not there. */
export function PlacedPicture({ input, of, alt, scale = 1 }: PlacedPictureProps): ReactNode {
  const own = pictureSize(input, of);
  return <PicturePlace place={input.placePicture} of={of} size={{ width: scaled(own.width, scale), height: scaled(own.height, scale) }} alt={alt} />;
}

/** Size on the page in mm; a part keeps the scale that is stated beside it. Throws where the picture is not there. */
export function pictureSize({ pictures, paper }: BookletInput, of: PictureOf): PictureSize {
  const size = pictureOf(pictures, of, 'booklet');
  const scale = of.what === 'part' ? 1 : sheets[paper].pictureScale;
  return { width: scaled(size.width, scale), height: scaled(size.height, scale) };
}

/** Rounded where it is set smaller, so that the page's numbers stay short. */
function scaled(length: number, scale: number): number {
  return scale === 1 ? length : Math.floor(length * scale * 1000) / 1000;
}
