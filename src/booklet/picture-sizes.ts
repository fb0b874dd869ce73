import type { OfPicture } from '../draw/index.ts';
import type { PictureSize, SizedPicture } from './pages/index.ts';

/** Of what each picture is and its size, mm: what pages are laid out by. */
export const pictureSizes = (pictures: readonly (PictureSize & OfPicture)[]): readonly SizedPicture[] =>
  pictures.map(({ of, width, height }) => ({ of, width, height }));
