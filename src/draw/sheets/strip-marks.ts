import type { PanelHole, Vec2 } from '../../model/index.ts';
import { holeMark } from '../flat/hole-marks.ts';
import { line } from '../kit/marks.ts';
import type { Mark } from '../kit/marks.ts';
import type { Pen } from '../kit/pens.ts';
import { pens } from '../kit/pens.ts';
import type { Fit } from '../kit/fit.ts';
import { onPaper } from '../kit/fit.ts';
import { stripWidth } from './strip.ts';

/** The paper place of a spot of a strip, `at` mm along and `across` mm from its left edge. */
export const onStrip = (view: Fit, at: number, across: number): Vec2 => onPaper(view, [across, -at]);

/** A line from edge to edge of a strip. */
export const acrossStrip = (view: Fit, pen: Pen, at: number): Mark => line(pen, onStrip(view, at, 0), onStrip(view, at, stripWidth));

/** A hole as a strip has it: right through where it tells no depth. */
export type StripHole = Pick<PanelHole, 'diameter' | 'depth' | 'face'>;

export const throughHole = (diameter: number): StripHole => ({ diameter, depth: null, face: 'drawn' });

/** A hole at true size, with the cross to prick through. */
export function stripHole(view: Fit, at: number, across: number, hole: StripHole): readonly Mark[] {
  const [x, y] = onStrip(view, at, across);
  const reach = hole.diameter / 2 + 2.5;
  return [...holeMark(hole, [x, y], hole.diameter / 2, pens.hole), line(pens.hole, [x - reach, y], [x + reach, y]), line(pens.hole, [x, y - reach], [x, y + reach])];
}
