import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { PDFDocument } from 'pdf-lib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { packCommand, type PackOptions } from '../../src/cli/pack.ts';
import { stockFor } from '../../src/cli/order-stock.ts';
import { readStock } from '../../src/cli/stock-file.ts';
import { cutPlanner } from '../../src/cli/supply.ts';
import { planTubes } from '../../src/cut/index.ts';
import { itemNamed, modelOf } from '../support/items.ts';
import { expectOneComplaint, newWorkshop, type Workshop } from './workshop.ts';

let shop: Workshop;
beforeAll(() => { shop = newWorkshop(); });
afterAll(() => { shop.close(); });

const PACK = ['pack', 'stool:low=3', '--learners', '6', '--paper', 'a4'] as const;
const not = (what: string): RegExp => new RegExp(`^${what}: not an order; would be right: <item>=<number> or <item>:<size>=<number> with a whole number from 1 to 1000, for example bed=6 or bed:nap=6$`);

const OPTIONS = { learners: '12', lang: 'en', start: '08:30', out: 'booklets' } as const;

/** Mistakes that the command's function refuses; it is run in the project's folder. */
const mistakes: readonly (readonly [string, readonly string[], Partial<PackOptions>, RegExp])[] = [
  ['a number that is not whole', ['rack=2.5'], {}, not('rack=2.5')],
  ['none of an item', ['rack=0'], {}, not('rack=0')],
  ['a number below zero', ['rack=-3'], {}, not('rack=-3')],
  ['too many', ['rack=100000'], {}, not('rack=100000')],
  ['an unknown item', ['rick=6'], {}, /^steps\/rick\/item\.yaml: no such item; would be right: one of bed, bench, chair, chest, desk, leaning-chair, rack, screen, stool, trolley, two-bay$/],
  ['an item outside steps/', ['../rack=6'], {}, /^steps\/\.\.\/rack\/item\.yaml: no such item; /],
  ['an unknown size', ['rack:huge=6'], {}, /^--size huge: not known; would be right: one of low, standard, tall$/],
  ['a size named twice', ['rack=6', 'rack:standard=2'], {}, /^rack:standard: named twice; would be right: one number for all of them$/],
  ['half a learner', ['rack=6'], { learners: '1.5' }, /^--learners 1\.5: not a number of learners; would be right: a whole number from 1 to 200$/],
  ['too many learners', ['rack=6'], { learners: '201' }, /^--learners 201: not a number of learners; would be right: a whole number from 1 to 200$/],
  ['no learner', ['rack=6'], { learners: '0' }, /^--learners 0: not a number of learners/],
  ['an unknown language', ['rack=6'], { lang: 'xx' }, /^--lang xx: not known; would be right: one of .*en/],
  ['an unknown paper', ['rack=6'], { paper: ['a3'] }, /^--paper a3: not known; would be right: one of a4, letter$/],
  ['a start that is no time', ['rack=6'], { start: '8.30' }, /^--start 8\.30: not a time to start; would be right: a time from 00:00 to 15:45, for example 08:30$/],
  ['a start too late in the day', ['rack=6'], { start: '16:00' }, /^--start 16:00: not a time to start/],
  ['a stock file that is not there', ['rack=6'], { stock: 'none.yaml' }, /^none\.yaml: cannot be read \(ENOENT\); would be right: a stock file/],
  ['an order that takes months', ['stool:low=900'], { learners: '2' }, /^the order takes \d+ days with --learners 2; would be right: fewer pieces or more learners, for at most 40 days$/],
];

describe('packCommand', () => {
  it.each(mistakes)('refuses %s', async (_, order, options, told) => {
    const out = join(shop.folder, 'nothing');
    const error: unknown = await packCommand(order, { ...OPTIONS, ...options, out }).catch((thrown: unknown) => thrown);
    expect(error instanceof Error ? error.message : '').toMatch(told);
    expect(existsSync(out)).toBe(false);
  });
});

