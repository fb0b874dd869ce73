import type { Mark } from '../kit/marks.ts';
import type { Fit } from '../kit/fit.ts';
import type { Told } from '../../scene/index.ts';

/** Width of a paper strip, mm: five stand side by side on a sheet. */
export const stripWidth = 32;
/** Where holes stand across a strip, and the middles of their figures beside them, mm. */
export const holeAcross = 8.5;
export const holeLane = 23.3;

/** A figure on a strip, its middle in strip mm. */
export interface StripFigure {
  readonly at: number;
  readonly across: number;
  readonly told: Told;
}

/**
 * A paper strip with marks at true distances. In the view's model mm x is measured across the strip from its left
 * edge and −y along it, from its upper end: a strip reads downwards.
 */
export interface Strip {
  readonly kind: 'creases' | 'pins' | 'posts';
  readonly length: number;
  readonly draw: (view: Fit) => readonly Mark[];
  readonly figures: readonly StripFigure[];
  /** Where something stands along the strip: joins and labels keep away from there. */
  readonly places: readonly number[];
}
