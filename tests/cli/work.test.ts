import { afterAll, describe, expect, it } from 'vitest';
import { newWorkshop } from './workshop.ts';

const shop = newWorkshop();
afterAll(() => { shop.close(); });

describe('foldwright work', () => {
  it('tells parts, tubes and the steps in order of a draft', async () => {
    const { code, told, out } = await shop.run(['work', 'screen', '--size', 'low']);
    expect({ code, told }).toEqual({ code: 0, told: '' });
    expect(out).toMatch(/^screen low: 37 parts, \d+ steps\n/);
    expect(out).toContain('  tubes   2 of 700 mm\n');
    const numbers = [...out.matchAll(/^ +(\d+) {2}/gm)].map(([, number]) => Number(number));
    expect(numbers).toEqual(numbers.map((_, index) => index + 1));
  });

  it('names the items there are when asked for another', async () => {
    const { code, told } = await shop.ask(['work', 'nothing']);
    expect(code).toBe(2);
    expect(told).toMatch(/^foldwright: steps\/nothing\/item\.yaml: no such item; would be right: one of bed, .*trolley, two-bay\n$/);
  });
});
