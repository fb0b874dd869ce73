import { colours } from '../../draw/index.ts';
import type { Side } from '../../model/index.ts';
import type { Plan, Step } from '../../plan/index.ts';
import type { Glyph } from './types.ts';

/** Which side a step folds, and the how-manieth of how many sides of one piece that is. */
export interface Round {
  readonly side: Side;
  readonly number: number;
  readonly of: number;
}

/** Null for a step that folds no side, or the only one. */
export function roundOf({ steps }: Plan, step: Step): Round | null {
  if (step.side === null || !step.motions.some(({ kind }) => kind === 'fold')) return null;
  const alike = steps.filter((other) => other.action === step.action && other.run === step.run && other.side !== null);
  return alike.length > 1 ? { side: step.side, number: alike.indexOf(step) + 1, of: alike.length } : null;
}

/** A panel from above, its front below, with one side thick. */
const sided = (d: string): Glyph => ({
  width: 48,
  svg: `<path d="M8 12H40V36H8z" fill="${colours.white}" stroke="${colours.ink}" stroke-width="2"/><path d="${d}" fill="none" stroke="${colours.ink}" stroke-width="7"/>`,
});

export const sideGlyphs: Readonly<Record<Side, Glyph>> = {
  left: sided('M8 13V35'),
  right: sided('M40 13V35'),
  front: sided('M9 36H39'),
  back: sided('M9 12H39'),
};
