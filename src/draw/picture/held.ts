import type { Vec2 } from '../../model/index.ts';
import type { Mark } from '../../scene/index.ts';
import { HAND_HIGH } from '../flat/hands.ts';
import { onPaper, type Fit } from '../kit/fit.ts';
import type { Box } from '../types.ts';
import { project, type Plane } from './plane.ts';
import type { Disc } from './rings.ts';

/** Hands are drawn smaller than where a hand is the matter of a picture. */
export const HELD_SIZE = 0.7;
/** From the middle of a hand to its sides, and how high it stands over its place, mm of paper. */
const HALF = 6 * HELD_SIZE;
const HIGH = HAND_HIGH * HELD_SIZE;

/** Where hands hold the work, on paper. */
export const handsOnPaper = (marks: readonly Mark[], plane: Plane, fit: Fit): readonly Vec2[] =>
  marks.flatMap((mark) => (mark.mark === 'hand' ? [onPaper(fit, project(plane, mark.at))] : []));

/** The room of a hand, as a box and as a disc. */
export const handBox = ([x, y]: Vec2): Box => ({ x: x - HALF, y: y - HIGH, width: 2 * HALF, height: HIGH + HALF / 2 });
export const handDisc = ([x, y]: Vec2): Disc => ({ centre: [x, y - HIGH / 2], radius: HALF });
