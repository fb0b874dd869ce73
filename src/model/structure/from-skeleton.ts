import { panelKinds, tubeKinds, type Item, type Named, type PanelKind, type Skeleton, type SkeletonBar, type SkeletonFitting, type TubeKind } from '../../read/index.ts';
import type { PartKind, PartPlace, Vec3 } from '../types.ts';
import { minus, plus, times, unit } from '../vectors.ts';
import { isSamePlace } from './nodes.ts';
import type { Blueprint, Labelled, PlannedPanel } from './types.ts';

/** What the file tells of one size as a blueprint: names become ids, points become places, the middle of the plan comes to x = y = 0. */
export function blueprintOf(item: Item, skeleton: Skeleton): Blueprint {
  const move = middleOf(skeleton);
  const places = new Map(skeleton.points.map(({ name, at }) => [name, minus(at, move)]));
  const at = (point: string): Vec3 => places.get(point) ?? [0, 0, 0];
  return {
    bars: skeleton.bars.map((bar) => ({
      ...labelled(bar, 'bar'), from: at(bar.from), to: at(bar.to), through: bar.through.map(at),
      tube: named(tubeKinds(item.kit), bar.tube), pinned: bar.pinned, side: [0, 1, 0],
      pins: (index) => ({ pin: `pin ${bar.name} ${index}`, nut: `nut ${bar.name} ${index}`, place: { at: 'part', part: bar.name, index } }),
    })),
    joints: [],
    isLenient: false,
    panels: skeleton.panels.map((panel): PlannedPanel => {
      const shared = { ...labelled(panel, panel.is === 'flat' ? 'flat-panel' : 'panel'), panel: named<PanelKind>(panelKinds(item.kit), panel.panel), face: panel.face, pins: pinLabels(panel.name) };
      switch (panel.is) {
        case 'wrapped': return { ...shared, is: 'wrapped', loop: panel.loop, wrap: panel.wrap };
        case 'tray': return { ...shared, is: 'tray', loop: panel.loop, wrap: panel.wrap, depth: panel.depth };
        case 'flat': return { ...shared, is: 'flat', on: panel.on, pinned: panel.pinned, length: panel.length, over: panel.over, lift: panel.lift };
      }
    }),
    cables: skeleton.cables.map((cable) => ({ ...labelled(cable, 'cable'), from: at(cable.from), to: at(cable.to), face: cable.face })),
    fittings: skeleton.fittings.map((fitting) => ({
      ...labelled(fitting, 'fitting'), fitting: fitting.fitting, bar: fitting.on, panel: fitting.panel, face: fitting.face, at: placeOf(fitting, skeleton, at),
    })),
    jointAt: (place) => {
      const point = skeleton.points.find((each) => isSamePlace(at(each.name), place))?.name ?? '';
      return { id: `joint ${point}`, place: { at: 'point', point } };
    },
  };
}

const labelled = ({ name, of, index, position, field }: Named, kind: PartKind): Labelled =>
  ({ id: name, kind, place: { at: 'named', name: of, index }, group: null, told: { position, field } });

const pinLabels = (panel: string): PlannedPanel['pins'] => (flap, index) => {
  const place: PartPlace = { at: 'part', part: panel, index };
  return { id: `pin ${panel} ${flap} ${index}`, nut: `nut ${panel} ${flap} ${index}`, place };
};

function named<Kind extends TubeKind | PanelKind>(kinds: readonly Kind[], name: string): Kind {
  const kind = kinds.find((each) => each.name === name);
  if (kind === undefined) throw new RangeError(`the kit has no ${name}`);
  return kind;
}

/** Middle of the box round all bars, on the floor plan: an item stands in the middle whatever its file measures from. */
function middleOf({ bars, points }: Skeleton): Vec3 {
  const ends = new Set(bars.flatMap(({ from, to }) => [from, to]));
  const places = points.filter(({ name }) => ends.has(name)).map(({ at }) => at);
  const middle = (axis: 0 | 1): number => (places.length === 0 ? 0 : (Math.min(...places.map((at) => at[axis])) + Math.max(...places.map((at) => at[axis]))) / 2);
  return [middle(0), middle(1), 0];
}

function placeOf({ on, at: where }: SkeletonFitting, { bars }: Skeleton, at: (point: string) => Vec3): Vec3 {
  if ('point' in where) return at(where.point);
  const bar: SkeletonBar | undefined = bars.find(({ name }) => name === on);
  if (bar === undefined) return [0, 0, 0];
  return plus(at(bar.from), times(unit(minus(at(bar.to), at(bar.from))), where.along));
}
