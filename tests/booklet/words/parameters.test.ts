import { existsSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { languagesIn, readWords } from '../../../src/booklet/words/index.ts';
import { filesOnDisk, readItem, type Item } from '../../../src/read/index.ts';
import { localesOnDisk } from '../pages/rack-booklet.ts';

const locales = localesOnDisk();
const files = filesOnDisk('.');
const itemsIn = (folder: string): readonly Item[] => readdirSync(folder).sort().filter((name) => existsSync(`${folder}/${name}/item.yaml`)).map((name) => readItem(files, `${folder}/${name}/item.yaml`));
const wordsOf = (items: readonly Item[]): readonly { readonly key: string; readonly purpose: string }[] =>
  items.flatMap((item) => item.parameters.map(({ name, purpose }) => ({ key: `parameters.${item.name}.${name}`, purpose })));
const wanted = wordsOf(itemsIn('steps'));

describe('the words of parameters', () => {
  it.each(languagesIn(locales))('are there in %s for every parameter of every item, and for no others', (lang) => {
    const keys = [...readWords(locales, lang, ['parameters']).keys()];
    expect(keys.sort()).toEqual(wanted.flatMap(({ key }) => [`${key}.label`, `${key}.purpose`]).sort());
  });

  it('say in English what the items\' files say', () => {
    const words = readWords(locales, 'en', ['parameters']);
    expect(wanted.length).toBeGreaterThan(20);
    expect(wanted.map(({ key }) => [key, words.get(`${key}.purpose`)])).toEqual(wanted.map(({ key, purpose }) => [key, purpose]));
  });
});
