/**
 * The colours of all drawings by what they mean: a drawing names one, here stands how it is printed. The grounds are
 * 20 grey levels and more from white and from each other, which a 300 dpi mono printer keeps apart (own default,
 * found by looking).
 */
export const inks = {
  ink: '#000',
  white: '#fff',
  /** Lines of earlier steps: plain on a mono printer, on the panel too (luminance contrast 71 %), but behind the new ones. */
  faded: '#848484',
  /** Lines of bodies that are only a reminder. */
  pale: '#8a8a8a',
  /** New parts. About 24 % grey. */
  fresh: '#b8c4cf',
  /** Cut faces, and the panel's own face: light enough for 2.5 mm figures to stand on. */
  core: '#d2d2d2',
  panel: '#e9e9e9',
  /** On the map of a set of sheets: the sheet itself, and the lines between sheets. */
  here: '#bdbdbd',
  cell: '#8c8c8c',
} as const;

export type Ink = keyof typeof inks;
