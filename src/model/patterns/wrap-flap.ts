import type { PanelKind, Practice } from '../../read/index.ts';
import type { Bend, PatternFlap, Side } from '../types.ts';
import { halfCutPlace, widestGap, wrapAround, type Wrap } from '../wrap.ts';

/** The bends of a flap round a bar, from the tangent point on; `way` is 1 towards the inner face, −1 away from it. */
export function wrapBends(wrap: Wrap, tangent: number, way: 1 | -1): readonly Bend[] {
  const creases = wrap.path.creases.map(({ at, turn }): Bend => ({ at: tangent + at, turn: way * turn, is: 'crease' }));
  return [...creases, { at: tangent + halfCutPlace(wrap), turn: -way * wrap.turnBack, is: 'half-cut' }];
}

/** The creases from the inside outwards but for the last, then the tab back, then the last crease presses the tab down. */
export const wrapOrder = (first: number, creases: number): readonly number[] =>
  [...Array.from({ length: creases - 1 }, (_, place) => first + place), first + creases, first + creases - 1];

/** Both ends first, then evenly between, no further apart than the pitch. */
export function pinPlaces(from: number, to: number, practice: Practice): readonly number[] {
  const [low, high] = [from + practice.pinEnd, to - practice.pinEnd];
  const bays = Math.max(1, Math.ceil((high - low) / practice.pinPitch - 1e-9));
  const middle = Array.from({ length: bays - 1 }, (_, index) => low + ((index + 1) * (high - low)) / bays);
  return [low, high, ...middle];
}

/** Snip that keeps neighbouring tabs apart, see `pattern.ts`; `reach` is the length of the shortest notch beside the tab. */
export const snipOf = (wrap: Wrap, practice: Practice, reach: number): number =>
  Math.max(practice.tabCorner, wrap.path.hingeInside + wrap.tab - reach + practice.notchGap / Math.SQRT2);

/** A flap that is folded round a bar and pinned to the panel it comes from. `root` is the bar's axis; its line stays clear of the bar, to be seen beside it. */
export function wrapFlap(panel: PanelKind, practice: Practice, tube: number, where: { readonly name: string; readonly side: Side; readonly root: number; readonly from: number; readonly to: number; readonly reach: number }): PatternFlap {
  const wrap = wrapAround(panel, practice, tube);
  const edge = halfCutPlace(wrap) + wrap.tab;
  const { name, side, root, from, to, reach } = where;
  return {
    name, side, root, line: -(tube / 2 + practice.insideGap), edge, wall: 0,
    bends: wrapBends(wrap, 0, 1),
    order: wrapOrder(0, wrap.creases),
    strips: [{ from: 0, to: edge, start: from, end: to }],
    corner: snipOf(wrap, practice, reach),
    pins: pinPlaces(from, to, practice),
    pinLine: edge - practice.pinEdge,
    lugs: [],
    widestGap: widestGap(wrap, practice.wrapClearance),
  };
}
