/**
 * The colours of all drawings by what they mean: a drawing names one, here stands how it is printed. The grounds are
 * 20 grey levels and more from white and from each other, which a 300 dpi mono printer keeps apart (own default,
 * found by looking).
 */
export const colours = {
  ink: '#000',
  white: '#fff',
  /** Lines of earlier steps, of bodies that are only a reminder, between the sheets of a map: plain on a mono printer, on the panel too (luminance contrast 71 %), but behind the new ones. */
  faded: '#848484',
  /** New parts. About 24 % grey. */
  fresh: '#b8c4cf',
  /** Cut faces, and the panel's own face: light enough for 2.5 mm figures to stand on. */
  core: '#d2d2d2',
  panel: '#e9e9e9',
  /** The panel in pictograms: light enough for black lines on it, dark enough to stand out from paper when printed in grey. */
  board: '#d9d9d9',
  /** Openings that end blind: darker than all grounds, lighter than what is drawn on parts. */
  blind: '#6e6e6e',
  /** The sheet in hand on the map of a set of sheets. */
  here: '#bdbdbd',
} as const;

export type Colour = keyof typeof colours;
