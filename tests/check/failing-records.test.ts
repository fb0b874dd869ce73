import { describe, expect, it } from 'vitest';
import { checkModel } from '../../src/check/index.ts';
import { buildRecord } from '../../src/cli/record.ts';
import { planTubes } from '../../src/cut/index.ts';
import { buildModel } from '../../src/model/index.ts';
import { declaredFor, type Item } from '../../src/read/index.ts';
import { negativeLength, oddNumber } from '../campaigns/figures.ts';
import { itemWith } from '../support/items.ts';

/** Read and let through, far outside what anybody builds: a check fails each, and `--despite-findings` makes it all the same. */
const ODD: readonly (readonly [what: string, item: Item, size: string])[] = [
  ['a seat whose notches take more than its panel has', itemWith('chair', { from: '270 mm to 350 mm', to: '1 mm to 350 mm' }, { from: 'wider: 195 mm\n    depth: 350 mm', to: 'wider: 195 mm\n    depth: 3.5 mm' }), 'mark-6'],
  ['decks from the top down', itemWith('rack', { from: '120 mm to 400 mm', to: '120 mm to 20 m' }, { from: 'lowest: 160 mm', to: 'lowest: 16 m' }), 'tall'],
  ['decks with a thousand pins', itemWith('rack', { from: '500 mm to 1100 mm', to: '500 mm to 100 m' }, { from: 'width: 1000 mm', to: 'width: 60 m' }), 'standard'],
];

describe('the record of an item that fails a check', () => {
  it.each(ODD)('has figures that are numbers, and no length or mass below nought: %s', async (_, item, size) => {
    const model = buildModel(item, size);
    const report = checkModel(model, declaredFor(item, size));
    expect(report.findings.filter(({ verdict }) => verdict === 'fail').length).toBeGreaterThan(0);
    const cuts = await planTubes(model).catch(() => ({ stock: 0, kerf: 0, tubesUsed: 0, fewest: 0, shortest: 0, patterns: [] }));
    const record = buildRecord({ item, model, report, cuts, plan: { steps: [], batches: [], reasons: [] } });
    expect([oddNumber(record, ''), negativeLength(record)]).toEqual([null, null]);
  });
});
