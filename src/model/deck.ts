import type { Kit } from '../read/index.ts';
import { WRAPPED } from './folding.ts';
import { buildFrame, SIDES, tubeId } from './frame.ts';
import { makePart } from './make-part.ts';
import { flatPattern } from './pattern.ts';
import { chained, moved } from './pose.ts';
import type { Connection, FlatPattern, Joining, Part, Shape, Side, Vec2, Vec3 } from './types.ts';

/**
 * A deck in its building pose: the panel lies inner face up in the plane z = 0, the frame on it with the
 * tubes' axes at the wrap radius. Origin in the middle; x along the long tubes.
 */
export interface Deck {
  readonly pattern: FlatPattern;
  /** Half distances between the posts' axes. */
  readonly axes: Vec2;
  readonly parts: readonly Part[];
  readonly joinings: readonly Joining[];
  readonly connections: readonly Connection[];
}

/** Half distances between post axes for tubes of these lengths: a tube ends at the joint's stop. */
export const axesFor = (kit: Kit, width: number, depth: number): Vec2 =>
  [width / 2 + kit.joint.stop, depth / 2 + kit.joint.stop];

/** Half distances of the outermost of some points from the middle, on the floor plan. */
export const axesOfDeck = (points: readonly Vec3[]): Vec2 =>
  [Math.max(...points.map(([x]) => Math.abs(x))), Math.max(...points.map(([, y]) => Math.abs(y)))];

/** One deck of long tubes `width` and short tubes `depth` (mm). */
export function buildDeck(kit: Kit, width: number, depth: number): Deck {
  const axes = axesFor(kit, width, depth);
  const pattern = flatPattern(kit, axes);
  const frame = buildFrame(kit, axes, width, depth, SIDES, 'down', pattern.wrapRadius);
  const panel = makePart(kit, 'panel', 'panel', { at: 'base' }, { form: 'panel', pattern, folding: WRAPPED }, chained());
  const pinned = pattern.flaps.map(({ side }) => ({ side, pins: tabPins(kit, pattern, side) }));
  const pins = pinned.flatMap((each) => each.pins);
  return {
    pattern,
    axes,
    parts: [...frame.parts, panel, ...pins],
    joinings: [...frame.joinings, ...pins.map((pin): Joining => ({ by: 'tab-pin', pin: pin.id, panel: panel.id }))],
    connections: [...frame.connections, ...pinned.flatMap((each) => heldBySide(each.side, each.pins))],
  };
}

/** The panel lies under the tube, which the side's flap goes round; pins press its tab down. */
const heldBySide = (side: Side, pins: readonly Part[]): readonly Connection[] => [
  { is: 'lay', panel: 'panel', bar: tubeId(side), out: [0, 0, -1] },
  { is: 'wrap', panel: 'panel', flap: side, bar: tubeId(side) },
  ...pins.map((pin): Connection => ({ is: 'panel-pin', pin: pin.id, panel: 'panel', flap: side, out: [0, 0, 1] })),
];

/** Pins of one side, both ends first. The head stands on the folded tab. */
function tabPins(kit: Kit, pattern: FlatPattern, side: Side): Part[] {
  const shape: Shape = { form: 'pin', ...kit.panelPin };
  return pattern.holes.filter((hole) => hole.in === 'base' && hole.side === side).map(({ at }, index) =>
    makePart(kit, `panel-pin-${side}-${index + 1}`, 'panel-pin', { at: 'tab', side, index: index + 1 }, shape, moved([at[0], at[1], pattern.thickness + HEAD_LIFT])));
}

/** The tab lies a hair over the panel, and the head a hair over the tab. */
const HEAD_LIFT = 0.05;
