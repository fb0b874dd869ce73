import type { FlatPattern } from '../../model/index.ts';
import type { Box } from '../types.ts';
import type { Mark } from '../kit/marks.ts';
import { area } from '../kit/marks.ts';
import type { Bounds, Fit } from '../kit/fit.ts';
import { allOnPaper, boxOnPaper, fitToScale } from '../kit/fit.ts';
import { rectangle } from './panel-lines.ts';
import { signOnPattern } from './sign-place.ts';
import type { SignSeen } from './marked-face.ts';

/** The whole panel on the paper: its view, and the blank's box in it. */
export interface Whole {
  readonly view: Fit;
  readonly blank: Box;
}

/** Fits the blank into a box. */
export function placeWhole(pattern: FlatPattern, box: Box): Whole {
  const extent = blankExtent(pattern);
  const view = fitToScale(extent, box);
  return { view, blank: boxOnPaper(view, extent) };
}

function blankExtent({ blank }: FlatPattern): Bounds {
  return { min: [-blank[0] / 2, -blank[1] / 2], max: [blank[0] / 2, blank[1] / 2] };
}

/** Marks of the whole panel on its light ground: the blank, or its outline once it is notched; and the sign of the marked face. */
export function wholeMarks(pattern: FlatPattern, { view }: Whole, notched: boolean, marks: readonly Mark[], sign: SignSeen = 'there'): Mark {
  const ground = notched ? pattern.outline : rectangle([pattern.blank[0] / 2, pattern.blank[1] / 2]);
  return { mark: 'view', name: 'whole', scale: view.scale, marks: [area('panel', allOnPaper(view, ground)), ...marks, ...signOnPattern(pattern.inside, view, sign, pattern.holes)] };
}
