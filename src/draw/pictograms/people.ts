import { body, dot, solid, stroke, together, white, type Ink } from './ink.ts';

/** A plain standing figure whose feet stand at y = 45, middle line at x. */
const figure = (x: number): Ink => together(
  dot(x, 7.5, 5),
  solid(`M${x - 6.5} 15H${x + 6.5}L${x + 4.5} 31H${x - 4.5}z`),
  stroke(`M${x - 6.5} 16.8L${x - 9} 29M${x + 6.5} 16.8L${x + 9} 29`, 3.6),
  stroke(`M${x - 2.8} 30L${x - 3.6} 43.5M${x + 2.8} 30L${x + 3.6} 43.5`, 4.2),
);

/** The shirt of the second of two people has stripes, as the sleeves of the hands have by which work is held. */
const striped = (x: number): Ink => stroke(`M${x - 10.2} 19.6H${x + 10.2}M${x - 10.2} 25.2H${x + 10.2}`, 2.2, white);

/** Somebody small on paper: head, trunk with its arms, and two legs, whose gaps stay open at 8 mm. Its feet stand at y = `foot`. */
function outline(x: number, foot: number, height: number, headRadius: number): Ink {
  const [shoulder, hip, half, leg] = [foot - height + 2 * headRadius + 1.7, foot - height * 0.38, height * 0.18, height * 0.12];
  const legAt = leg / 2 + 0.9;
  const at = (dx: number, y: number): string => `${Math.round((x + dx) * 100) / 100} ${Math.round(y * 100) / 100}`;
  return together(
    dot(x, foot - height + headRadius, headRadius),
    solid(`M${at(-half, shoulder + 2)}Q${at(-half, shoulder)} ${at(-half + 2, shoulder)}L${at(half - 2, shoulder)}Q${at(half, shoulder)} ${at(half, shoulder + 2)}L${at(half, hip)}L${at(-half, hip)}z`),
    solid(`M${at(-legAt - leg / 2, hip - 0.5)}L${at(-legAt + leg / 2, hip - 0.5)}L${at(-legAt + leg / 2, foot)}L${at(-legAt - leg / 2, foot)}z`),
    solid(`M${at(legAt - leg / 2, hip - 0.5)}L${at(legAt + leg / 2, hip - 0.5)}L${at(legAt + leg / 2, foot)}L${at(legAt - leg / 2, foot)}z`),
  );
}

/** A grown-up and a child whose heights are to be compared, of their height in units. */
export const grownUp = (x: number, foot: number, height: number): Ink => outline(x, foot, height, height * 0.115);
export const child = (x: number, foot: number, height: number): Ink => outline(x, foot, height, height * 0.16);

/** Tick and cross under those for whom an item is, and is not. */
const yes = (x: number): Ink => stroke(`M${x - 4.5} 41.5L${x - 1.5} 44.8L${x + 4.5} 36.5`, 3);
const no = (x: number): Ink => stroke(`M${x - 4} 37L${x + 4} 45M${x + 4} 37L${x - 4} 45`, 3);

/** A pupil before the board of a school, ticked: it is for such a child. */
const pupil: Ink = together(body('M4 2.5H44V18H4z', undefined, 3), stroke('M10 8.2H38M10 13H27', 2.2), child(14, 46, 25), yes(34));

/** A post in its joint, a weight hung from it, and nobody has: crossed out. */
const untestedJoint: Ink = together(
  stroke('M16 3V45', 6), solid('M9 12H23V27H9z'), stroke('M23 19H34V27', 2), stroke('M28.5 28H39.5L42 41H26z', 2.2), stroke('M22 24L46 46M46 24L22 46', 2.2),
);

export const peoplePictures = {
  'one-person': figure(24),
'one-child': child(24, 45, 36),
  'two-people': together(figure(11.4), figure(36.6), striped(36.6)),
  'for-adults': together(grownUp(13, 34, 31.5), yes(13), child(36, 34, 19), no(36)),
  'for-anyone': together(child(11, 34, 19), yes(11), grownUp(34, 34, 31.5), yes(34)),
  'for-pupils': pupil,
  'untested-joint': untestedJoint,
} as const satisfies Readonly<Record<string, Ink>>;
