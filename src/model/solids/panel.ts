import type { Manifold, ManifoldToplevel } from 'manifold-3d';
import { notchCorner } from '../pattern.ts';
import { foldSection, type TabPlace } from '../section.ts';
import type { Flap, FlatPattern, Shape, Side, Vec2 } from '../types.ts';
import { patternWrap } from '../wrap.ts';
import { holeRod } from './hole-rod.ts';
import { rod } from './round.ts';

/** How far inside the tube's axis line the flap's section begins; it overlaps the middle part there. */
const FLAP_START = -25;
const BASE_END = -12;
/** A fold is never pressed quite home: two faces in one plane would melt the tab into the panel. */
const NEARLY_HOME = 0.99992;

/** The panel with its flaps at any stage of folding, holes included. */
export function buildPanel(kernel: ManifoldToplevel, shape: Extract<Shape, { form: 'panel' }>): Manifold {
  const { pattern, folding, split } = shape;
  const flap = (one: Flap, start: number): Manifold => buildFlap(kernel, pattern, one, folding[one.side], start);
  const alone = pattern.flaps.find((one) => split?.piece === 'flap' && one.side === split.side);
  if (alone !== undefined) return flap(alone, BASE_END);
  const flaps = pattern.flaps.filter((one) => one.side !== split?.side).map((one) => flap(one, FLAP_START));
  return kernel.Manifold.union([buildBase(kernel, pattern), ...flaps]);
}

/** The middle part up to just inside the tubes' axes, notched at the corners. */
function buildBase(kernel: ManifoldToplevel, pattern: FlatPattern): Manifold {
  const flat = extruded(kernel, baseOutline(pattern), pattern.thickness).translate(0, 0, -pattern.thickness);
  const holes = pattern.holes.filter((hole) => hole.in === 'base').map((hole) =>
    holeRod(kernel, pattern, hole).translate(hole.at[0], hole.at[1], 0));
  return kernel.Manifold.difference([flat, ...holes]);
}

function baseOutline(pattern: FlatPattern): Vec2[] {
  const corner: Vec2 = [pattern.blank[0] / 2 - pattern.notch[0], pattern.blank[1] / 2 - pattern.notch[1]];
  const end: Vec2 = [pattern.axes[0] + BASE_END, pattern.axes[1] + BASE_END];
  const quarter: Vec2[] = [[end[0], corner[1]], ...notchCorner(corner, pattern.notchRadius), [corner[0], end[1]]];
  const mirrored = (sx: number, sy: number): Vec2[] => quarter.map(([x, y]) => [sx * x, sy * y]);
  return [...mirrored(1, 1), ...mirrored(-1, 1).reverse(), ...mirrored(-1, -1), ...mirrored(1, -1).reverse()];
}

function extruded(kernel: ManifoldToplevel, outline: readonly Vec2[], height: number): Manifold {
  return kernel.Manifold.extrude([outline.map(([x, y]): [number, number] => [x, y])], height);
}

/** Built with a along x, the side along y, b along z; then turned to its side of the panel. */
function buildFlap(kernel: ManifoldToplevel, pattern: FlatPattern, flap: Flap, stage: number, start: number): Manifold {
  const wrap = patternWrap(pattern, flap);
  const { outline, tab } = foldSection(wrap, Math.min(stage, NEARLY_HOME), start);
  const strip = extruded(kernel, outline, flap.to - flap.from).rotate([90, 0, 0]).translate(0, flap.to, 0);
  const width = flap.edge - flap.halfCut;
  const removed = [
    ...[flap.from, flap.to].map((end) => snip(kernel, flap, end, width, pattern.thickness)),
    ...flap.pins.map((at) => rod(kernel, holeDiameter(pattern), -pattern.thickness, 2 * pattern.thickness, 'hole')
      .translate(flap.pinLine - flap.halfCut, at, 0)),
  ].map((solid) => onTab(solid, tab));
  return ontoSide(kernel.Manifold.difference([strip, ...removed]), pattern, flap.side);
}

const holeDiameter = (pattern: FlatPattern): number => pattern.holes[0]?.diameter ?? 0;

/** The corner cut off the tab, in tab coordinates: x from the half-cut to the edge, y along the side. */
function snip(kernel: ManifoldToplevel, flap: Flap, end: number, width: number, thickness: number): Manifold {
  const inwards = end > 0 ? -1 : 1;
  const reach = flap.corner;
  const beyond = 5;
  const corner: Vec2[] = [
    [width + beyond, end - inwards * beyond],
    [width + beyond, end + inwards * (reach + beyond)],
    [width - reach - beyond, end - inwards * beyond],
  ];
  const outline = inwards < 0 ? corner.reverse() : corner;
  return extruded(kernel, area(outline) < 0 ? [...outline].reverse() : outline, 3 * thickness).translate(0, 0, -thickness);
}

const area = (outline: readonly Vec2[]): number =>
  outline.reduce((sum, [x, y], index) => {
    const [nx, ny] = outline[(index + 1) % outline.length] ?? [0, 0];
    return sum + (x * ny - nx * y) / 2;
  }, 0);

/** From tab coordinates (x along the tab from the hinge, z from the outer skin inwards) into the section's. */
const onTab = (solid: Manifold, tab: TabPlace): Manifold =>
  solid.rotate([0, (-tab.heading * 180) / Math.PI, 0]).translate(tab.hinge[0], 0, tab.hinge[1]);

const QUARTERS: Readonly<Record<Side, number>> = { right: 0, back: 90, left: 180, front: 270 };

/** Moves a strip whose a axis is x to its side of the panel. */
function ontoSide(strip: Manifold, pattern: FlatPattern, side: Side): Manifold {
  const out = side === 'left' || side === 'right' ? pattern.axes[0] : pattern.axes[1];
  return strip.translate(out, 0, 0).rotate([0, 0, QUARTERS[side]]);
}
