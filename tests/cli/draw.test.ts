import { afterAll, beforeAll, expect, it } from 'vitest';
import { newWorkshop, type Workshop } from './workshop.ts';

let shop: Workshop;
beforeAll(() => { shop = newWorkshop(); });
afterAll(() => { shop.close(); });

/** A step's picture, drawn with what is kept or with nothing. */
async function drawn(step: number, how: readonly string[]): Promise<string> {
  const { code, told } = await shop.run(['draw', 'stool', '--size', 'low', '--step', String(step), '--out', 'step.svg', ...how]);
  expect({ code, told }).toEqual({ code: 0, told: '' });
  return shop.read('step.svg').toString();
}

const KEPT = ['--cache', 'kept'];
const CLEAN = ['--no-cache'];

it('the next picture of a plan that was kept is the one that is drawn from nothing', async () => {
  const [first, next] = [await drawn(5, CLEAN), await drawn(6, CLEAN)];
  expect(next).not.toBe(first);
  expect([await drawn(5, KEPT), await drawn(6, KEPT)]).toEqual([first, next]);
});

it('another measure is another plan', async () => {
  const before = await drawn(6, KEPT);
  const text = shop.read('steps/stool/item.yaml').toString();
  const changed = text.replaceAll(/^( +side: )445 mm/gm, '$1450 mm');
  expect(changed).not.toBe(text);
  shop.write('steps/stool/item.yaml', changed);
  const after = await drawn(6, KEPT);
  expect(after).not.toBe(before);
  expect(after).toBe(await drawn(6, CLEAN));
});
