import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { languagesIn, readWords } from '../../../src/booklet/words/index.ts';
import { localesOnDisk } from '../pages/rack-booklet.ts';

const files = localesOnDisk();
const glossary = z.record(z.string(), z.strictObject({ word: z.string().trim().min(1), means: z.string().trim().min(1) }));
const glossaryOf = (lang: string): z.infer<typeof glossary> => glossary.parse(JSON.parse(files[`${lang}/glossary.json`] ?? 'null'));
const terms = Object.keys(glossaryOf('en'));

/** Terms that are parts, by their key in parts.json; a tube has a long and a short form. */
const parts: Readonly<Record<string, readonly string[]>> = {
  panel: ['panel'], 'corner joint': ['joint'], 'panel pin': ['panel-pin'], 'joint pin': ['joint-pin'], 'wing nut': ['wing-nut'], cable: ['cable'], post: ['post'],
  tube: ['long-tube', 'short-tube'],
};

describe('the glossary', () => {
  it('has a word and its meaning for the trade\'s terms', () => {
    expect(terms.length).toBeGreaterThan(25);
    for (const [term, keys] of Object.entries(parts)) expect([terms.includes(term), keys.length > 0]).toEqual([true, true]);
  });

  it.each(languagesIn(files))('has the same terms in %s as in English', (lang) => {
    expect(Object.keys(glossaryOf(lang))).toEqual(terms);
  });

  it.each(languagesIn(files))('calls a part in %s as the list of parts does', (lang) => {
    const words = readWords(files, lang);
    const own = glossaryOf(lang);
    const differ = Object.entries(parts).flatMap(([term, keys]) => keys
      .map((key) => [own[term]?.word ?? '', words.get(`parts.${key}.name`) ?? ''].map((word) => word.toLocaleLowerCase(lang)))
      .filter(([word = '', name = '']) => (keys.length === 1 ? word !== name : !name.includes(word) || word === '')));
    expect(differ).toEqual([]);
  });

  it('has one word for one thing: no two terms of a language share theirs', () => {
    for (const lang of languagesIn(files)) {
      const words = Object.values(glossaryOf(lang)).map(({ word }) => word.toLocaleLowerCase(lang));
      expect([lang, words.filter((word, index) => words.indexOf(word) !== index)]).toEqual([lang, []]);
    }
  });
});
