import type { FlatPattern, Vec2 } from '../../model/index.ts';
import type { DrawnPicture } from '../types.ts';
import type { Mark } from '../kit/marks.ts';
import { blankStage } from './stages/blank.ts';
import { creaseStage } from './stages/crease.ts';
import { creasesStage } from './stages/creases.ts';
import { halfCutStage } from './stages/half-cut.ts';
import { holesStage } from './stages/holes.ts';
import { insideStage } from './stages/inside.ts';
import { notchesCutStage } from './stages/notches-cut.ts';
import { notchesStage } from './stages/notches.ts';
import type { Kept } from './on-stock.ts';
import { stepPaper } from './step-paper.ts';
import type { Paper } from '../kit/svg.ts';
import { toPicture } from '../kit/svg.ts';

/** A step of marking and cutting the panel, in the order of work; the first one takes the stock panel's sides in mm. */
export type Marking =
  | { readonly stage: 'blank'; readonly stock: Vec2; /** Its sides along those of the stock panel. */ readonly laid?: Vec2; readonly kept?: Kept }
  /** What falls off is kept for later steps, by their numbers. */
  | { readonly stage: 'notches-cut'; readonly keptFor?: readonly number[] }
  | { readonly stage: 'inside' | 'creases' | 'notches' | 'holes' | 'crease' | 'half-cut' };

/**
 * One step of marking or cutting the flat panel, inner face up. What is new is black and dimensioned, what
 * earlier steps left is thin and grey; lines under 4 mm apart are shown again in an enlarged strip or ring.
 * Throws a RangeError when the paper is too small, or when the blank does not fit on the stock panel.
 */
export function markingPicture(pattern: FlatPattern, marking: Marking, paper: Paper = stepPaper): DrawnPicture {
  return toPicture(paper, stageMarks(pattern, marking, paper));
}

/** The marks of the picture, for the tests. */
export function stageMarks(pattern: FlatPattern, marking: Marking, paper: Paper): readonly Mark[] {
  switch (marking.stage) {
    case 'blank': return blankStage(marking.laid ?? pattern.blank, marking.stock, paper, marking.kept);
    case 'inside': return insideStage(pattern, paper);
    case 'creases': return creasesStage(pattern, paper);
    case 'notches': return notchesStage(pattern, paper);
    case 'holes': return holesStage(pattern, paper);
    case 'notches-cut': return notchesCutStage(pattern, paper, marking.keptFor);
    case 'crease': return creaseStage(pattern, paper);
    case 'half-cut': return halfCutStage(pattern, paper);
  }
}
