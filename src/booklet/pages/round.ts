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

const edges: Readonly<Record<Side, string>> = { left: 'M8 10V38', right: 'M40 10V38', front: 'M6 38H42', back: 'M6 10H42' };

/** A panel from above, its front below, the side that is folded thick, and ringed the how-manieth it is, as the sides are numbered where they are creased. */
export const roundGlyph = (side: Side, number: string): Glyph => ({
  width: 48,
  svg: `<path d="M8 10H40V38H8z" fill="${colours.white}" stroke="${colours.ink}" stroke-width="2"/>`
    + `<path d="${edges[side]}" fill="none" stroke="${colours.ink}" stroke-width="7"/>`
    + `<circle cx="24" cy="24" r="9.5" fill="${colours.white}" stroke="${colours.ink}" stroke-width="2"/>`
    + `<text x="24" y="29" font-weight="700" text-anchor="middle" font-size="14">${number}</text>`,
});
