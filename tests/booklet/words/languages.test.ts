import { describe, expect, it } from 'vitest';
import { findingNames } from '../../../src/check/index.ts';
import { pairPictures } from '../../../src/draw/pictograms/index.ts';
import type { Action, Caution, Tool } from '../../../src/plan/index.ts';
import type { PartKind } from '../../../src/model/index.ts';
import { describeWordsFault, languagesIn, pluralForms, readAbout, readWords, type LocaleFiles } from '../../../src/booklet/words/index.ts';
import { lengthLimit, textLength } from '../../../src/booklet/exchange/index.ts';
import { reportsOf } from '../pages/furniture-booklet.ts';
import { localesOnDisk } from '../pages/rack-booklet.ts';
import { askedLanguages } from '../../support/chosen.ts';
import { askForEverything } from './ask-for-everything.ts';
import { compareLanguages, unusedKeys } from './compare-languages.ts';

const files = localesOnDisk();

describe('the locale files', () => {
  it('are in nineteen languages and agree in keys, plural forms and placeholders', () => {
    expect(languagesIn(files)).toEqual(['am', 'ar', 'bn', 'ckb', 'el', 'en', 'es', 'fa', 'fa-AF', 'fr', 'ht', 'my', 'ps', 'pt', 'so', 'sw', 'ti', 'uk', 'ur']);
    expect(compareLanguages(files).map(describeWordsFault)).toEqual([]);
  });

  it('hold no key that no booklet asks for', () => {
    const asked = new Set<string>();
    askForEverything('en', (key) => asked.add(key));
    expect(asked.size).toBeGreaterThan(150);
    // The phone guide asks for its own in tests/guide, the page in tests/page; those of parameters are held in parameters.test.ts.
    expect(unusedKeys(files, 'en', asked).filter((key) => !/^(guide|page|parameters)\./.test(key))).toEqual([]);
  });

  // All languages have the same keys (above).
  it.each(askedLanguages)('hold every key that a booklet asks for, with all it says (%s)', (lang) => {
    expect(() => askForEverything(lang, () => undefined)).not.toThrow();
  });

  // Fittings are called by what each is.
  it('name each action, tool, caution and part of the contracts', () => {
    const keys = new Set([...readWords(files, 'en').keys()]);
    for (const key of [...namesOf(actions, 'actions.names'), ...namesOf(tools, 'booklet.tools'), ...namesOf(cautions, 'cautions', '.says'), ...namesOf(parts, 'parts', '.name').filter((key) => key !== 'parts.fitting.name')]) {
      expect(keys, key).toContain(key);
    }
  });

  it('name each finding of every size and each pair of pictures, and no others', () => {
    const words = [...readWords(files, 'en').keys()];
    const found = (['rack', 'desk', 'chair', 'bed', 'stool'] as const).flatMap(reportsOf).flatMap(({ findings }) => findings.map((finding) => `findings.${finding.name}`));
    const named = words.filter((key) => key.startsWith('findings.'));
    expect(named).toEqual(expect.arrayContaining([...new Set(found)]));
    expect(named.sort()).toEqual(findingNames.map((name) => `findings.${name}`).sort());
    expect(words.filter((key) => key.startsWith('checks.')).sort()).toEqual(Object.keys(pairPictures).map((name) => `checks.${name}`).sort());
  });

  it('say of every translation that nobody has reviewed it', () => {
    for (const lang of languagesIn(files)) expect([lang, readAbout(files, lang).reviewed, readAbout(files, lang).source]).toEqual([lang, null, lang === 'en']);
  });

  // Unicode CLDR, characterOrder of the layout (from memory): of these only the languages in Arabic letters run right to left.
  it('give each language its direction', () => {
    const rtl = languagesIn(files).filter((lang) => readAbout(files, lang).direction === 'rtl');
    expect(rtl).toEqual(['ar', 'ckb', 'fa', 'fa-AF', 'ps', 'ur']);
  });

  // Where Unicode has rules for the language, its digits and plural forms are by its own tag.
  it('count by the rules of their own language, or of one that says so', () => {
    const other = languagesIn(files).filter((lang) => new Intl.Locale(readAbout(files, lang).numbers).language !== new Intl.Locale(lang).language);
    expect(other.map((lang) => [lang, readAbout(files, lang).numbers])).toEqual([['ht', 'fr-HT']]);
  });

  it('keep captions short', () => {
    for (const lang of languagesIn(files)) {
      const captions = [...readWords(files, lang)].filter(([key]) => lengthLimit(key) !== null);
      expect(captions.length).toBeGreaterThan(30);
      for (const [key, text] of captions) expect(textLength(text), `${lang} ${key}`).toBeLessThanOrEqual(90);
    }
  });
});

