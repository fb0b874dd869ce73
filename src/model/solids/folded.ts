import type { Manifold, ManifoldToplevel } from 'manifold-3d';
import { chainSection, turnsAt } from '../patterns/chain.ts';
import { facetPose, lugPinPose, onSection } from '../patterns/facets.ts';
import { areaOf } from '../patterns/outline.ts';
import { alongSide, outwards } from '../patterns/sides.ts';
import { startOf } from '../patterns/tray.ts';
import type { Lug, Pattern, PatternFlap, Shape, Strip, Vec2, Vec3 } from '../types.ts';
import { columnOf } from '../pose.ts';
import { cross } from '../vectors.ts';
import { holeRod } from './hole-rod.ts';

type Transform = Parameters<Manifold['transform']>[0];

/** A fold is never pressed quite home: two faces in one plane would melt the tab into the panel. */
const NEARLY_HOME = 0.99992;

/** The panel with its flaps and lugs at any stage of folding, holes included. */
export function buildFolded(kernel: ManifoldToplevel, { pattern, folding, split }: Extract<Shape, { form: 'folded' }>): Manifold {
  const base = extruded(kernel, pattern.base, pattern.thickness).translate(0, 0, -pattern.thickness);
  const stageOf = (name: string): number => Math.min(folding[name] ?? 0, NEARLY_HOME);
  const flaps = pattern.flaps.flatMap((flap): readonly Manifold[] => {
    const { own, lugs } = partOfFlap(flap, split);
    return own ? [buildFlap(kernel, pattern, { ...flap, lugs }, stageOf)] : lugs.map((lug) => buildLug(kernel, pattern, flap, lug, stageOf(flap.name), stageOf(lug.name)));
  });
  // A flap begins inside the middle part: alone, without what it shares with that.
  if (split?.piece === 'flap') return kernel.Manifold.difference([kernel.Manifold.union(flaps), base]);
  const holes = pattern.holes.filter(({ flap }) => flap === null).map((hole) => holeRod(kernel, pattern, hole).translate(hole.at[0], hole.at[1], 0));
  return kernel.Manifold.union([kernel.Manifold.difference([base, ...holes]), ...flaps]);
}

/** Whether a flap is in a piece of its panel, and which of its corner tabs are; they go along with their wall. */
function partOfFlap({ name, lugs }: PatternFlap, split: Extract<Shape, { form: 'folded' }>['split']): { readonly own: boolean; readonly lugs: readonly Lug[] } {
  if (split === undefined) return { own: true, lugs };
  const isOut = (one: string): boolean => split.flaps.includes(name) || split.flaps.includes(one);
  return { own: isOut(name) === (split.piece === 'flap'), lugs: lugs.filter((lug) => isOut(lug.name) === (split.piece === 'flap')) };
}

const extruded = (kernel: ManifoldToplevel, outline: readonly Vec2[], height: number): Manifold =>
  kernel.Manifold.extrude([(areaOf(outline) < 0 ? outline.toReversed() : outline).map(([x, y]): [number, number] => [x, y])], height);

/** One flap with what is cut from it while flat: holes and snips go with the facet they are in. */
function buildFlap(kernel: ManifoldToplevel, pattern: Pattern, flap: PatternFlap, stageOf: (name: string) => number): Manifold {
  const stage = stageOf(flap.name);
  const turns = turnsAt(flap.bends, flap.order, stage);
  const strips = flap.strips.map((strip, place) => {
    const outline = chainSection(pattern, flap.bends, turns, place === 0 ? startOf(flap) : strip.from - OVERLAP, strip.to);
    return upright(extruded(kernel, outline, strip.end - strip.start), flap, strip);
  });
  const lugs = flap.lugs.map((lug) => buildLug(kernel, pattern, flap, lug, stage, stageOf(lug.name)));
  const onFacet = (solid: Manifold, distance: number, along: number): Manifold => solid.transform([...facetPose(pattern, flap, distance, along, stage)] as Transform);
  const holes = pattern.holes.filter((hole) => hole.flap === flap.name).map((hole) => {
    const [along, out] = inFlap(flap, hole.at);
    return onFacet(holeRod(kernel, pattern, hole), out, along);
  });
  const snips = flap.corner > 0 ? ([-1, 1] as const).map((end) => onFacet(snip(kernel, flap, end, pattern.thickness), flap.edge, 0).intersect(tabAlone(kernel, pattern, flap, turns))) : [];
  return kernel.Manifold.difference([kernel.Manifold.union([...strips, ...lugs]), ...holes, ...snips]);
}

