import type { Step } from '../../plan/index.ts';

/** All parts that a step's picture shows: they are there when it is done. */
export const partsShown = ({ present, newParts, motions }: Step): readonly string[] =>
  [...new Set([...present, ...newParts.flatMap(({ ids }) => ids), ...motions.flatMap((motion) => (motion.kind === 'slide' ? motion.parts : []))])];
