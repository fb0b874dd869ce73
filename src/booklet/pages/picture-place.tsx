import type { ReactNode } from 'react';
import { pictureId, type PictureOf } from '../../draw/index.ts';
import type { PictureSize, PlacePicture } from './types.ts';

interface PicturePlaceProps {
  readonly place: PlacePicture;
  readonly of: PictureOf;
  /** Size on the page, mm. */
  readonly size: PictureSize;
  readonly alt: string;
}

/** A box of a picture's size in which the picture is laid. */
export function PicturePlace({ place, of, size: { width, height }, alt }: PicturePlaceProps): ReactNode {
  return <div className="picture" style={{ width: `${width}mm`, height: `${height}mm` }} dangerouslySetInnerHTML={{ __html: place({ id: pictureId(of), width, height, alt }) }} />;
}
