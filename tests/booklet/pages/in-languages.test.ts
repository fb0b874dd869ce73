import { describe, expect, it } from 'vitest';
import { bookletPages } from '../../../src/booklet/pages/index.ts';
import { caption } from '../../../src/booklet/pages/captions.ts';
import type { BookletInput } from '../../../src/booklet/pages/index.ts';
import { rackInput, rackPlan } from './rack-booklet.ts';

const input = rackInput({ lang: 'ar+fr' });
const pages = bookletPages(input);
const [arabic, french] = [rackInput({ lang: 'ar' }), rackInput({ lang: 'fr' })];

/** A text as it stands in the HTML, its isolates as spans. */
const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('\'', '&#x27;').replaceAll('"', '&quot;');
const spoken = (text: string): string => escaped(text).replace(/\u2066([^\u2069]*)\u2069/g, '<span dir="ltr" class="apart">$1</span>');
const inBoth = (say: (each: BookletInput) => string): readonly string[] => [
  `<span class="in-language" lang="ar" dir="rtl">${spoken(say(arabic))}</span>`,
  `lang="fr" dir="ltr" style="font-size:max(10pt, 0.893em)">${spoken(say(french))}</span>`,
];
const missing = (says: readonly ((each: BookletInput) => string)[]): readonly string[] => says.flatMap(inBoth).filter((piece) => !pages.html.includes(piece));

describe('a booklet in two languages', () => {
  it('has the direction of the first', () => {
    expect([pages.dir, bookletPages(rackInput({ lang: 'fr+ar' })).dir]).toEqual(['rtl', 'ltr']);
  });

  it('says every caption in both, each in an element of its own', () => {
    expect(missing(rackPlan.steps.map((step) => (each) => caption(each, step)))).toEqual([]);
  });

  it('says every heading, caution, check, tool and part in both', () => {
    const keys = [
      ...['before', 'parts', 'dimensions', 'lengths', 'pattern', 'creasing', 'steps', 'checks', 'load', 'colophon'].map((name) => `booklet.chapters.${name}`),
      ...['manual', 'sharp', 'dust', 'eyes', 'gloves', 'crush', 'bit', 'children', 'climbing', 'tipping'].map((name) => `cautions.${name}.says`),
      ...['hands', 'tape', 'saw', 'knife', 'drill'].map((name) => `booklet.tools.${name}`),
      ...['panel', 'long-tube', 'post', 'joint', 'panel-pin', 'wing-nut', 'cable'].map((name) => `parts.${name}.name`),
      ...['check', 'figure', 'limit', 'verdict', 'verdicts.pass'].map((name) => `booklet.colophon.${name}`),
      ...input.report.findings.map(({ name }) => `findings.${name}`),
      ...rackPlan.steps.flatMap(({ check }) => (check ? [`checks.${check.name}`] : [])),
      'booklet.defer', 'booklet.fix-to-wall', 'booklet.look-at', 'booklet.compare', 'dimensions.width', 'items.rack.sizes.tall',
    ];
    expect(missing(keys.map((key) => ({ words }) => words.t(key)))).toEqual([]);
  });

  it('has the first\'s words for its pictures, and both in its title', () => {
    // But for the marks at the feet: it has more pages.
    const labels = (html: string): string[] => [...html.replace(/<footer.*?<\/footer>/gs, '').matchAll(/aria-label="([^"]*)"/g)].map((match) => match[1] ?? '');
    expect(labels(pages.html)).toEqual(labels(bookletPages(arabic).html));
    expect(pages.title).toBe(`${bookletPages(arabic).title} · ${bookletPages(french).title}`);
  });

  it('marks both among the languages', () => {
    const marked = [...pages.html.matchAll(/<b lang="([^"]*)"><span dir="auto"/g)].map((match) => match[1]);
    // On the cover, and in the colophon once in each language.
    expect(marked).toEqual(['fr', 'ar', 'fr', 'ar', 'fr', 'ar']);
  });

  it('has its figures once, in a left-to-right span', () => {
    const lengths = (html: string): string[] => [...html.matchAll(/<td class="figure"><span dir="ltr" class="apart">[^<]*<\/span>/g)].map(([cell]) => cell);
    expect(lengths(pages.html)).toEqual(lengths(bookletPages(arabic).html));
  });

  it('breaks no step from its caption: every band names its step in both', () => {
    for (const band of pages.html.split('<article').slice(1)) expect(band.match(/class="in-language" lang="(ar|fr)"/g)?.length).toBeGreaterThanOrEqual(2);
  });
});

it('a booklet in three languages stands in three columns, one in one language in none', () => {
  const { html } = bookletPages(rackInput({ lang: 'en+ar+fr' }));
  const first = /<span class="caption"><span class="in-languages beside">(.*?)<\/span><\/span><\/h2>/.exec(html)?.[1] ?? '';
  expect([...first.matchAll(/class="in-language" lang="([a-z]+)"/g)].map((match) => match[1])).toEqual(['en', 'ar', 'fr']);
  expect(bookletPages(arabic).html).not.toMatch(/in-language|several/);
});
