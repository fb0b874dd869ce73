import { BARB, KNOB, MOUTH, type Vec2 } from '../../model/index.ts';
import { area, circle, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { crossed, ticked } from '../kit/right-wrong.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import type { DrawnPicture } from '../types.ts';

/** A clip round a bar with its leaf, mm: the bar's outside; how thick the clip, how long its leaf, how far that is from the bar's axis. */
export interface ClipSide {
  readonly bar: number;
  readonly thickness: number;
  readonly leaf: number;
  readonly reach: number;
}

/** Two sorts of clips for one bar: by the knob on its back one is told from the other. */
export interface ClipKinds {
  /** Whether the step takes the one with the knob. */
  readonly hasKnob: boolean;
  readonly knobbed: ClipSide;
  readonly plain: ClipSide;
}

/** Height of the picture, mm of paper, and mm of paper for one mm. */
const HIGH = 40;
const SCALE = 0.5;
/** The place of the bar's axis under the upper edge, and the ring round a knob, mm of paper. */
const AXIS = 26;
const RING = 8;
const VERDICT = 1.3;

/** Both sorts seen along their bar, the knob ringed: ticked is that which the step takes, the other is crossed. */
export const clipKindsPicture = (kinds: ClipKinds, { width }: Pick<Paper, 'width'>): DrawnPicture => toPicture({ width, height: HIGH }, clipKindsMarks(kinds, width));

/** The marks of the picture, for the tests. */
export function clipKindsMarks({ hasKnob, knobbed, plain }: ClipKinds, width: number): readonly Mark[] {
  const [right, wrong]: readonly [Vec2, Vec2] = [[width * 0.24, AXIS], [width * 0.68, AXIS]];
  const clip = (at: Vec2, isKnobbed: boolean, fill: 'fresh' | 'white'): readonly Mark[] => [...clipMarks(isKnobbed ? knobbed : plain, at, fill, isKnobbed), ...(isKnobbed ? ringed(knobbed, at) : [])];
  return [...clip(right, hasKnob, 'fresh'), ...ticked([right[0] + 42, AXIS], VERDICT), ...clip(wrong, !hasKnob, 'white'), ...crossed([wrong[0] + 42, AXIS], VERDICT)];
}

/** The clip on its bar, open below, its leaf to the right. */
function clipMarks({ bar, thickness, leaf, reach }: ClipSide, [x, y]: Vec2, fill: 'fresh' | 'white', hasKnob: boolean): readonly Mark[] {
  const at = (right: number, up: number): Vec2 => [x + SCALE * right, y - SCALE * up];
  const [inner, outer] = [bar / 2, bar / 2 + thickness];
  const half = Math.asin(MOUTH * (inner / outer));
  const arc = (radius: number, gap: number): readonly Vec2[] => Array.from({ length: 41 }, (_, step): Vec2 => {
    const angle = -Math.PI / 2 + gap + ((2 * Math.PI - 2 * gap) * step) / 40;
    return at(radius * Math.cos(angle), radius * Math.sin(angle));
  });
  const ring = [...arc(outer, half), ...arc(inner, Math.asin(MOUTH)).toReversed()];
  const box = (left: number, right: number, low: number, high: number): readonly Vec2[] => [at(left, low), at(right, low), at(right, high), at(left, high)];
  const solids = [...(hasKnob ? [box(-outer - KNOB.length, -outer + 1, -KNOB.diameter / 2, KNOB.diameter / 2)] : []), box(-thickness, thickness, inner + 1, reach - thickness), box(-thickness, leaf, reach - thickness, reach), ring];
  const barb = box(leaf - BARB.fromEnd - BARB.diameter / 2, leaf - BARB.fromEnd + BARB.diameter / 2, reach, reach + BARB.length);
  return [circle([x, y], SCALE * inner, pens.edge, 'white'), area('white', barb), outline(pens.cut, barb), ...solids.flatMap((each) => [area(fill, each), outline(pens.cut, each)])];
}

/** The knob is pointed out. */
function ringed({ bar, thickness }: ClipSide, [x, y]: Vec2): readonly Mark[] {
  const middle = x - SCALE * (bar / 2 + thickness + KNOB.length / 2);
  return [circle([middle, y], RING, { ...pens.detail, width: 0.6 })];
}
