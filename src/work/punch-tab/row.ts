import type { CornerRow, TabRow } from '../../draw/work-kit/index.ts';
import { lengthOf, minus, placed, undone, type Model, type Pattern, type PatternFlap, type Shape } from '../../model/index.ts';
import type { Step } from '../../plan/index.ts';
import { isBlockHeld } from './block-held.ts';

/** The row of holes that a step punches along a side, or those in each corner of a box; null where it punches others. */
export function rowOf(model: Model, step: Step): TabRow | CornerRow | null {
  return step.detail.on === 'side' ? alongSide(model, step) : inCorners(model, step);
}

function alongSide(model: Model, step: Step): TabRow | null {
  const { parts, connections, kit: { practice: { pinEnd } } } = model;
  const { drillsFor, detail } = step;
  const [first, ...more] = parts.filter(({ id }) => drillsFor.includes(id)).map(({ pose }) => placed(pose, [0, 0, 0]));
  const held = connections.find((each) => each.is === 'panel-pin' && drillsFor.includes(each.pin));
  const panel = held?.is === 'panel-pin' ? parts.find(({ id }) => id === held.panel) : undefined;
  if (first === undefined || held?.is !== 'panel-pin' || panel === undefined) return null;
  const at = [0, ...more.map((point) => lengthOf(minus(point, first)))].sort((a, b) => a - b).map((far) => rounded(pinEnd + far));
  return { stands: false, at, length: (at.at(-1) ?? 0) + pinEnd, ...endOf(panel.shape, held.flap, detail), isBlockHeld: isBlockHeld(model, step) };
}

/** The tab at the end of a flap: how deep it is, and its corners. */
function endOf(shape: Shape, name: string, detail: Step['detail']): Pick<TabRow, 'deep' | 'corner'> {
  if (shape.form === 'panel') {
    const flap = shape.pattern.flaps.find(({ side }) => detail.on === 'side' && side === detail.side) ?? shape.pattern.flaps[0];
    return { deep: (flap?.edge ?? 0) - (flap?.halfCut ?? 0), corner: flap?.corner ?? 0 };
  }
  if (shape.form !== 'folded') throw new RangeError(`a ${shape.form} has no tab to punch`);
  const flap = shape.pattern.flaps.find((each) => each.name === name);
  return { deep: (flap?.edge ?? 0) - (flap?.bends.at(-1)?.at ?? 0), corner: flap?.corner ?? 0 };
}

/** Over the floor of the box, its inner face, in the first of the corners, which are all alike. */
function inCorners({ parts, connections }: Model, { drillsFor }: Step): CornerRow | null {
  const held = connections.flatMap((each) => (each.is === 'panel-pin' && drillsFor.includes(each.pin) ? [each] : []));
  const corners = [...new Set(held.map(({ panel, flap }) => `${panel} ${flap}`))];
  const [first] = held;
  const box = parts.find(({ id }) => id === first?.panel);
  if (first === undefined || box === undefined) return null;
  const own = held.filter(({ panel, flap }) => panel === first.panel && flap === first.flap).map(({ pin }) => pin);
  const at = parts.filter(({ id }) => own.includes(id)).map(({ pose }) => rounded(placed(undone(box.pose), placed(pose, [0, 0, 0]))[2])).sort((a, b) => a - b);
  const tab = box.shape.form === 'folded' ? tabOf(box.shape.pattern, first.flap) : null;
  const [lowest = 0] = at;
  const [below, above] = tab === null ? [lowest, lowest] : [(tab.pins[0] ?? 0) - tab.from, tab.to - (tab.pins[0] ?? 0)];
  return { stands: true, isBlockHeld: true, at, tab: [rounded(lowest - below), rounded(lowest + above)], corners: corners.length };
}

/** A corner tab by its name. */
const tabOf = ({ flaps }: Pattern, name: string): PatternFlap['lugs'][number] | null => flaps.flatMap(({ lugs }) => lugs).find((lug) => lug.name === name) ?? null;

const rounded = (mm: number): number => Math.round(2 * mm) / 2;