/** The tab of a flap: snips are cut from it alone, not from the wall it is folded onto. */
function tabAlone(kernel: ManifoldToplevel, pattern: Pattern, flap: PatternFlap, turns: readonly number[]): Manifold {
  const strip = flap.strips.at(-1) ?? { from: 0, to: 0, start: 0, end: 0 };
  const begins = Math.max(0, ...flap.bends.map(({ at }) => at)) + HAIR;
  return upright(extruded(kernel, chainSection(pattern, flap.bends, turns, begins, strip.to), strip.end - strip.start), flap, strip);
}

const HAIR = 0.01;

/** Strips that go on in one another share this much, mm. */
const OVERLAP = 1;

/** A place of the flat panel as distances along a flap's side and from its root line. */
function inFlap({ side, root }: PatternFlap, [x, y]: Vec2): Vec2 {
  const [ax, ay] = alongSide(side);
  const [ox, oy] = outwards(side);
  return [ax * x + ay * y, ox * x + oy * y - root];
}

/** A section drawn in a and b and extruded, put along its side of the panel. */
function upright(solid: Manifold, flap: PatternFlap, strip: Strip): Manifold {
  const out = outwards(flap.side);
  const deep = cross(out, [0, 0, 1]);
  // The extrusion runs against or along the side, whichever keeps the solid right-handed.
  const [ax, ay] = alongSide(flap.side);
  const isAlong = deep[0] * ax + deep[1] * ay > 0;
  const start = onSection(flap, isAlong ? strip.start : strip.end, [0, 0]);
  return solid.transform([...out, 0, 0, 0, 1, 0, ...deep, 0, ...start, 1] as unknown as Transform);
}

/** The corner cut off a tab, in its facet's coordinates: x outwards from the tab's edge, y along. */
function snip(kernel: ManifoldToplevel, flap: PatternFlap, end: -1 | 1, thickness: number): Manifold {
  const strip = flap.strips.at(-1);
  const at = end === -1 ? strip?.start ?? 0 : strip?.end ?? 0;
  const [reach, beyond] = [flap.corner, 5];
  // The facet's own y runs against the side where that keeps it right-handed.
  const [ax, ay] = alongSide(flap.side);
  const [ox, oy] = outwards(flap.side);
  const way = ox * ay - oy * ax > 0 ? 1 : -1;
  const corner: readonly Vec2[] = [
    [beyond, way * (at + end * beyond)],
    [beyond, way * (at - end * (reach + beyond))],
    [-reach - beyond, way * (at + end * beyond)],
  ];
  return extruded(kernel, corner, 3 * thickness).translate(0, 0, -2 * thickness);
}

/** A lug bends in the plane square to its wall's height; it is drawn there and moved along with the wall. */
function buildLug(kernel: ManifoldToplevel, pattern: Pattern, flap: PatternFlap, lug: Lug, wallStage: number, stage: number): Manifold {
  const order = [...lug.bends.keys()];
  const section = chainSection(pattern, lug.bends, turnsAt(lug.bends, order, stage), (lug.bends[0]?.at ?? 0) - LUG_START, lug.edge);
  const solid = extruded(kernel, section, lug.to - lug.from);
  const pose = facetPose(pattern, flap, lug.from, 0, wallStage);
  const axis = (column: number): Vec3 => columnOf(pose, column);
  const [ax, ay, az] = alongSide(flap.side);
  const along: Vec3 = [lug.end * ax, lug.end * ay, lug.end * az];
  const placed = solid.transform([...along, 0, ...axis(2), 0, ...axis(0), 0, ...axis(3), 1] as unknown as Transform);
  const holes = pattern.holes.filter((hole) => hole.flap === lug.name).map((hole, place) => holeRod(kernel, pattern, hole)
    .transform([...lugPinPose(pattern, flap, lug, place, wallStage, stage)] as Transform));
  return kernel.Manifold.difference([placed, ...holes]);
}

/** How far before its first bend a lug's solid begins, inside its wall, mm. */
const LUG_START = 12;
