import { dot, solid, stroke, together, type Ink } from './ink.ts';

/** A plain standing figure whose feet stand at y = 45, middle line at x. */
const figure = (x: number): Ink => together(
  dot(x, 7.5, 5),
  solid(`M${x - 6.5} 15H${x + 6.5}L${x + 4.5} 31H${x - 4.5}z`),
  stroke(`M${x - 6.5} 16.8L${x - 9} 29M${x + 6.5} 16.8L${x + 9} 29`, 3.6),
  stroke(`M${x - 2.8} 30L${x - 3.6} 43.5M${x + 2.8} 30L${x + 3.6} 43.5`, 4.2),
);

export const peoplePictures = {
  'one-person': figure(24),
  'two-people': together(figure(11.4), figure(36.6)),
} as const satisfies Readonly<Record<string, Ink>>;