describe('the comparison of languages finds', () => {
  const faults = (changed: LocaleFiles): string => compareLanguages({ ...files, ...changed }).map(describeWordsFault).join('\n');
  const fr = JSON.parse(files['fr/cautions.json'] ?? '') as Record<string, unknown>;

  it('a key that is missing', () => {
    expect(faults({ 'fr/cautions.json': JSON.stringify({ ...fr, sharp: { sign: 'Lame' } }) }))
      .toBe('locales/fr/cautions.json:1:1 cautions.sharp.says: found nothing; translate it from the source language');
  });

  it('a key too many', () => {
    expect(faults({ 'fr/cautions.json': JSON.stringify({ ...fr, noise: 'Bruit' }) }))
      .toBe('locales/fr/cautions.json:1:1 cautions.noise: found a key that the source language lacks; take it out');
  });

  it('a plural form that is missing', () => {
    const dual = files['ar/parts.json']?.replace(/ *"counted_two": "حبلان",\n/, '') ?? '';
    expect(faults({ 'ar/parts.json': dual })).toBe('locales/ar/parts.json:1:1 parts.cable.counted: found the plural forms few, many, one, other, zero; give the forms few, many, one, other, two, zero');
  });

  it('a placeholder that differs', () => {
    const renamed = files['fr/actions.json']?.replaceAll('Enrouler le {{side}}', 'Enrouler le {{cote}}') ?? '';
    expect(faults({ 'fr/actions.json': renamed })).toBe('locales/fr/actions.json:1:1 actions.wrap-side: found the placeholders "cote"; use "side"');
  });

  it('that no language is the source', () => {
    expect(faults({ 'en/about.json': files['en/about.json']?.replace('"source": true', '"source": false') ?? '' })).toContain('no source language');
  });
});

describe('plural forms', () => {
  // Unicode CLDR 48, "Language Plural Rules" chart (CHECKS "Unicode and CLDR", R/C).
  it('are those of the Unicode CLDR', () => {
    expect(pluralForms('ar')).toEqual(['few', 'many', 'one', 'other', 'two', 'zero']);
    expect(pluralForms('fr')).toEqual(['many', 'one', 'other']);
    expect(pluralForms('en')).toEqual(['one', 'other']);
  });
});

const namesOf = (all: Readonly<Record<string, true>>, under: string, ending = ''): string[] => Object.keys(all).map((name) => `${under}.${name}${ending}`);

// The compiler holds these lists complete: a new name in a contract is an error here.
const actions: Readonly<Record<Action, true>> = {
  'cut-tubes': true, 'cut-blank': true, 'mark-inside': true, 'mark-creases': true, 'mark-notches': true, 'punch-holes': true, 'cut-notches': true, crease: true,
  'half-cut': true, 'push-tubes': true, 'close-frame': true, 'turn-up': true, 'pin-corners': true, 'set-in': true, 'lay-frame': true, 'wrap-side': true, 'punch-tab': true, 'pin-side': true,
  'mark-posts': true, 'push-posts': true, drill: true, 'pin-posts': true, 'turn-item': true, 'stand-up': true, brace: true,
  'cut-panel': true, 'hold-panel': true, 'pin-panel': true,
  'slide-on': true, 'lay-panel': true, 'fit-end': true, 'fit-hinge': true, 'fit-bracket': true, 'cap-ends': true, 'fix-to-wall': true,
};
const tools: Readonly<Record<Tool, true>> = { tape: true, pencil: true, 'straight-edge': true, saw: true, knife: true, punch: true, creaser: true, mallet: true, drill: true, hands: true, file: true, screwdriver: true, scale: true, bottle: true, square: true, 'plumb-line': true, clamp: true, steps: true, block: true, board: true, water: true, 'sticky-tape': true, finder: true };
const cautions: Readonly<Record<Caution, true>> = { sharp: true, dust: true, eyes: true, gloves: true, crush: true, bit: true, lines: true, children: true, climbing: true, sitting: true, tipping: true, manual: true };
const parts: Readonly<Record<PartKind, true>> = { bar: true, fitting: true, 'long-tube': true, 'short-tube': true, post: true, joint: true, panel: true, 'flat-panel': true, 'panel-pin': true, 'joint-pin': true, 'wing-nut': true, cable: true };
