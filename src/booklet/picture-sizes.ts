import type { PictureSize } from './pages/index.ts';

/** The sizes of pictures by their ids, mm: what pages are laid out by. */
export const pictureSizes = (pictures: readonly (PictureSize & { readonly id: string })[]): Readonly<Record<string, PictureSize>> =>
  Object.fromEntries(pictures.map(({ id, width, height }) => [id, { width, height }]));
