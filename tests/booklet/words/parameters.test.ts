import { describe, expect, it } from 'vitest';
import { languagesIn, readWords } from '../../../src/booklet/words/index.ts';
import { filesOnDisk, readItem } from '../../../src/read/index.ts';
import { localesOnDisk } from '../pages/rack-booklet.ts';

const locales = localesOnDisk();
const files = filesOnDisk('.');
const names = ['rack', 'desk', 'chair', 'bed', 'stool', 'drafts/bench', 'drafts/chest', 'drafts/leaning-chair', 'drafts/screen', 'drafts/trolley', 'drafts/two-bay'];
const items = names.map((name) => readItem(files, `steps/${name}/item.yaml`));
const wanted = items.flatMap((item) => item.parameters.map(({ name, purpose }) => ({ key: `parameters.${item.name}.${name}`, purpose })));

describe('the words of parameters', () => {
  it.each(languagesIn(locales))('are there in %s for every parameter of every item and draft, and for no others', (lang) => {
    const keys = [...readWords(locales, lang, ['parameters']).keys()];
    expect(keys.sort()).toEqual(wanted.flatMap(({ key }) => [`${key}.label`, `${key}.purpose`]).sort());
  });

  it('say in English what the items\' files say', () => {
    const words = readWords(locales, 'en', ['parameters']);
    expect(wanted.map(({ key }) => [key, words.get(`${key}.purpose`)])).toEqual(wanted.map(({ key, purpose }) => [key, purpose]));
  });
});
