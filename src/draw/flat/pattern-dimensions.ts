import type { FlatPattern, Vec2 } from '../../model/index.ts';
import { linearDimension, runningDimension } from '../kit/dimension.ts';
import { capHeights } from '../kit/lettering.ts';
import type { Mark } from '../kit/marks.ts';
import { flapOn, notchInner, snips } from './panel-lines.ts';
import type { Fit } from '../kit/fit.ts';
import { onPaper } from '../kit/fit.ts';
import type { Whole } from './whole.ts';
import { tell } from '../../scene/index.ts';

const cap = capHeights.pattern;
/** From the panel to the first row of dimensions, and between rows, in mm of paper. */
const nearRow = 4;
const rowPitch = cap + 4.5;
/** The running dimension of the right flap stands in the empty corner over that flap. */
const overFlap = 4;

/** Paper that the dimension rows take above, left and right of the blank. */
export const dimensionRoom = {
  above: nearRow + rowPitch + cap + 1.5,
  left: nearRow + rowPitch + cap + 1.5,
  right: 22,
} as const;

/** Distances of a flap's lines from its inside line: creases, half-cut, edge. */
export function flapPlaces(pattern: FlatPattern, side: 'right' | 'front'): readonly number[] {
  const flap = flapOn(pattern, side);
  return [...flap.creases, flap.halfCut, flap.edge];
}

/** Overall sides, the notch at the upper left corner, and the lines of the right flap from its inside line. */
export function patternDimensions(pattern: FlatPattern, whole: Whole): readonly Mark[] {
  return [...notchSize(pattern, whole), ...overall(pattern, whole), ...rightFlap(pattern, whole)];
}

function notchSize(pattern: FlatPattern, { view, blank }: Whole): readonly Mark[] {
  const [x, y] = onPaper(view, notchInner(pattern, [-1, 1]));
  const { atSide, atTop } = upperLeft(pattern, view);
  return [
    ...linearDimension({ axis: 'x', told: tell.mm(pattern.notch[0]), ends: [blank.x, x], line: blank.y - nearRow, feature: [atSide[1], atTop[1]], cap }),
    ...linearDimension({ axis: 'y', told: tell.mm(pattern.notch[1]), ends: [y, blank.y], line: blank.x - nearRow, feature: [atSide[0], atTop[0]], cap }),
  ];
}

function overall(pattern: FlatPattern, { view, blank }: Whole): readonly Mark[] {
  const away = nearRow + rowPitch;
  const [right, bottom] = [blank.x + blank.width, blank.y + blank.height];
  const { atSide, atTop } = upperLeft(pattern, view);
  return [
    ...linearDimension({ axis: 'x', told: tell.mm(pattern.blank[0]), ends: [blank.x, right], line: blank.y - away, feature: [atSide[1], blank.y], cap }),
    ...linearDimension({ axis: 'y', told: tell.mm(pattern.blank[1]), ends: [bottom, blank.y], line: blank.x - away, feature: [atTop[0], atTop[0]], cap }),
  ];
}

/** The outline's outermost points beside the upper left notch: on the left flap's edge and on the back flap's. */
function upperLeft(pattern: FlatPattern, view: Fit): { readonly atSide: Vec2; readonly atTop: Vec2 } {
  const [onSide, onTop] = snips(pattern, [-1, 1]);
  return { atSide: onPaper(view, onSide[1]), atTop: onPaper(view, onTop[1]) };
}

function rightFlap(pattern: FlatPattern, { view, blank }: Whole): readonly Mark[] {
  const flap = flapOn(pattern, 'right');
  const x = (outwards: number) => onPaper(view, [pattern.inside[0] + outwards, 0])[0];
  const top = onPaper(view, [0, flap.to])[1];
  const left = onPaper(view, notchInner(pattern, [1, 1]))[0];
  return runningDimension({
    axis: 'x', datum: x(0), line: top - overFlap, feature: top, cap,
    stations: flapPlaces(pattern, 'right').map((at) => ({ at: x(at), told: tell.mm(at) })),
    bounds: [left + 1.5, blank.x + blank.width + dimensionRoom.right - 1],
  });
}
