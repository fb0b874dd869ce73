import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import type { PDFDocument } from 'pdf-lib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hasPoppler } from '../booklet/print/poppler.ts';
import { dictsWith, infoText, readPdf } from '../booklet/print/readPdf.ts';
import { newWorkshop, type Outcome, type Workshop } from './workshop.ts';

/** The most a booklet may weigh, so that it can be sent over a poor line. Ours. */
const HEAVIEST = 2.2e6;
const LOW = 'booklets/rack/low';
const GUIDE = 'rack-low.html';

const PICTURES = 'rack-low-pictures.pdf';
const firstMade = ['rack-low-ar+fr-words.pdf', 'rack-low-ar-words.pdf', 'rack-low-en-words.pdf', PICTURES];

let shop: Workshop;
let first: Outcome;
let again: Outcome;
/** The same with the low rack 100 mm narrower. */
let narrow: Workshop;
let narrowed: Outcome;

beforeAll(async () => {
  shop = newWorkshop();
  first = await shop.run(['make', 'rack', '--size', 'low', '--lang', 'en', 'ar+fr', 'ar', '--paper', 'a4']);
  again = await shop.run(['make', 'rack', '--size', 'low', '--lang', 'fr', 'ar', 'en', 'ar+fr', 'ar+fr', '--edition', 'words', 'pictures', '--paper', 'a4', '--out', 'again']);
  narrow = newWorkshop();
  narrow.change('steps/rack/item.yaml', '  low:\n    width: 800 mm', '  low:\n    width: 700 mm');
  narrowed = await narrow.run(['make', 'rack', '--size', 'low', '--lang', 'fr', '--edition', 'pictures']);
});
afterAll(() => { shop.close(); narrow.close(); });

const sha256 = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');
const made = (from: Workshop, folder: string): readonly string[] => from.files().filter((path) => path.startsWith(`${folder}/`)).map((path) => path.slice(folder.length + 1));

interface Record_ {
  readonly parameters: Readonly<Record<string, { readonly value: number; readonly unit: string }>>;
  readonly dimensions: readonly { readonly name: string; readonly value: number; readonly unit: string }[];
  readonly parts: readonly { readonly kind: string; readonly count: number; readonly mass: number }[];
  readonly cutLengths: readonly { readonly kind: string; readonly length: number; readonly unit: string; readonly count: number }[];
  readonly flatPattern: { readonly blank: readonly number[]; readonly inside: readonly number[]; readonly notch: readonly number[] };
  readonly steps: readonly {
    readonly number: number; readonly key: string; readonly action: string; readonly times: number; readonly people: number;
    readonly tools: readonly string[]; readonly newParts: readonly { readonly kind: string; readonly count: number }[];
  }[];
  readonly findings: readonly { readonly name: string; readonly figure: number; readonly limit: number; readonly unit: string; readonly source: string; readonly verdict: string }[];
}
const recordOf = (from: Workshop): Record_ => JSON.parse(from.read(`${LOW}/build.json`).toString()) as Record_;
const dimension = (record: Record_, name: string): number | undefined => record.dimensions.find((each) => each.name === name)?.value;

