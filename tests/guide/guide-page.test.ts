import { createHash } from 'node:crypto';
import { fileURLToPath } from 'node:url';
import { Linter } from 'eslint';
import ts from 'typescript';
import { beforeAll, describe, expect, it } from 'vitest';
import { loadWords } from '../../src/booklet/index.ts';
import { guideRacks } from '../support/chosen.ts';
import { rack } from '../support/rack.ts';
import { localesOnDisk } from '../booklet/pages/rack-booklet.ts';
import { dataOf, guideOf, languages, rackGuide, rackVariant } from './made.ts';
import type { Variant } from '../../src/cli/record.ts';

/** The most a guide may weigh, bytes: it goes to old phones by memory cards and poor lines. Ours. */
const HEAVIEST = 4_000_000;

let variants: readonly Variant[];
let guides: readonly string[];
beforeAll(async () => {
  variants = await Promise.all(guideRacks.map(rackVariant));
  guides = await Promise.all(guideRacks.map((size) => rackGuide(rack, size)));
});

const low = (): string => guides[0] ?? '';
const sha256 = (text: string): string => createHash('sha256').update(text).digest('base64');

describe('the guide', () => {
  it('weighs less than it may in every size, with all languages', () => {
    expect(guides.length).toBe(guideRacks.length);
    for (const guide of guides) {
      expect(Buffer.byteLength(guide)).toBeGreaterThan(500_000);
      expect(Buffer.byteLength(guide)).toBeLessThan(HEAVIEST);
    }
  });

  it('is the same, byte by byte, when it is made again', async () => {
    const [variant] = variants;
    expect(variant && sha256(await guideOf(variant))).toBe(sha256(low()));
  });

  it('has a page for every step and a drawing of each of its pictures', () => {
    for (const [index, { plan, pictures }] of variants.entries()) {
      const html = guides[index] ?? '';
      expect(html.match(/data-times="\d+"/g)).toHaveLength(plan.steps.length);
      const stepPictures = pictures.filter(({ of }) => of.what === 'step').length;
      const [, steps = ''] = /(<section id="run-.*)<section id="checks"/s.exec(html) ?? [];
      const runs = plan.steps.filter(({ run }, at) => run !== null && run !== plan.steps[at - 1]?.run).length;
      const [, bench = ''] = /(<section id="step-.*?)<section id="run-/s.exec(html) ?? [];
      expect((bench + steps).match(/<div class="drawing"><svg/g)).toHaveLength(stepPictures + runs);
    }
  });

  it('names nothing outside of itself', () => {
    expect(low().match(/(?:src|href|srcset|action)="(?!#)[^"]*"/g)).toBeNull();
    expect(low().match(/url\(|@import|https?:\/\//g)).toBeNull();
  });

  // Content Security Policy Level 3, W3C: a hash source is the base64 of the SHA-256 of the element's text (M).
  it('allows its own script and style alone', () => {
    const [, policy = ''] = /Content-Security-Policy" content="([^"]*)"/.exec(low()) ?? [];
    const [, style = ''] = /<style>(.*?)<\/style>/s.exec(low()) ?? [];
    const [, script = ''] = /<script>(.*?)<\/script>/s.exec(low()) ?? [];
    expect(policy).toBe(`default-src 'none'; script-src 'sha256-${sha256(script)}'; style-src 'sha256-${sha256(style)}'; base-uri 'none'; form-action 'none'`);
    expect(low()).not.toMatch(/ style="| on[a-z]+="/);
  });

  it('has every text in every language, numbered alike, and no number without a text', () => {
    const { texts, languages: told } = dataOf(low());
    expect(told.map(({ tag }) => tag).sort()).toEqual(languages.map(({ lang }) => lang).sort());
    const [first = []] = texts;
    for (const each of texts) {
      expect(each).toHaveLength(first.length);
      expect(each.filter((text) => text.trim() === '')).toEqual([]);
    }
    const numbers = [...low().matchAll(/data-(?:say|label)="(\d+)"/g)].map(([, number]) => Number(number));
    expect(Math.max(...numbers)).toBe(first.length - 1);
  });

  it('holds the languages asked for and no others', async () => {
    const french = await guideOf(variants[0] ?? await rackVariant('low'), [loadWords(localesOnDisk(), 'fr')]);
    expect(dataOf(french).languages.map(({ tag }) => tag)).toEqual(['fr']);
    expect(french).toContain('<html lang="fr"');
    expect(french).toContain('Étagère');
  });

  it('draws every pictogram it refers to', () => {
    const kept = new Set([...low().matchAll(/<symbol id="(\w+)"/g)].map(([, id]) => id));
    const used = new Set([...low().matchAll(/<use xlink:href="#(\w+)"/g)].map(([, id]) => id));
    expect(used.size).toBeGreaterThan(40);
    expect([...used].filter((id) => !kept.has(id))).toEqual([]);
    expect(kept.size).toBe(used.size);
  });

  it('shows on its pages no id twice', () => {
    const ids = [...low().replace(/<script[^>]*>.*?<\/script>/gs, '').matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });
});

describe('the script in the phone', () => {
  // ECMAScript 2017 is what browsers of 2018 know (M); TypeScript's own library files say what that holds.
  it('calls no function younger than ECMAScript 2017', () => {
    const entry = fileURLToPath(new URL('../../src/guide/browser/main.ts', import.meta.url));
    const program = ts.createProgram([entry], {
      target: ts.ScriptTarget.ES2022, lib: ['lib.es2017.d.ts', 'lib.dom.d.ts'], types: [], strict: true, noEmit: true, skipLibCheck: true,
      module: ts.ModuleKind.ESNext, moduleResolution: ts.ModuleResolutionKind.Bundler, allowImportingTsExtensions: true, noUncheckedIndexedAccess: true,
    });
    const faults = ts.getPreEmitDiagnostics(program).map(({ messageText, file }) => `${file?.fileName ?? ''}: ${ts.flattenDiagnosticMessageText(messageText, ' ')}`);
    expect(faults).toEqual([]);
  });

  it('is read by a parser that knows nothing younger than that year', () => {
    const scripts = [...low().matchAll(/<script>(.*?)<\/script>/gs)].map(([, script = '']) => script);
    expect(scripts.map(({ length }) => length > 5000)).toEqual([true]);
    for (const script of scripts) expect(refusedBy2017(script)).toEqual([]);
    for (const younger of ['a?.b', 'a ?? b', '({ ...a })', 'try {} catch {}', 'class A { b = 1; }', '1_000', 'a ||= b', '1n', '/(?<=a)b/', 'async function* f() {}']) expect(refusedBy2017(younger), younger).toHaveLength(1);
  });
});

/** What a parser of ECMAScript 2017 refuses of a script. */
const refusedBy2017 = (script: string): readonly string[] =>
  new Linter().verify(script, [{ languageOptions: { ecmaVersion: 2017, sourceType: 'script' } }]).map(({ line, column, message }) => `${line}:${column} ${message}`);
