import { expect, it } from 'vitest';
import { everySize } from '../support/items.ts';
import { planOf } from '../support/plans.ts';

const chairs = everySize.filter(({ item }) => item.name === 'chair');

it.each(chairs)('$name: the second person holds the frame that stands on its pegs while the first posts are pushed in', ({ item, size }) => {
  const [first] = planOf(item, size).steps.filter(({ action }) => action === 'push-posts');
  expect(first?.people).toBe(2);
  expect(first?.held.map((ids) => ids.toSorted())).toEqual([first?.present.toSorted()]);
});

it.each(everySize)('$name: nothing is held in a step of one person', ({ item, size }) => {
  const alone = planOf(item, size).steps.filter(({ people }) => people === 1);
  expect(alone.length).toBeGreaterThan(0);
  expect(alone.filter(({ held }) => held.length > 0).map(({ key }) => key)).toEqual([]);
});
