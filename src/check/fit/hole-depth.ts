import type { CutPattern } from '../../model/index.ts';
import type { Limits } from '../limits.ts';
import { judge } from '../judge.ts';
import type { Case, Finding } from '../types.ts';

/** Pins of a pattern's tabs and lugs: each has one hole right through its tab. */
const pinsOf = ({ flaps }: CutPattern): number => flaps.reduce((sum, { pins, lugs }) => sum + pins.length + lugs.reduce((all, lug) => all + lug.pins.length, 0), 0);

/** What is left of the panel at the far end of its blind holes, mm; nothing where a hole under a tab goes right through. */
function leftUnder(pattern: CutPattern, diameter: number): number {
  const through = pattern.holes.filter((hole) => hole.diameter === diameter && hole.depth === null).length;
  if (through > pinsOf(pattern)) return 0;
  return Math.min(...pattern.holes.flatMap(({ depth }) => (depth === null ? [] : [pattern.thickness - depth])));
}

/** Holes for pins' points are blind: enough of the panel stays over them, and the far skin whole. */
export function holeDepths({ model, limits: { pinRest } }: { readonly model: Case['model']; readonly limits: Limits }): readonly Finding[] {
  const found = model.patterns.filter((pattern) => pinsOf(pattern) > 0 || pattern.holes.some(({ depth }) => depth !== null)).map((pattern) => judge({
    name: 'hole-depth', figure: leftUnder(pattern, model.kit.panelPin.diameter), limit: Math.max(pinRest.value, pattern.skin), bound: 'least', unit: 'mm',
    source: `thickness less the depth of the hole (C); ${pinRest.source}`, parts: pattern.partIds,
  }));
  return found.toSorted((a, b) => a.margin - b.margin).slice(0, 1);
}