describe('foldwright pack', () => {
  it.each([
    ['no number', ['pack', 'rack', '--learners', '12'], /^foldwright: rack: not an order; /],
    ['no order', ['pack', '--learners', '12'], /<order>: not given/],
    ['no learners', ['pack', 'rack=6'], /--learners <number>: not given/],
  ] as const)('tells %s in one line and writes nothing', async (_, args, told) => {
    await expectOneComplaint(shop, args, told);
  });

  it('tells file and line of a note that names no step, and writes nothing', async () => {
    shop.change('steps/stool/notes/en.md', '## half-cut\n', '## halfcut\n');
    const before = shop.files();
    const { code, told } = await shop.ask(PACK);
    expect(code).toBe(2);
    expect(told).toMatch(/^steps\/stool\/notes\/en\.md:\d+:1: found ## halfcut, would be right: the key of a step or its action, one of .*half-cut/);
    expect(told.trimEnd().split('\n')).toHaveLength(1);
    expect(shop.files()).toEqual(before);
    shop.change('steps/stool/notes/en.md', '## halfcut\n', '## half-cut\n');
  });

  it('refuses an item that is not proven', async () => {
    shop.change('steps/rack/item.yaml', 'range: 500 mm to 1100 mm', 'range: 500 mm to 1900 mm');
    shop.change('steps/rack/item.yaml', '  low:\n    width: 800 mm', '  low:\n    width: 1900 mm');
    const { code, told } = await shop.ask(['pack', 'rack:low=6', '--learners', '12']);
    expect(code).toBe(1);
    expect(told).toMatch(/^foldwright: steps\/rack\/item\.yaml: rack low fails .*stock-panel.*; see foldwright check rack\n$/);
  });

  it('writes one file for each paper, the same bytes each time, that ask not to be scaled', async () => {
    const first = await shop.run([...PACK, '--lang', 'ar', '--start', '07:15', '--out', 'one']);
    const again = await shop.run([...PACK, '--lang', 'ar', '--start', '07:15', '--out', 'two']);
    expect([first.told, again.told]).toEqual(['', '']);
    expect(first.out).toBe('one/packs/stool-low-x3-ar.pdf\n');
    const pdf = shop.read('one/packs/stool-low-x3-ar.pdf');
    expect(pdf.equals(shop.read('two/packs/stool-low-x3-ar.pdf'))).toBe(true);
    const read = await PDFDocument.load(pdf, { updateMetadata: false });
    expect(read.getTitle()).toBe('ملف الورشة');
    expect(read.catalog.toString()).toContain('/PrintScaling /None');
    expect(read.getPageCount()).toBeGreaterThan(8);
  });
});

describe('the stock for an order', () => {
  const order = [{ model: modelOf(itemNamed('rack'), 'standard'), count: 6 }, { model: modelOf(itemNamed('chair'), 'mark-4'), count: 24 }];
  const parts = (kind: string): number => order.reduce((sum, line) => sum + line.count * line.model.parts.filter((part) => part.kind === kind).length, 0);
  /** By hand: of cords of 3000 mm each of a rack's six takes one; a chair's two of 1560 mm and four of 1430 mm go in pairs, three. */
  const CORDS = 6 * 6 + 24 * 3;
  const countOf = (stock: ReturnType<typeof stockFor>[number] | undefined, kind: string): number =>
    (stock?.rows ?? []).filter((row) => row.kind === kind).reduce((sum, row) => sum + row.count, 0);

  it('is what the cut plan of all pieces together takes, with what it leaves over', async () => {
    const [kit, ...more] = stockFor(order, await cutPlanner(undefined));
    expect(more).toEqual([]);
    expect(kit?.kit).toBe('stall-kit');
    for (const kind of ['joint', 'panel-pin', 'joint-pin', 'wing-nut']) expect(countOf(kit, kind), kind).toBe(parts(kind));
    expect(countOf(kit, 'cable')).toBe(CORDS);
    // Not fewer than the tubes' lengths together fill, not more than each piece sawn from tubes of its own takes.
    const metres = order.reduce((sum, { model, count }) => sum + count * model.tubes.reduce((length, tube) => length + tube.count * tube.length, 0), 0);
    expect(countOf(kit, 'tube')).toBeGreaterThanOrEqual(Math.ceil(metres / 2000 - 1e-9));
    const apart = await Promise.all(order.map(async ({ model, count }) => count * (await planTubes(model)).tubesUsed));
    expect(countOf(kit, 'tube')).toBeLessThan(apart.reduce((sum, tubes) => sum + tubes, 0));
    // By hand: a deck of the standard rack, 1387 × 887 mm, takes a panel of 1500 × 1000 mm whole: 24. A seat of 887 × 692 mm goes
    // twice into one: 12. Backrests of 392 × 194 mm find no strip so wide beside either; 15 go into a panel of their own: 2.
    expect(countOf(kit, 'panel-stock')).toBe(24 + 12 + 2);
    expect(kit?.rows.every(({ pile }) => pile === null)).toBe(true);
    const [tubes, panels] = kit?.thrift ?? [];
    expect(tubes?.leftOver).toBeCloseTo(1 - metres / (2000 * countOf(kit, 'tube')), 9);
    const used = order.reduce((sum, { model, count }) => sum + count * (
      model.pattern.blank[0] * model.pattern.blank[1] * model.parts.filter(({ kind }) => kind === 'panel').length
      + model.plates.reduce((area, { width, height, partIds }) => area + width * height * partIds.length, 0)), 0);
    expect(panels?.leftOver).toBeCloseTo(1 - used / (38 * 1500 * 1000), 9);
    expect(panels?.aboveLeast).toBe(0);
  });

  it('comes first from what was counted, by its piles, and from kits for what is short', async () => {
    const stockFile = fileURLToPath(new URL('../../steps/stock/tern-island.yaml', import.meta.url));
    const counted = readStock(stockFile);
    const [kit] = stockFor(order, await cutPlanner(stockFile));
    for (const kind of ['joint', 'panel-pin', 'joint-pin', 'wing-nut']) expect(countOf(kit, kind), kind).toBe(parts(kind));
    expect(countOf(kit, 'cable')).toBe(CORDS);
    const short = Math.max(0, parts('joint') - counted.joints);
    expect(kit?.rows.filter(({ kind, pile }) => kind === 'joint' && pile?.from === 'kit').map(({ count }) => count)).toEqual(short > 0 ? [short] : []);
    for (const { kind, pile, count } of kit?.rows ?? []) {
      if (pile?.from !== 'stock') continue;
      const piles = kind === 'tube' ? counted.tubes : counted.panels;
      expect(count, pile.name).toBeLessThanOrEqual(piles.find(({ name }) => name === pile.name)?.count ?? 0);
    }
    expect(kit?.rows.some(({ pile }) => pile?.from === 'stock')).toBe(true);
  });
});
