import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { languagesIn, pluralForms, readWords } from '../../src/booklet/words/index.ts';
import { localeFiles } from '../../src/cli/files.ts';
import { chosenLanguage } from '../../src/page/browser/words.tsx';

const project = fileURLToPath(new URL('../../', import.meta.url));
const files = localeFiles(join(project, 'locales'));
const languages = languagesIn(files);
const keysOf = (lang: string): readonly string[] => [...readWords(files, lang, ['page']).keys()];
const placeholders = (text: string | undefined): readonly string[] => [...(text ?? '').matchAll(/\{\{(\w+)\}\}/g)].map(([, name]) => name ?? '').sort();

/** Text of all sources of the page. */
const sources = readdirSync(join(project, 'src/page/browser'), { recursive: true, encoding: 'utf8' })
  .filter((path) => /\.tsx?$/.test(path)).map((path) => readFileSync(join(project, 'src/page/browser', path), 'utf8')).join('\n');

describe('the words of the page', () => {
  it.each(languages)('have the same keys and placeholders in %s as in English, without plural forms', (lang) => {
    expect(keysOf(lang)).toEqual(keysOf('en'));
    const [own, english] = [readWords(files, lang, ['page']), readWords(files, 'en', ['page'])];
    for (const key of keysOf('en')) expect([key, placeholders(own.get(key))]).toEqual([key, placeholders(english.get(key))]);
    for (const form of pluralForms(lang)) expect(keysOf(lang).filter((key) => key.endsWith(`_${form}`))).toEqual([]);
  });

  it('are all used by the page, and all that it asks for are there', () => {
    const exact = new Set([...sources.matchAll(/'(page\.[\w.-]+)'/g)].map(([, key]) => key));
    const begun = [...sources.matchAll(/`(page\.[\w.-]+\.)\$\{/g)].map(([, start]) => start ?? '');
    expect(keysOf('en').filter((key) => !exact.has(key) && !begun.some((start) => key.startsWith(start)))).toEqual([]);
    expect([...exact].filter((key) => !keysOf('en').includes(key ?? ''))).toEqual([]);
    expect(begun.filter((start) => !keysOf('en').some((key) => key.startsWith(start)))).toEqual([]);
    expect(exact.size + begun.length).toBeGreaterThan(40);
  });

  it('come in the reader\'s language where the page speaks it, else in English', () => {
    expect(chosenLanguage(['ar', 'en', 'fr'], ['', 'fr-CA', 'en'])).toBe('fr');
    expect(chosenLanguage(['ar', 'en', 'fr'], ['sw', 'so-SO'])).toBe('en');
    expect(chosenLanguage(['en', 'fa', 'fa-AF'], ['fa-AF', 'en'])).toBe('fa-AF');
    expect(chosenLanguage(['en', 'fa', 'fa-AF'], ['fa-IR'])).toBe('fa');
  });
});
