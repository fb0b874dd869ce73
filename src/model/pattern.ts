import type { Kit } from '../read/index.ts';
import { baseHole, tabHole } from './patterns/punched.ts';
import type { Flap, FlatPattern, Side, Vec2 } from './types.ts';
import { creasePlaces, halfCutPlace, widestGap, wrapOf, type Wrap } from './wrap.ts';

/** Straights per quarter of the notch's round corner. */
const ROUND_STEPS = 6;

/** From the middle of the post to where the panel may begin beside a corner joint. */
const notchReach = (kit: Kit): number =>
  kit.joint.stop + kit.joint.socketDepth + kit.practice.notchGap;

/**
 * The flat pattern of the panel wrapped on a frame whose opposite tubes' axes stand 2·`axes` apart, mm.
 * The inside rectangle stops `insideGap` short of the frame; all lines count outwards from it.
 */
export function flatPattern(kit: Kit, axes: Vec2): FlatPattern {
  const wrap = wrapOf(kit);
  const inset = kit.tube.outsideDiameter / 2 + kit.practice.insideGap;
  const sides: readonly Side[] = ['left', 'right', 'front', 'back'];
  const flaps = sides.map((side) => flapOf(kit, wrap, side, axes, inset));
  const reach = halfCutPlace(wrap) + wrap.tab;
  const notch = reach + notchReach(kit);
  return {
    thickness: wrap.thickness,
    skin: wrap.skin,
    neutralLayer: wrap.neutralLayer,
    wrapRadius: wrap.radius,
    blank: [2 * (axes[0] + reach), 2 * (axes[1] + reach)],
    inside: [axes[0] - inset, axes[1] - inset],
    axes,
    flaps,
    notch: [notch, notch],
    notchRadius: kit.practice.notchRadius,
    holes: flaps.flatMap((flap) => holesOf(kit, wrap, flap, axes, inset)),
    outline: outlineOf([axes[0] + reach, axes[1] + reach], notch, kit.practice.notchRadius, flaps[0]?.corner ?? 0),
  };
}

const runsAlongX = (side: Side): boolean => side === 'front' || side === 'back';

function flapOf(kit: Kit, wrap: Wrap, side: Side, axes: Vec2, inset: number): Flap {
  const half = (runsAlongX(side) ? axes[0] : axes[1]) - notchReach(kit);
  const halfCut = halfCutPlace(wrap) + inset;
  const edge = halfCut + wrap.tab;
  return {
    side,
    creases: creasePlaces(wrap).map((place) => place + inset),
    creaseAngle: wrap.creaseAngle,
    halfCut,
    edge,
    turnBack: wrap.turnBack,
    from: -half,
    to: half,
    corner: tabCorner(kit, wrap),
    pins: pinPlaces(kit, half),
    pinLine: edge - kit.practice.pinEdge,
    widestGap: widestGap(wrap, kit.practice.wrapClearance),
  };
}

/**
 * Snip that keeps neighbouring tabs apart: both reach past the notch by the same overlap, and two 45° snips of
 * that length would just touch on the diagonal; each longer by gap/√2 sets them a gap apart straight across.
 */
function tabCorner(kit: Kit, wrap: Wrap): number {
  const overlap = wrap.path.hingeInside + wrap.tab - notchReach(kit);
  return Math.max(kit.practice.tabCorner, overlap + kit.practice.notchGap / Math.SQRT2);
}

/** Both ends first, then evenly between, no further apart than the pitch. */
function pinPlaces(kit: Kit, half: number): readonly number[] {
  const end = half - kit.practice.pinEnd;
  const bays = Math.max(1, Math.ceil((2 * end) / kit.practice.pinPitch - 1e-9));
  const middle = Array.from({ length: bays - 1 }, (_, index) => -end + ((index + 1) * 2 * end) / bays);
  return [-end, end, ...middle];
}

/** A point `outwards` mm from the inside line of a side, `along` it, in panel coordinates. */
export function onSide(inside: Vec2, side: Side, along: number, outwards: number): Vec2 {
  switch (side) {
    case 'left': return [-inside[0] - outwards, along];
    case 'right': return [inside[0] + outwards, along];
    case 'front': return [along, -inside[1] - outwards];
    case 'back': return [along, inside[1] + outwards];
  }
}

function holesOf(kit: Kit, wrap: Wrap, flap: Flap, axes: Vec2, inset: number): FlatPattern['holes'] {
  const inside: Vec2 = [axes[0] - inset, axes[1] - inset];
  const folded = -(wrap.path.hingeInside + wrap.tab - kit.practice.pinEdge - inset);
  return flap.pins.flatMap((along) => [
    { ...tabHole(kit, onSide(inside, flap.side, along, flap.pinLine)), side: flap.side, in: 'tab' as const },
    { ...baseHole(kit, kit.panel, onSide(inside, flap.side, along, folded), 'drawn'), side: flap.side, in: 'base' as const },
  ]);
}

/** The cross-shaped outline, anticlockwise from the lower left notch. */
function outlineOf(half: Vec2, notch: number, radius: number, corner: number): readonly Vec2[] {
  const [x, y] = half;
  const quarter: Vec2[] = [
    [x, y - notch - corner],
    [x - corner, y - notch],
    ...notchCorner([x - notch, y - notch], radius),
    [x - notch, y - corner],
    [x - notch - corner, y],
  ];
  const mirrored = (sx: number, sy: number): Vec2[] => quarter.map(([px, py]) => [sx * px, sy * py]);
  return [
    ...mirrored(1, 1),
    ...mirrored(-1, 1).reverse(),
    ...mirrored(-1, -1),
    ...mirrored(1, -1).reverse(),
  ];
}

/** The rounded inside corner of the upper right notch, from the right to the top. */
export function notchCorner(corner: Vec2, radius: number): Vec2[] {
  const middle: Vec2 = [corner[0] + radius, corner[1] + radius];
  return Array.from({ length: ROUND_STEPS + 1 }, (_, index) => {
    const angle = -Math.PI / 2 - (index * Math.PI) / 2 / ROUND_STEPS;
    return [middle[0] + radius * Math.cos(angle), middle[1] + radius * Math.sin(angle)] as const;
  });
}
