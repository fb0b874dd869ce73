import type { Flap } from '../../model/index.ts';
import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import type { Case, Check, Finding } from '../types.ts';
import { foldedTab, gapBetween } from './folded-tab.ts';

const lengthwise = (flap: Flap): boolean => flap.side === 'front' || flap.side === 'back';

/** Folded tabs of neighbouring sides keep clear of each other at the corners. */
export const tabsApart: Check = (given) =>
  closest(given, 'tabs-apart', (a, b) => lengthwise(a) !== lengthwise(b));

/** Folded tabs of opposite sides do not meet in the middle of the panel. */
export const oppositeTabs: Check = (given) =>
  closest(given, 'opposite-tabs', (a, b) => lengthwise(a) === lengthwise(b));

function closest({ model, limits }: Case, name: 'tabs-apart' | 'opposite-tabs', related: (a: Flap, b: Flap) => boolean): readonly Finding[] {
  const { flaps } = model.pattern;
  const gaps = flaps.flatMap((a, index) => flaps.slice(index + 1).filter((b) => related(a, b))
    .map((b) => gapBetween(foldedTab(model.pattern, a), foldedTab(model.pattern, b))));
  if (gaps.length === 0) return [];
  return [judge({
    name, figure: Math.min(...gaps), limit: limits.tabGap.value, bound: 'least', unit: 'mm',
    source: `geometry of the folded flaps (C); ${limits.tabGap.source}`, parts: idsOf(model, 'panel'),
  })];
}
