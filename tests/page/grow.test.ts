import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { localeFiles } from '../../src/cli/files.ts';
import { filesInMemory, filesOnDisk, readItem, withItemName, withNewSize } from '../../src/read/index.ts';
import { growItem, readGrowOrder } from '../../src/page/server/grow.ts';
import { markOf } from '../../src/page/server/save.ts';
import type { Workshop } from '../../src/page/index.ts';
import type { GrowOrder } from '../../src/page/types.ts';

const project = fileURLToPath(new URL('../../', import.meta.url));
const files = filesOnDisk(project);
const locales = localeFiles(`${project}locales`);
const [RACK, KIT] = ['steps/rack/item.yaml', 'steps/kits/stall-kit.yaml'];
const text = files.text(RACK) ?? '';
const given = { [RACK]: text, [KIT]: files.text(KIT) ?? '' };

describe('the text of an item with one more size', () => {
  it('has it after the one it is made from, as that is written, and all else to the letter', () => {
    const odd = text.replace('  low:\n', '  low:   # for the quay\n').replace('    depth: 400 mm\n', '    depth: 400 mm   # as the shop has them\n');
    const grown = withNewSize(odd, 'low', 'quay');
    const block = odd.slice(odd.indexOf('  low:'), odd.indexOf('  standard:'));
    expect(grown).toBe(odd.replace(block, block + block.replace('low:', 'quay:')));
    expect(grown.match(/as the shop has them/g)).toHaveLength(2);
    const item = readItem(filesInMemory({ ...given, [RACK]: grown }), RACK);
    expect(item.sizes.map(({ name }) => name)).toEqual(['low', 'quay', 'standard', 'tall']);
    expect(item.sizes[1]?.values).toEqual(item.sizes[0]?.values);
  });

  it('keeps line ends, sections on one line and a last line without an end', () => {
    expect(withNewSize('sizes:\r\n  low:\r\n    side: 250 mm\r\n', 'low', 'high')).toBe('sizes:\r\n  low:\r\n    side: 250 mm\r\n  high:\r\n    side: 250 mm\r\n');
    expect(withNewSize('sizes:\n  low: { side: 250 mm } # both\n', 'low', 'high')).toBe('sizes:\n  low: { side: 250 mm } # both\n  high: { side: 250 mm } # both\n');
    expect(withNewSize('sizes: { low: { side: 250 mm } }\n', 'low', 'high')).toBe('sizes: { low: { side: 250 mm }, high: { side: 250 mm } }\n');
    expect(withNewSize('sizes:\n  low:\n    side: 250 mm', 'low', 'high')).toBe('sizes:\n  low:\n    side: 250 mm\n  high:\n    side: 250 mm');
  });

  it('is refused where the size is not there or the name is taken', () => {
    expect(() => withNewSize(text, 'none', 'quay')).toThrow('sizes.none: no such size in the file');
    expect(() => withNewSize(text, 'low', 'tall')).toThrow('sizes.tall: found twice');
  });
});

describe('the text of an item under another name', () => {
  it('is a first revision and differs in nothing else', () => {
    const old = text.replace('revision: 1', 'revision: 7 # of the shop');
    expect(withItemName(old, 'shelf')).toBe(old.replace('name: rack', 'name: shelf').replace('revision: 7', 'revision: 1'));
  });
});

describe('a new size or item by the page', () => {
  const shopWith = (now: Readonly<Record<string, string>>): { readonly shop: Workshop; readonly written: Map<string, string> } => {
    const written = new Map<string, string>();
    return {
      written,
      shop: {
        texts: () => ({ files: now, locales }),
        write: (path, content) => { written.set(path, content); },
        read: () => Buffer.alloc(0), make: () => ({ stop: () => undefined, ended: Promise.resolve() }),
      },
    };
  };
  const order: GrowOrder = { what: 'size', path: RACK, size: 'standard', name: 'quay', title: 'For the quay', values: { width: '900 mm' }, mark: markOf(text) };

  it('writes the size with the values that are shown, and its name in every language', () => {
    const { shop, written } = shopWith(given);
    expect(growItem(shop, order)).toEqual({ saved: true, path: RACK, size: 'quay' });
    const item = readItem(filesInMemory({ ...given, [RACK]: written.get(RACK) ?? '' }), RACK);
    expect(item.sizes.find(({ name }) => name === 'quay')?.values['width']).toMatchObject({ value: 900 });
    expect(item.sizes.find(({ name }) => name === 'standard')?.values['width']).toMatchObject({ value: 1000 });
    const named = [...written].filter(([path]) => path.startsWith('locales/'));
    expect(named).toHaveLength(19);
    for (const [path, words] of named) {
      const was = JSON.parse(locales[path.replace('locales/', '')] ?? '{}') as Record<string, { sizes: object }>;
      expect(JSON.parse(words)).toEqual({ ...was, rack: { ...was['rack'], sizes: { ...was['rack']?.sizes, quay: 'For the quay' } } });
    }
  });

  it('writes the item into a folder of its own, and leaves the old one as it is', () => {
    const { shop, written } = shopWith(given);
    expect(growItem(shop, { ...order, what: 'item', name: 'quay-shelf' })).toEqual({ saved: true, path: 'steps/quay-shelf/item.yaml', size: 'standard' });
    expect(written.has(RACK)).toBe(false);
    const grown = written.get('steps/quay-shelf/item.yaml') ?? '';
    expect(grown).toBe(text.replace('name: rack', 'name: quay-shelf').replace('    width: 1000 mm', '    width: 900 mm'));
    expect(JSON.parse(written.get('locales/en/items.json') ?? '{}')).toMatchObject({ 'quay-shelf': { name: 'For the quay', sizes: { low: 'Low' } } });
  });

  it('writes nothing where the name is taken, the file is another by now, or the values are not allowed', () => {
    const { shop, written } = shopWith(given);
    expect(growItem(shop, { ...order, name: 'tall' })).toMatchObject({ saved: false, why: 'refused' });
    expect(growItem(shop, { ...order, what: 'item', name: 'rack' })).toMatchObject({ saved: false, why: 'refused' });
    expect(growItem(shop, { ...order, what: 'item', name: 'kits' })).toMatchObject({ saved: false, why: 'refused' });
    expect(growItem(shop, { ...order, mark: markOf('') })).toMatchObject({ saved: false, why: 'moved' });
    expect(growItem(shop, { ...order, values: { width: '9000 mm' } })).toMatchObject({ saved: false, why: 'refused', told: expect.stringContaining('would be right: a value within 500 mm to 1100 mm') as string });
    expect(growItem(shop, { ...order, path: 'locales/en/about.json' })).toMatchObject({ saved: false, why: 'refused' });
    expect(written.size).toBe(0);
  });

  it.each(['../up', 'a/b', 'Quay', '', 'a--b', '.', 'a b'])('takes no %j for a name', (name) => {
    expect(() => readGrowOrder({ ...order, name })).toThrow('would be right');
  });
});
