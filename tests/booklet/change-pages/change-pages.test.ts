import { describe, expect, it } from 'vitest';
import { changePages, ranges } from '../../../src/booklet/index.ts';
import { languagesIn, loadWords } from '../../../src/booklet/words/index.ts';
import { localesOnDisk } from '../pages/rack-booklet.ts';
import { changeInput } from './change.ts';

const text = (html: string): string => html.replace(/<[^>]+>/g, ' ').replace(/&nbsp;|\u00a0/g, ' ').replace(/\s+/g, ' ');
const languages = languagesIn(localesOnDisk());

describe('the pages of what changed', () => {
  const { html } = changePages(changeInput());
  const told = text(html);

  it('say which print this is, which it replaces, and which pages to print again', () => {
    expect(told).toMatch(/What changed Item Storage rack, Standard Content mark 0123abcd Replaces print 4567cdef Pages to print again 1, 4–6, 20 \/ 34 Pictures and words · English 3 \/ 28 Pictures only · US Letter/);
    expect(text(changePages(changeInput({ earlierMark: null })).html)).not.toContain('Replaces print');
  });

  it('tell each figure before and now, and of a step only what is otherwise', () => {
    for (const row of [
      'Width 600 mm 640 mm', 'Height 1500 mm –', ' 4 posts 6 posts', 'Post 4 posts, 1500 mm 4 posts, 1480.5 mm · 2 posts, 300 mm', 'Stock tubes 5 6', 'Saw cuts – different', 'Flat pattern – different',
      '×1 · 6 min · Tape measure ×2 · 1 h 6 min', 'Step 4 Step 2', 'Step 9 ×1', 'Lean before it tips passes, 22.9° (Limit: 10°) caution, 10.3° (Limit: 10°)', '(2) – fails', 'none proven', 'masonry timber', 'plasterboard no',
      'Serve as they are 2 posts, 300 mm', 'Can be shortened to 1480.5 mm 4 posts, 1500 mm', 'Come from what was left over 2 long tubes, 560 mm',
    ]) expect(told.replaceAll(/ (?=[,)])/g, '')).toContain(row);
  });

  it('show each picture beside what it was, at one scale, and say where that is kept no more', () => {
    const { pairs } = changeInput();
    expect(html.match(/<section class="pair">/g)).toHaveLength(pairs.length);
    expect(html.match(/no picture kept/g)).toHaveLength(pairs.filter(({ before }) => before === null).length);
    const widths = new Map([...html.matchAll(/data-picture="([^"]*)"[^>]* width="([\d.]+)mm"/g)].map(([, id = '', width]) => [id, Number(width)]));
    for (const { before, after } of pairs) {
      expect(widths.get(after.id)).toBeLessThanOrEqual(Math.min(after.width, 96));
      if (before !== null) expect((widths.get(before.id) ?? 0) / (widths.get(after.id) ?? 1)).toBeCloseTo(0.9, 2);
    }
  });

  it.each(languages)('are made in %s, from the side it is read from', (lang) => {
    const { html: page, dir, title, pageCount } = changePages(changeInput({ lang }));
    expect(dir).toBe(loadWords(localesOnDisk(), lang).about.direction);
    expect(page.split('<section class="page"')).toHaveLength(pageCount + 1);
    expect(title).not.toBe('');
    for (const [, alt] of page.matchAll(/role="img"[^>]*aria-label="([^"]*)"/g)) expect(alt?.trim()).not.toBe('');
  });
});

it('pages in a row are told as a range', () => {
  expect(ranges([6, 1, 4, 5, 20])).toBe('1, 4–6, 20');
  expect(ranges([])).toBe('');
});
