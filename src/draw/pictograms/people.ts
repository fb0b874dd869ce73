import { body, dot, solid, stroke, thin, together, type Ink } from './ink.ts';

/** A plain standing figure whose feet stand at y = `foot`, middle line at x; `size` 1 is 42.5 units high. */
const figure = (x: number, size = 1, foot = 45): Ink => {
  const at = (dx: number, dy: number): string => `${round(x + dx * size)} ${round(foot - dy * size)}`;
  return together(
    dot(x, foot - 37.5 * size, 5 * size),
    solid(`M${at(-6.5, 30)}L${at(6.5, 30)}L${at(4.5, 14)}L${at(-4.5, 14)}z`),
    stroke(`M${at(-6.5, 28.2)}L${at(-9, 16)}M${at(6.5, 28.2)}L${at(9, 16)}`, 3.6 * size),
    stroke(`M${at(-2.8, 15)}L${at(-3.6, 1.5)}M${at(2.8, 15)}L${at(3.6, 1.5)}`, 4.2 * size),
  );
};

const round = (value: number): number => Math.round(value * 100) / 100;

/** A child beside a grown-up: as wide in the shoulders as its head. Its feet stand at y = `foot`; `size` 1 is 28.6 units high. */
export const child = (x: number, foot = 45, size = 1): Ink => {
  const at = (dx: number, dy: number): string => `${round(x + dx * size)} ${round(foot - dy * size)}`;
  return together(
    dot(x, foot - 24 * size, 4.6 * size),
    solid(`M${at(-4.6, 18)}L${at(4.6, 18)}L${at(3.4, 8)}L${at(-3.4, 8)}z`),
    stroke(`M${at(-4.6, 17)}L${at(-6.6, 9.5)}M${at(4.6, 17)}L${at(6.6, 9.5)}`, Math.max(thin, 2.8 * size)),
    stroke(`M${at(-2, 9)}L${at(-2.5, 1)}M${at(2, 9)}L${at(2.5, 1)}`, 3.2 * size),
  );
};

/** A grown-up where a child's size must be seen. */
export const grownUp = figure;

/** Tick and cross under those for whom an item is, and is not. */
const yes = (x: number): Ink => stroke(`M${x - 4.5} 41.5L${x - 1.5} 44.8L${x + 4.5} 36.5`, 3);
const no = (x: number): Ink => stroke(`M${x - 4} 37L${x + 4} 45M${x + 4} 37L${x - 4} 45`, 3);

/** A pupil before the board of a school. */
const pupil: Ink = together(body('M5 2.5H43V15H5z', undefined, 3), child(24));

/** A post in its joint, a weight hung from it, and nobody has: crossed out. */
const untestedJoint: Ink = together(
  stroke('M16 3V45', 6), solid('M9 12H23V27H9z'), stroke('M23 19H34V27', 2), stroke('M28.5 28H39.5L42 41H26z', 2.2), stroke('M22 24L46 46M46 24L22 46', 2.2),
);

export const peoplePictures = {
  'one-person': figure(24),
  'two-people': together(figure(11.4), figure(36.6)),
  'for-adults': together(figure(13, 0.75, 34), yes(13), child(36, 34, 0.72), no(36)),
  'for-anyone': together(child(11, 34, 0.72), yes(11), figure(34, 0.75, 34), yes(34)),
  'for-pupils': pupil,
  'untested-joint': untestedJoint,
} as const satisfies Readonly<Record<string, Ink>>;
