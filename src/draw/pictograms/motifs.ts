/** Things that come back in many pictures, drawn the same way each time. */
import { black, body, box, placed, ring, solid, straight, stroke, thin, tint, together, type Ink } from './ink.ts';

/** A pencil whose point is at (x, y); it lies towards `angle`. */
export const pencil = (x: number, y: number, angle: number, length: number, half: number): Ink =>
  placed(x, y, angle,
    body(`M1.5 0L${half * 2} ${-half}H${length}V${half}H${half * 2}z`),
    stroke(straight(half * 2, -half, half * 2, half), thin),
    solid(`M0 0L${half} ${-half * 0.62}V${half * 0.62}z`),
  );

/** A knife whose point is at (x, y), edge to the left of the direction in which it lies. */
export const knife = (x: number, y: number, angle: number, length: number, half: number): Ink =>
  placed(x, y, angle,
    body(`M1 ${-half * 0.72}L${half * 1.6} ${half * 0.72}H${length * 0.5}V${-half * 0.72}z`),
    body(`M${length * 0.42} ${-half}H${length}V${half}H${length * 0.42}z`, black),
  );

/** A tube seen from its side, from x1 to x2, middle line at y. */
export const tubeSide = (x1: number, x2: number, y: number, half: number): Ink =>
  body(box(x1, y - half, x2 - x1, half * 2));

/** A tube cut across. */
export const tubeSection = (x: number, y: number, radius: number): Ink => ring(x, y, radius, 3);

/** A sheet of panel seen from above. */
export const panelPlan = (x: number, y: number, width: number, height: number): Ink => body(box(x, y, width, height), tint);

/** A strip of panel along an edge, seen from its side. */
export const panelStrip: Ink = body(box(2.5, 30, 43, 13), tint);

/** A panel pin seen from its side: head at (x, y) above the panel, shank downwards. */
export const pinSide = (x: number, y: number, half: number, shank: number): Ink =>
  together(
    stroke(straight(x, y, x, y + shank), 3),
    solid(`M${x - half} ${y}Q${x - half} ${y - half * 0.9} ${x} ${y - half * 0.9}T${x + half} ${y}z`),
  );

/** The floor. */
export const floor = (x1: number, x2: number, y: number): Ink => stroke(straight(x1, y, x2, y), thin);

/** An item of decks from its front: two posts and decks at the given heights. */
export const itemFront = (left: number, right: number, top: number, bottom: number, decks: readonly number[]): Ink =>
  together(
    stroke(`${straight(left, top, left, bottom)}${straight(right, top, right, bottom)}`, 3),
    ...decks.map((y) => stroke(straight(left, y, right, y), 4)),
  );
