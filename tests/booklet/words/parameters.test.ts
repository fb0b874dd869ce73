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
const proven = wordsOf(itemsIn('steps'));
const wanted = [...proven, ...wordsOf(itemsIn('steps/drafts'))];

describe('the words of parameters', () => {
  it.each(languagesIn(locales))('are there in %s for every parameter of every item and draft, and for no others', (lang) => {
    const keys = [...readWords(locales, lang, ['parameters']).keys()];
    expect(keys.sort()).toEqual(wanted.flatMap(({ key }) => [`${key}.label`, `${key}.purpose`]).sort());
  });

  // A draft's file may still say it in its own way.
  it('say in English what the items\' files say', () => {
    const words = readWords(locales, 'en', ['parameters']);
    expect(proven.length).toBeGreaterThan(20);
    expect(proven.map(({ key }) => [key, words.get(`${key}.purpose`)])).toEqual(proven.map(({ key, purpose }) => [key, purpose]));
  });
});
