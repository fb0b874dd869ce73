import { expect, it } from 'vitest';
import { leftOf, newReckoning, spoken } from '../../src/cli/reckoning.ts';

it('says what is left at the pace so far, and nothing before there is a pace', () => {
  const reckoning = newReckoning(0);
  const part = reckoning.part(100);
  expect(leftOf(reckoning.all(), 10_000)).toBeNull();
  part.done(25);
  expect(leftOf(reckoning.all(), 10_000)).toBe(30_000);
  expect(spoken('rack low', reckoning.all(), 10_000)).toBe('rack low; about 30 s left');
  reckoning.part(300);
  expect(spoken('rack low', reckoning.all(), 10_000)).toBe('rack low; about 3 min left');
});

it('goes by what is known of a part, and no longer waits for what did not come', () => {
  const reckoning = newReckoning(0);
  const part = reckoning.part(10);
  part.done(8);
  part.expect(4);
  expect(reckoning.all()).toEqual({ done: 8, total: 8, since: 0 });
  part.expect(40);
  expect(reckoning.all().total).toBe(40);
  part.end();
  expect(reckoning.all().total).toBe(8);
});
