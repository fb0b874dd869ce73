/** The panel in section and in plan: knife, crease, notch, tab. Skins are black, the core has the panel's tint. */
import { body, bold, box, ring, solid, stroke, thin, tint, together, white, type Ink } from '../ink.ts';
import type { Pair } from './pair.ts';

const core = solid(box(3, 20, 66, 20), tint);
const upperSkin = solid(`${box(3, 18, 26, 5)}${box(43, 18, 26, 5)}`);
const blade = (tip: number): Ink => together(body(`M30 3H42V${tip - 11}L36 ${tip}L30 ${tip - 11}z`), solid(box(26, 2, 20, 9)));
const slit = (tip: number): Ink => solid(`M28 17H44V${tip - 9}L36 ${tip + 3}L28 ${tip - 9}z`, white);

/** The lower skin stays whole as the hinge. */
export const halfCut: Pair = {
  right: together(core, slit(36), solid(box(3, 37, 66, 5)), upperSkin, blade(36)),
  wrong: together(core, slit(42), solid(box(28, 36, 16, 8), white), solid(`${box(3, 37, 26, 5)}${box(43, 37, 26, 5)}`), upperSkin, blade(46)),
};

const innerSkin = 'M8 44L27 28Q31 25 33 29Q36 35 39 29Q41 25 45 28L64 44';

/** The outer skin stays whole over the crease. */
export const crease: Pair = {
  right: together(
    solid('M3 35L30 9Q36 4 42 9L69 35L63 44L44 28Q41 25 39 29Q36 35 33 29Q31 25 28 28L9 44z', tint),
    stroke('M4.5 33L30 9.5Q36 4.5 42 9.5L67.5 33', 5),
    stroke(innerSkin, 3),
  ),
  wrong: together(
    solid('M3 35L30 9L33 16L36 11L39 16L42 9L69 35L63 44L44 28Q41 25 39 29Q36 35 33 29Q31 25 28 28L9 44z', tint),
    stroke('M4.5 33L29 10.5L26 5.5M67.5 33L43 10.5L46 5.5', 5),
    stroke('M33 5L34.5 13L37 9L38.5 19', thin),
    stroke(innerSkin, 3),
  ),
};

/** The inside corner of a notch is round; no cut runs on into the panel. */
export const notch: Pair = {
  right: together(
    solid('M3 3H69V21H46Q33 21 33 34V45H3z', tint),
    stroke('M69 21H46Q33 21 33 34V45', bold),
  ),
  wrong: together(
    solid('M3 3H69V21H33V45H3z', tint),
    stroke('M69 21H33V45', bold),
    stroke('M33 21V9M33 21H15', thin + 1),
  ),
};

/** The same where it is cut sharp: both cuts end in the corner. */
export const notchSharp: Pair = {
  right: together(
    solid('M3 3H69V21H33V45H3z', tint),
    stroke('M69 21H33V45', bold),
  ),
  wrong: notch.wrong,
};

const tubeAndFlap = (end: string): Ink => together(
  ring(19, 25, 8.5, 3),
  stroke(`M68 41.5H19A14 14 0 0 1 19 11Q25 11 29 15L45 ${end}`, bold),
);

/** The tab lies flat on the panel. */
export const tabFlat: Pair = {
  right: tubeAndFlap('35.5H66'),
  wrong: tubeAndFlap('35.5L65 20'),
};
