import { arcArrow, arrow } from '../arrows.ts';
import { black, body, bold, box, dashes, placed, stroke, straight, tint, together, type Ink } from '../ink.ts';
import { floor, rackFront } from '../motifs.ts';

const deckOnEdge = (x: number): Ink => body(box(x - 3.5, 18, 7, 25), tint);

/** A deck turned face down. */
export const turnDeck: Ink = together(
  body(box(3, 34, 42, 10), tint),
  stroke(`${straight(3, 34, 45, 34)}`, bold),
  stroke(`${straight(11, 39, 11, 44)}${straight(37, 39, 37, 44)}`, 3),
  arcArrow(24, 28, 16, 180, 360, { shaft: 4, head: 11 }),
);

/** Decks stand on edge, side by side. */
export const standDecks: Ink = together(
  floor(2, 46, 44.5),
  ...[6.5, 18].map(deckOnEdge),
  placed(31, 43, 34, body(box(-7, -22, 7, 22), tint)),
  arcArrow(22, 43, 35, 312, 272),
);

/** A post goes through the corner joints of all decks. */
export const pushPosts: Ink = together(
  floor(2, 46, 45),
  body(box(2.5, 17, 31, 9)),
  ...[19, 40].map((x) => body(box(x - 4, 10, 8, 34), tint)),
  arrow(3, 35, 13.5, 35, { shaft: 3, head: 8 }),
);

/** The bit goes through sleeve and post. */
export const drillPosts: Ink = together(
  body(box(34, 2.5, 8, 43)),
  body(box(31, 10, 14, 22), tint),
  stroke(straight(22, 21, 43, 21), 3),
  body('M15 17L21 19V23L15 25z', black),
  body('M2.5 13.5H15V28.5H2.5z'),
  body('M2.5 28.5H10L12 41H2.5z', black),
);

/** A pin through sleeve and post, a wing nut on its end. */
export const pinPosts: Ink = together(
  body(box(18, 2.5, 12, 43)),
  body(box(15, 10, 18, 28), tint),
  stroke(straight(8, 24, 40, 24), 3.4),
  body('M3 17H7.5V31H3z', black),
  body('M36 20L41 21L46 14.5V33.5L41 27L36 28z', black),
);

const lyingRack = (y: number): Ink => together(
  stroke(`${straight(4, y, 44, y)}${straight(4, y + 14, 44, y + 14)}`, 3),
  stroke(`${straight(9, y, 9, y + 14)}${straight(24, y, 24, y + 14)}${straight(39, y, 39, y + 14)}`, bold),
);

/** The lying item is turned onto its other face. */
export const turnItem: Ink = together(lyingRack(29.5), arcArrow(24, 24, 17, 180, 360, { shaft: 4, head: 11 }));

/** The lying item is stood on its feet. */
export const standUp: Ink = together(
  floor(2, 46, 45),
  rackFront(29, 43, 5, 44, [12, 25, 38]),
  stroke(`${dashes(3, 29, 23, 29, 3, 5.5)}${dashes(3, 40, 23, 40, 3, 5.5)}${straight(3, 33.5, 3, 35.5)}${straight(23, 33.5, 23, 35.5)}`, 2.5),
  arcArrow(24, 26, 20, 190, 265),
);

/** Two cables crossed over one face. */
export const brace: Ink = together(
  stroke(`${straight(10, 6, 38, 42)}${straight(38, 6, 10, 42)}`, 2.5),
  rackFront(8, 40, 2.5, 45.5, [7, 41]),
);
