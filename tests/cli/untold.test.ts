import { describe, expect, it } from 'vitest';
import { untoldNames, untoldParameters } from '../../src/cli/untold.ts';
import { localesOnDisk } from '../booklet/pages/rack-booklet.ts';
import { itemNamed, items } from '../support/items.ts';

const locales = localesOnDisk();
const rack = itemNamed('rack');

describe('foldwright check tells of parameters', () => {
  it.each(items)('nothing where every language has their words, as of the $name', (item) => {
    expect(untoldParameters(item, locales)).toEqual([]);
  });

  it('which words a language lacks, and where they go', () => {
    const words = JSON.parse(locales['fr/parameters.json'] ?? '') as { rack: Record<string, unknown> };
    const changed = { ...locales, 'fr/parameters.json': JSON.stringify({ ...words, rack: { ...words.rack, width: { purpose: 'Longueur.' } } }) };
    expect(untoldParameters(rack, changed)).toEqual(['caution words: locales/fr/parameters.json lacks rack.width.label; until then the page shows the item file\'s own']);
  });

  it('all of them where the file is missing', () => {
    const { 'fr/parameters.json': gone, ...others } = locales;
    expect(gone).toBeDefined();
    expect(untoldParameters(rack, others)).toHaveLength(1);
    expect(untoldParameters(rack, others)[0]).toContain('rack.headroom.label, rack.headroom.purpose');
  });
});

describe('foldwright check tells of names', () => {
  it.each(items)('nothing where every language has them, as of the $name', (item) => {
    expect(untoldNames(item, locales)).toEqual([]);
  });

  it('each language that lacks one, with all that it lacks at once', () => {
    const renamed = { ...rack, name: 'stand' };
    const told = untoldNames(renamed, locales);
    expect(told).toHaveLength(19);
    expect(told).toContain('caution words: locales/fr/items.json lacks stand.name, stand.sizes.low, stand.sizes.standard, stand.sizes.tall; without them no booklet is made');
  });
});
