import type { Item, Place, Quantity, Skeleton } from '../../read/index.ts';
import { axesOfDeck } from '../deck.ts';
import { dimensionsOf } from '../dimensions.ts';
import { joiningsFrom } from '../joinings.ts';
import { alikePatterns } from '../patterns/alike.ts';
import { flatPattern } from '../pattern.ts';
import { placed } from '../pose.ts';
import type { FlatPanel, Model, Part, TubeNeed, Vec2 } from '../types.ts';
import { dot } from '../vectors.ts';
import { blueprintOf } from './from-skeleton.ts';
import { buildStructure, type BuiltStructure } from './build-structure.ts';
import { isSamePlace } from './nodes.ts';

/** One size of an item of points and bars. Throws a FaultError where its parts do not go together. */
export function structureModel(item: Item, size: string, skeleton: Skeleton, places: readonly Place[], parameters: Readonly<Record<string, Quantity>>): Model {
  const built = buildStructure(item.kit, blueprintOf(item, skeleton));
  const bars = built.bars.flatMap(({ built: { part }, pins }) => [part, ...pins]);
  const panels = built.panels.flatMap(({ part, pins }) => [part, ...pins]);
  const parts = [...built.joints, ...bars, ...panels, ...built.cables, ...built.fittings];
  return {
    item: item.name, size, use: item.use, kit: item.kit, parameters, parts, groups: [],
    joinings: joiningsFrom(built.connections, parts),
    connections: built.connections,
    pattern: fullPattern(item, built),
    patterns: alikePatterns(built.patterns),
    places,
    plates: platesOf(built),
    dimensions: dimensionsOf({ parts, connections: built.connections, kit: item.kit }),
    tubes: tubesOf(built),
    bracedFaces: [],
    deckTops: topsOf(built),
  };
}

/** As if the first wrapped panel were folded round all four sides, or the whole plan where none is. */
function fullPattern(item: Item, { panels, bars }: BuiltStructure): Model['pattern'] {
  const first = panels.find(({ pattern }) => pattern.form === 'wrapped');
  if (first !== undefined) {
    const half = (side: string): number => Math.max(...first.pattern.outline.map(([x, y]) => (side === 'x' ? x : y))) - 1;
    const roots = first.pattern.flaps.map(({ side, root }) => ({ side, root }));
    const x = roots.find(({ side }) => side === 'left' || side === 'right')?.root ?? half('x');
    const y = roots.find(({ side }) => side === 'front' || side === 'back')?.root ?? half('y');
    return flatPattern(item.kit, [x, y]);
  }
  return flatPattern(item.kit, axesOfDeck(bars.flatMap(({ built }) => [built.plan.from, built.plan.to])));
}

/** Flat panels to cut, alike ones together, measured from the lower left corner of their marked face. */
export function platesOf({ panels }: BuiltStructure): readonly FlatPanel[] {
  const flat = panels.filter(({ pattern }) => pattern.form === 'flat');
  return alikePatterns(flat.map(({ pattern, part }) => ({ pattern, partId: part.id }))).map(({ min, max, thickness, skin, holes, partIds }) => {
    const marked = holes.some(({ depth }) => depth !== null) ? 'lower' : 'upper';
    const across = (x: number): number => (marked === 'lower' ? max[0] - x : x - min[0]);
    return {
      marked, width: max[0] - min[0], height: max[1] - min[1], thickness, skin,
      holes: holes.map(({ at, diameter, depth }) => ({ at: [across(at[0]), at[1] - min[1]] as Vec2, diameter, ...(depth === null ? {} : { depth }) })),
      partIds,
    };
  });
}

/** Tubes to cut, from the longest to the shortest. */
function tubesOf({ bars }: BuiltStructure): readonly TubeNeed[] {
  const lengths = bars.map(({ built }) => Math.round(built.length * 1e6) / 1e6);
  return [...new Set(lengths)].sort((a, b) => b - a).map((length) => ({ kind: 'bar', length, count: lengths.filter((each) => each === length).length }));
}

/** Heights of upper faces to put things on, from the lowest, each once. */
function topsOf({ panels }: BuiltStructure): readonly number[] {
  const up = panels.filter(({ plan }) => isSamePlace(plan.face, [0, 0, 1])).map(({ part, pattern }) => topOf(part, pattern.thickness, pattern.form === 'flat'));
  return [...new Set(up.map((top) => Math.round(top * 1e6) / 1e6))].sort((a, b) => a - b);
}

const topOf = (part: Part, thickness: number, isPlate: boolean): number => dot(placed(part.pose, [0, 0, isPlate ? thickness : -thickness]), [0, 0, 1]);

