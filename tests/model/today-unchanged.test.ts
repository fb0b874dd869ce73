import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import type { Model } from '../../src/model/index.ts';
import { allSizes } from '../support/all-items.ts';

/** What today's five items are made of, as it was before structures of points and bars came; stored hashes of that time. */
const frozen: Readonly<Record<string, string>> = JSON.parse(readFileSync(new URL('./today.json', import.meta.url), 'utf8'));

const rounded = (name: string, value: unknown): unknown => {
  if (name === 'holes' && Array.isArray(value)) return value.map(placeAlone);
  return typeof value === 'number' ? Math.round(value * 1e6) / 1e6 + 0 : value;
};

/** Since then holes tell how deep they go and when they are punched, and flat panels how thick they are; where they are has not changed. */
const placeAlone = (hole: object): object => Object.fromEntries(Object.entries(hole).filter(([field]) => field !== 'depth' && field !== 'face' && field !== 'punched'));
const asBefore = (plates: Model['plates']): readonly object[] => plates.map(({ width, height, holes, partIds }) => ({ width, height, holes, partIds }));

/** Parts with shape and place, patterns, plates and tubes, in one order. Lettered lengths tell since then of caps and of all that stands out too: tests/model/dimensions.test.ts. */
const hashOf = ({ parts, groups, joinings, pattern, plates, tubes, deckTops, bracedFaces }: Model): string => {
  const told = parts.map(({ id, kind, place, shape, pose, group, mass }) => ({ id, kind, place, shape, pose, group, mass }));
  return createHash('sha256').update(JSON.stringify({ parts: told, groups, joinings, pattern, plates: asBefore(plates), tubes, deckTops, bracedFaces }, rounded)).digest('hex');
};

it('knows every size of today\'s items', () => {
  expect(allSizes.map(({ name }) => name).filter((name) => Object.hasOwn(frozen, name))).toEqual(Object.keys(frozen));
});

it.each(allSizes.filter(({ name }) => Object.hasOwn(frozen, name)))('$name is made of the same parts in the same places', ({ name, model }) => {
  expect(hashOf(model())).toBe(frozen[name]);
});