describe('make', () => {
  it('writes the booklets asked for, the phone guide and build.json where it says, and nothing else', () => {
    expect(first).toMatchObject({ code: 0, told: '' });
    expect(first.out.trimEnd().split('\n').sort()).toEqual([...firstMade, GUIDE].map((name) => `${LOW}/${name}`));
    expect(made(shop, LOW)).toEqual(['build.json', ...firstMade, GUIDE].sort());
    expect(shop.files().filter((path) => path.endsWith('.unfinished'))).toEqual([]);
    expect(shop.files().filter((path) => !/^(booklets|again|steps|locales)\//.test(path))).toEqual([]);
  });

  it('puts the paper into the name when it is not A4', () => {
    expect(narrowed).toMatchObject({ code: 0, told: '' });
    expect(made(narrow, LOW)).toEqual(['build.json', GUIDE, 'rack-low-pictures-letter.pdf', PICTURES].sort());
  });

  it('gives the same bytes again, in whatever order and company the languages are asked for, the pictures whatever is asked for', () => {
    expect(again).toMatchObject({ code: 0, told: '' });
    for (const name of ['build.json', GUIDE, ...firstMade]) {
      expect([name, sha256(shop.read(`again/rack/low/${name}`))]).toEqual([name, sha256(shop.read(`${LOW}/${name}`))]);
    }
  });

  it('makes the same guide by a command of its own, without a browser', async () => {
    const made_ = await shop.run(['guide', 'rack', '--size', 'low', '--out', 'phone'], { FOLDWRIGHT_BROWSER: '/nowhere' });
    expect(made_).toMatchObject({ code: 0, told: '', out: `phone/rack/low/${GUIDE}\n` });
    expect(sha256(shop.read(`phone/rack/low/${GUIDE}`))).toBe(sha256(shop.read(`${LOW}/${GUIDE}`)));
    expect(await shop.ask(['guide', 'rack', '--lang', 'xx'])).toMatchObject({ code: 2, told: expect.stringContaining('--lang xx: not known') as string });
  });

  it.each(firstMade)('makes a light file with no drawn-up letters: %s', async (name) => {
    const bytes = shop.read(`${LOW}/${name}`);
    expect(bytes.length).toBeLessThanOrEqual(HEAVIEST);
    const pdf = await readPdf(bytes);
    expect(pdf.getPageCount()).toBeGreaterThan(10);
    expect(dictsWith(pdf, 'Type', 'Font').length).toBeGreaterThan(0);
    expect(dictsWith(pdf, 'Subtype', 'Type3')).toEqual([]);
  });
});

describe('build.json', () => {
  it('carries the parameters as the item file gives them', () => {
    expect(recordOf(shop).parameters).toMatchObject({
      width: { value: 800, unit: 'mm' }, depth: { value: 400, unit: 'mm' }, height: { value: 1000, unit: 'mm' },
      decks: { value: 2, unit: '1' }, lowest: { value: 150, unit: 'mm' }, headroom: { value: 50, unit: 'mm' },
      spacing: { value: 1000 - 150 - 50, unit: 'mm' },
    });
  });

  // By hand from the kit: a tube ends 20 mm from the middle of the post, and a stud reaches 42 mm beyond that middle; a cap on either end of a post is 3 mm thick.
  it('carries the outside dimensions', () => {
    const record = recordOf(shop);
    expect(dimension(record, 'width')).toBe(800 + 2 * 20 + 2 * 42);
    expect(dimension(record, 'depth')).toBe(400 + 2 * 20 + 2 * 42);
    expect(dimension(record, 'height')).toBe(1000 + 2 * 3);
  });

  // By hand: two decks of four tubes, four joints and one panel; four posts with a pin and nut at each deck; three faces of two cables.
  it('carries the parts and the lengths to cut', () => {
    const record = recordOf(shop);
    const counts = Object.fromEntries(record.parts.map(({ kind, count }) => [kind, count]));
    expect(counts).toMatchObject({ post: 4, 'long-tube': 4, 'short-tube': 4, joint: 8, panel: 2, 'joint-pin': 8, 'wing-nut': 8, cable: 6 });
    expect(record.cutLengths).toHaveLength(3);
    for (const [kind, length] of [['post', 1000], ['long-tube', 800], ['short-tube', 400]] as const) {
      expect(record.cutLengths).toContainEqual({ kind, length, unit: 'mm', count: 4 });
    }
  });

  it('carries the steps in order, with their work, tools, people and new parts', () => {
    const { steps } = recordOf(shop);
    expect(steps.map(({ number }) => number)).toEqual(steps.map((_, index) => index + 1));
    expect(new Set(steps.map(({ key }) => key)).size).toBe(steps.length);
    for (const { key, action, tools, people } of steps) {
      expect(key === action || key.startsWith(`${action}:`)).toBe(true);
      expect(tools.length).toBeGreaterThan(0);
      expect([1, 2]).toContain(people);
    }
    const place = (key: string): number => steps.findIndex((step) => step.key === key);
    const order = ['cut-blank', 'mark-creases', 'crease', 'half-cut', 'lay-frame', 'wrap-side:left', 'wrap-side:front', 'push-posts:front', 'stand-up', 'brace:back'].map(place);
    expect(order).not.toContain(-1);
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });

  it('brings every part to hand in just one step', () => {
    const { steps, parts } = recordOf(shop);
    const brought = new Map<string, number>();
    for (const { newParts, times } of steps) {
      for (const { kind, count } of newParts) brought.set(kind, (brought.get(kind) ?? 0) + count * times);
    }
    expect(Object.fromEntries(brought)).toEqual(Object.fromEntries(parts.map(({ kind, count }) => [kind, count])));
  });

  it('carries the findings, each with figure, limit, unit and source, none failed', () => {
    const { findings } = recordOf(shop);
    expect(findings.length).toBeGreaterThan(10);
    for (const { name, figure, limit, unit, source, verdict } of findings) {
      expect([name, Number.isFinite(figure), Number.isFinite(limit)]).toEqual([name, true, true]);
      expect(unit).not.toBe('');
      expect(source).not.toBe('');
      expect(['pass', 'caution']).toContain(verdict);
    }
  });
});

describe('a rack 100 mm narrower', () => {
  it('changes the dimensions and the flat pattern by 100 mm, and nothing across', () => {
    const [before, after] = [recordOf(shop), recordOf(narrow)];
    expect(dimension(after, 'width')).toBe((dimension(before, 'width') ?? 0) - 100);
    expect(dimension(after, 'depth')).toBe(dimension(before, 'depth'));
    for (const what of ['blank', 'inside'] as const) {
      const [was = [], now = []] = [before.flatPattern[what], after.flatPattern[what]];
      expect(now[0]).toBeCloseTo((was[0] ?? 0) - 100, 3);
      expect(now[1]).toBe(was[1]);
    }
    expect(after.flatPattern.notch).toEqual(before.flatPattern.notch);
    expect(after.cutLengths).toContainEqual({ kind: 'long-tube', length: 700, unit: 'mm', count: 4 });
  });

  it('changes the pictures', async () => {
    const draw = ['draw', 'rack', '--size', 'low', '--step', '6', '--out', 'step.svg'];
    for (const each of [shop, narrow]) expect(await each.ask(draw)).toMatchObject({ code: 0, told: '', out: 'step.svg\n' });
    const [was, now] = [shop, narrow].map((each) => each.read('step.svg').toString());
    expect(now).not.toBe(was);
    for (const svg of [was, now]) expect(svg).toMatch(/^<svg [^>]*width="[\d.]+mm" height="[\d.]+mm"[^]*<\/svg>\s*$/);
  });

  it('changes the PDF and the mark that says what it was made from', async () => {
    const name = `${LOW}/${PICTURES}`;
    const [was, now] = [shop.read(name), narrow.read(name)];
    expect(sha256(now)).not.toBe(sha256(was));
    const mark = (pdf: PDFDocument): string | undefined => infoText(pdf, 'ContentMark');
    const [markWas, markNow] = [mark(await readPdf(was)), mark(await readPdf(now))];
    expect(markWas).toMatch(/^[0-9a-f]{8}$/);
    expect(markNow).toMatch(/^[0-9a-f]{8}$/);
    expect(markNow).not.toBe(markWas);
  });

  it.skipIf(!hasPoppler)('changes the printed table of dimensions', () => {
    const printed = (from: Workshop): string => execFileSync('pdftotext', ['-layout', '-', '-'], { input: from.read(`${LOW}/${PICTURES}`), encoding: 'utf8' });
    // Low, standard and tall side by side in one row.
    expect(printed(shop)).toMatch(/\b924\s+1124\s+1024\b/);
    expect(printed(narrow)).toMatch(/\b824\s+1124\s+1024\b/);
  });
});
