import { body, dot, solid, stroke, together, type Ink } from './ink.ts';

/** A plain standing figure whose feet stand at y = 45, middle line at x. */
const figure = (x: number): Ink => together(
  dot(x, 7.5, 5),
  solid(`M${x - 6.5} 15H${x + 6.5}L${x + 4.5} 31H${x - 4.5}z`),
  stroke(`M${x - 6.5} 16.8L${x - 9} 29M${x + 6.5} 16.8L${x + 9} 29`, 3.6),
  stroke(`M${x - 2.8} 30L${x - 3.6} 43.5M${x + 2.8} 30L${x + 3.6} 43.5`, 4.2),
);

/** A child beside a grown-up: as wide in the shoulders as its head. */
const child = (x: number): Ink => together(
  dot(x, 21, 4.6),
  solid(`M${x - 4.6} 27H${x + 4.6}L${x + 3.4} 37H${x - 3.4}z`),
  stroke(`M${x - 4.6} 28L${x - 6.6} 35.5M${x + 4.6} 28L${x + 6.6} 35.5`, 2.8),
  stroke(`M${x - 2} 36L${x - 2.5} 44M${x + 2} 36L${x + 2.5} 44`, 3.2),
);

const crossed = (x: number): Ink => stroke(`M${x - 9} 12L${x + 8.5} 44.5M${x + 8.5} 12L${x - 9} 44.5`, 6);

/** A pupil before the board of a school. */
const pupil: Ink = together(body('M5 2.5H43V15H5z', undefined, 3), child(24));

/** A post in its joint, a weight hung from it, and nobody has: crossed out. */
const untestedJoint: Ink = together(
  stroke('M16 3V45', 6), solid('M9 12H23V27H9z'), stroke('M23 19H34V27', 2), stroke('M28.5 28H39.5L42 41H26z', 2.2), stroke('M22 24L46 46M46 24L22 46', 2.2),
);

export const peoplePictures = {
  'one-person': figure(24),
  'two-people': together(figure(11.4), figure(36.6)),
  'for-adults': together(figure(13), child(36), crossed(36)),
  'for-anyone': together(child(11), figure(34)),
  'for-pupils': pupil,
  'untested-joint': untestedJoint,
} as const satisfies Readonly<Record<string, Ink>>;
