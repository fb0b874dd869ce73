import { chained, jointPorts, type Part, type Pose, type Vec3 } from '../../model/index.ts';
import { carried } from '../found/vectors.ts';

/** Blocks leave pegs so far clear of the floor, mm: common practice, no source. */
export const PEGS_CLEAR = 7;
/** And so far the tips of pins that are driven through, on which a nut is turned, mm: common practice, no source. */
export const PINS_CLEAR = 9;
/** Room that a drill takes round its bit, mm: common practice, no source. */
export const DRILL_CLEAR = 30;
/** A peg points down whose cosine to the upright is less than minus this. */
const DOWN = 0.999;

/** Height of the tip of the lowest peg that points down, of joints among some parts as they lie, mm; Infinity where there is none. */
export const lowestPeg = (parts: readonly Part[], lying: Pose): number => Math.min(...pegTips(parts, lying).map(([, , high]) => high));

/** The tips of the pegs that point down. */
export const pegTips = (parts: readonly Part[], lying: Pose): readonly Vec3[] => parts.flatMap(({ shape, pose }) => {
  const own = chained(lying, pose);
  return (jointPorts(shape)?.ports ?? []).flatMap((port) => {
    if (port.is !== 'stud') return [];
    const [x, y, z] = port.axis;
    const [middle, tip] = [carried(own, 0, 0, 0), carried(own, x * port.reach, y * port.reach, z * port.reach)];
    return tip[2] - middle[2] < -DOWN * port.reach ? [tip] : [];
  });
});
