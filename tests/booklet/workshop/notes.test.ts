import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readNotes } from '../../../src/booklet/workshop/index.ts';
import { items } from '../../support/items.ts';
import { planOf } from '../../support/plans.ts';

const keys = new Set(['wrap-side', 'wrap-side:left', 'half-cut']);
const read = (text: string) => readNotes('steps/rack/notes/en.md', text, keys);

describe('trainer\'s notes', () => {
  it('are parted by step; what stands before the first heading goes for all', () => {
    const { general, bySteps } = read('For all.\n\n## wrap-side\n\nSlowly.\n\n- four hands\n- no haste\n\n1. first\n\n## wrap-side:left\n\nThis one.\n');
    expect(general.map(({ text }) => text)).toEqual(['For all.']);
    expect([...bySteps.keys()]).toEqual(['wrap-side', 'wrap-side:left']);
    expect(bySteps.get('wrap-side')?.map(({ kind, sign, text }) => [kind, sign, text])).toEqual([
      ['paragraph', '', 'Slowly.'], ['entry', '–', 'four hands'], ['entry', '–', 'no haste'], ['entry', '1.', 'first'],
    ]);
  });

  // Common inputs that inject: XSS (own cases, no source).
  it.each([
    ['<script>alert(1)</script>', '&lt;script&gt;'],
    ['<img src=x onerror=alert(1)>', '&lt;img src=x'],
    ['a & b < c', 'a &amp; b &lt; c'],
    ['[click](javascript:alert(1))', '[click](javascript:alert('],
    ['![picture](http://example.org/a.png)', '![picture](http://example.org/a.png)'],
    ['<b title="x">bold</b>', '&lt;b title=&quot;x&quot;&gt;'],
    ['&lt;i&gt;', '&lt;i&gt;'],
  ])('print %s as text', (text, shown) => {
    const [block] = read(text).general;
    const plain = block?.html.replace(/<span dir="ltr" class="apart">|<\/span>/g, '') ?? '';
    expect(plain).toContain(shown);
    expect(plain).not.toMatch(/<(?!\/?(strong|em|br)\b)/);
  });

  it('keep stress, and measures in order in any direction of writing', () => {
    const [block] = read('Press **hard** at 15 mm, then 637 × 18 mm, not 3 times.').general;
    expect(block?.html).toBe('Press <strong>hard</strong> at <span dir="ltr" class="apart">15 mm</span>, then <span dir="ltr" class="apart">637 × 18 mm</span>, not <span dir="ltr" class="apart">3</span> times.');
    expect(block?.text).toBe('Press hard at 15 mm, then 637 × 18 mm, not 3 times.');
  });

  it.each([
    ['## wrap-sid\n', 'steps/rack/notes/en.md:1:1: found ## wrap-sid, would be right: the key of a step or its action, one of wrap-side, wrap-side:left, half-cut'],
    ['For all.\n\n## half-cut\n\nOne.\n\n## half-cut\n\nTwo.\n', 'steps/rack/notes/en.md:7:1: found ## half-cut a second time, would be right: one heading for each step'],
    ['# Notes\n', 'steps/rack/notes/en.md:1:1: found # Notes, would be right: paragraphs, lists and **stress** under headings such as ## wrap-side'],
  ])('with a heading that fits nowhere are refused with file and line: %j', (text, told) => {
    expect(() => read(text)).toThrow(told);
  });
});

describe('the notes in the items\' folders', () => {
  const written = items.flatMap((item) => readdirSync(new URL(`../../../steps/${item.name}/notes/`, import.meta.url)).map((file) => ({ item, file, name: `${item.name}/${file}` })));

  it.each(written)('$name name steps of the item, and say something of each that is learned', ({ item, file }) => {
    const all = item.sizes.flatMap(({ name }) => planOf(item, name).steps.map(({ action }) => action));
    const path = `steps/${item.name}/notes/${file}`;
    const { general, bySteps } = readNotes(path, readFileSync(new URL(`../../../${path}`, import.meta.url), 'utf8'), new Set(all));
    expect(general.length).toBeGreaterThan(1);
    expect([...new Set(all)].filter((action) => (bySteps.get(action) ?? []).length === 0)).toEqual([]);
  });

  it('are there in English for every item, and for the rack in French and Arabic', () => {
    const names = written.map(({ name }) => name);
    for (const { name } of items) expect(names).toContain(`${name}/en.md`);
    expect(names).toEqual(expect.arrayContaining(['rack/fr.md', 'rack/ar.md']));
  });
});
