import type { Kit, PanelKind } from '../../read/index.ts';
import type { Pattern, PatternFlap, PatternHole, Side, Vec2 } from '../types.ts';
import { wrapAround, type Wrap } from '../wrap.ts';
import { boxOf, outlineOf, type SideProfile, type Stretch } from './outline.ts';
import { baseHole, tabHole } from './punched.ts';
import { atSide } from './sides.ts';
import { wrapFlap } from './wrap-flap.ts';

/** One bar along a side of a wrapped panel. Lengths mm, `from` and `to` along the side between the notches at its joints. */
export interface EdgeBar {
  readonly flap: string;
  readonly from: number;
  readonly to: number;
  /** Length of the shorter notch beside it, from the joint's middle. */
  readonly reach: number;
  readonly tube: number;
  /** Folded round the bar, pinned on it, or just up to its middle because another panel goes on there. */
  readonly hold: 'wrap' | 'pin' | 'share';
}

/** A side of a wrapped panel: its bars in order of `along`, `out` from the middle to their axis, and how deep the notch between two is. */
export interface EdgeSide {
  readonly side: Side;
  readonly out: number;
  readonly bars: readonly EdgeBar[];
  readonly notches: readonly number[];
}

/** How far inside a bar's axis the middle part of a panel ends and its flap begins, in the solid, mm. */
const BASE_END = 12;

/** The pattern of a panel on a rectangle of bars: flaps on those it is folded round, notches at every joint. */
export function wrappedPattern(kit: Kit, panel: PanelKind, sides: readonly EdgeSide[]): Pattern {
  const { practice } = kit;
  const edges = sides.map((side) => ({ side, flaps: side.bars.map((bar) => (bar.hold === 'wrap' ? flapOn(kit, panel, side, bar) : null)) }));
  const flaps = edges.flatMap((edge) => edge.flaps.filter((flap) => flap !== null));
  const profile = (edgeOut: (side: EdgeSide, bar: EdgeBar, flap: PatternFlap | null) => Stretch['edge']): readonly SideProfile[] => edges.map(({ side, flaps: own }) => ({
    side: side.side,
    stretches: side.bars.map((bar, place) => ({ from: bar.from, to: bar.to, edge: edgeOut(side, bar, own[place] ?? null) })),
    notches: side.notches.map((depth) => side.out - depth),
  }));
  const outline = outlineOf(profile((side, bar, flap) => (flap === null ? { out: bareEdge(kit, side, bar) } : { flap })), practice.notchRadius);
  const base = outlineOf(profile((side, bar, flap) => ({ out: flap === null ? bareEdge(kit, side, bar) : side.out - BASE_END })), practice.notchRadius);
  return {
    form: 'wrapped', panel: panel.name, thickness: panel.thickness, skin: panel.skin, neutralLayer: panel.neutralLayer,
    ...boxOf(outline), outline, base, flaps,
    holes: edges.flatMap(({ side, flaps: own }) => side.bars.flatMap((bar, place) => holesOn(kit, panel, side, bar, own[place] ?? null))),
  };
}

const flapOn = (kit: Kit, panel: PanelKind, { side, out }: EdgeSide, { flap, from, to, reach, tube }: EdgeBar): PatternFlap =>
  wrapFlap(panel, kit.practice, tube, { name: flap, side, root: out, from, to, reach });

/** Where a panel ends that is not folded: flush with the bar it is pinned on, or half a gap before the middle of one it shares. */
const bareEdge = ({ practice }: Kit, { out }: EdgeSide, { hold, tube }: EdgeBar): number =>
  (hold === 'share' ? out - practice.insideGap / 2 : out + tube / 2);

/** From the ends of a bare edge to its pins, and between pins, as flat panels have them. */
export function pinsBetween(from: number, to: number, end: number, pitch: number): readonly number[] {
  const [low, high] = [from + end, to - end];
  const bays = Math.max(1, Math.ceil((high - low) / pitch - 1e-9));
  return Array.from({ length: bays + 1 }, (_, index) => low + (index * (high - low)) / bays);
}

function holesOn(kit: Kit, panel: PanelKind, { side, out }: EdgeSide, { from, to, hold, tube }: EdgeBar, flap: PatternFlap | null): readonly PatternHole[] {
  const at = (along: number, far: number): Vec2 => atSide(side, along, far);
  if (flap !== null) {
    const folded = out - foldedPinLine(wrapAround(panel, kit.practice, tube), kit.practice.pinEdge);
    return flap.pins.flatMap((along) => [{ ...tabHole(kit, at(along, out + flap.pinLine)), flap: flap.name }, { ...baseHole(kit, panel, at(along, folded), 'drawn'), flap: null }]);
  }
  return hold === 'pin' ? edgePins(kit, from, to).map((along) => ({ at: at(along, out), diameter: kit.jointPin.diameter, depth: null, face: 'drawn' as const, punched: 'flat' as const, flap: null })) : [];
}

/** How far inside the bar's axis the pins of a folded tab stand. */
export const foldedPinLine = ({ path: { hingeInside }, tab }: Pick<Wrap, 'path' | 'tab'>, pinEdge: number): number => hingeInside + tab - pinEdge;

/** Places of the pins of an edge that is pinned on its bar. */
export const edgePins = ({ practice }: Kit, from: number, to: number): readonly number[] => pinsBetween(from, to, practice.pinEnd, practice.pinPitch);
