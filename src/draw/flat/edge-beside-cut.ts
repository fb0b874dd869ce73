import type { Vec2 } from '../../model/index.ts';
import { allOnPaper, type Fit } from '../kit/fit.ts';
import { area, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';

/** A straight-edge on a panel, mm: its width, how far it reaches past the cut, how far from its ends the clamps are. */
const EDGE = { wide: 40, past: 28, clamp: 12 } as const;
/** A clamp's jaw on it, mm. */
const JAW = { along: 12, across: 26 } as const;

/** The straight-edge as it lies on a panel beside a cut, on the side of the panel's middle, a strip's thickness from the line, a clamp on either end; places in mm of the panel. */
export function edgeBesideCut(view: Fit, [from, to]: readonly [Vec2, Vec2], middle: Vec2, strip: number): readonly Mark[] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const along: Vec2 = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const across: Vec2 = (middle[0] - from[0]) * -along[1] + (middle[1] - from[1]) * along[0] > 0 ? [-along[1], along[0]] : [along[1], -along[0]];
  const at = (far: number, off: number): Vec2 => [from[0] + far * along[0] + off * across[0], from[1] + far * along[1] + off * across[1]];
  const box = (start: number, end: number, near: number, off: number): readonly Vec2[] => allOnPaper(view, [at(start, near), at(end, near), at(end, off), at(start, off)]);
  const edge = box(-EDGE.past, length + EDGE.past, strip, strip + EDGE.wide);
  const jaw = (far: number): Mark => area('ink', box(far - JAW.along / 2, far + JAW.along / 2, strip + EDGE.wide - JAW.across, strip + EDGE.wide));
  return [area('white', edge), outline(pens.edge, edge), jaw(-EDGE.past + EDGE.clamp + JAW.along), jaw(length + EDGE.past - EDGE.clamp - JAW.along)];
}
