import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cornerOn, creepOf, marksOn, SHEET_THICKNESS } from '../../../src/booklet/stitch/layout.ts';
import { signatureSizes, stitchedSheets, type StitchedSheet } from '../../../src/booklet/stitch/signatures.ts';
import { leafedThrough } from './fold.ts';

/** `8 1 | 2 7`: front and back of a sheet, blanks as a dash. */
const row = ({ front, back }: StitchedSheet): string =>
  [front.left, front.right, back.left, back.right].map((leaf) => leaf ?? '–').join(' ').replace(/^(\S+ \S+) /, '$1 | ');

describe('the published worked example', () => {
  // R: http://johnpaulandbertha.org/wbjp/notation/finale/iwbni/fs77.htm (1999): a booklet of 14 pages with two blanks at its end,
  // two pages to a side. Fronts, sheet after sheet: 16,1,14,3,12,5,10,7; then the turned pile, from the innermost sheet: 8,9,6,11,4,13,2,15.
  const fronts = [[16, 1], [14, 3], [12, 5], [10, 7]];
  const backsFromInside = [[8, 9], [6, 11], [4, 13], [2, 15]];

  it('of 16 pages comes out', () => {
    const sheets = stitchedSheets(16, 'ltr');
    expect(sheets.map(({ front }) => [front.left, front.right])).toEqual(fronts);
    expect([...sheets].reverse().map(({ back }) => [back.left, back.right])).toEqual(backsFromInside);
  });

  // The same source's formulas N,1,N-2,3,… and (N/2),(N/2)+1,… with N = 8 (C).
  it('of 8 pages comes out', () => {
    expect(stitchedSheets(8, 'ltr').map(row)).toEqual(['8 1 | 2 7', '6 3 | 4 5']);
  });

  it('of 16 pages with more than one signature is that of 8 pages twice', () => {
    expect(stitchedSheets(16, 'ltr', 2).map(row)).toEqual(['8 1 | 2 7', '6 3 | 4 5', '16 9 | 10 15', '14 11 | 12 13']);
  });
});

describe('folding', () => {
  const booklets = fc.record({ pages: fc.integer({ min: 2, max: 240 }), dir: fc.constantFrom<'ltr' | 'rtl'>('ltr', 'rtl'), most: fc.integer({ min: 1, max: 20 }) });

  it('gives the pages in reading order, from either side', () => {
    fc.assert(fc.property(booklets, ({ pages, dir, most }) => {
      const read = leafedThrough(stitchedSheets(pages, dir, most), dir);
      expect(read.filter((leaf) => leaf !== null)).toEqual(Array.from({ length: pages }, (_, index) => index + 1));
    }));
  });

  it('gives a multiple of four with the first and the last page outside and all blanks before the last', () => {
    fc.assert(fc.property(booklets, ({ pages, dir, most }) => {
      const read = leafedThrough(stitchedSheets(pages, dir, most), dir);
      expect(read.length % 4).toBe(0);
      expect(read.length - pages).toBeLessThan(4);
      expect(read[0]).toBe(1);
      expect(read.at(-1)).toBe(pages);
      const blanks = read.flatMap((leaf, index) => (leaf === null ? [index] : []));
      blanks.forEach((at) => { expect(at).toBeGreaterThanOrEqual(pages - 1); });
    }));
  });

  it('read from the wrong side gives no reading order: the check can fail', () => {
    expect(leafedThrough(stitchedSheets(8, 'ltr'), 'rtl')).toEqual([8, 7, 6, 5, 4, 3, 2, 1]);
  });

  it('never staples more sheets than were asked for, and spreads them evenly', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 120 }), fc.integer({ min: 1, max: 20 }), (sheets, most) => {
      const sizes = signatureSizes(sheets, most);
      expect(sizes.reduce((sum, size) => sum + size, 0)).toBe(sheets);
      expect(Math.max(...sizes)).toBeLessThanOrEqual(most);
      expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThanOrEqual(1);
    }));
    expect(signatureSizes(16, 15)).toEqual([8, 8]);
    expect(signatureSizes(15, 15)).toEqual([15]);
  });

  it('puts a single page outside in front', () => {
    expect(leafedThrough(stitchedSheets(1, 'rtl'), 'rtl')).toEqual([1, null, null, null]);
  });

  it('refuses what is no booklet', () => {
    expect(() => stitchedSheets(0, 'ltr')).toThrow('a booklet of 0 pages');
    expect(() => stitchedSheets(8, 'ltr', 0)).toThrow('0 sheets in a signature');
  });
});

describe('right-to-left booklets', () => {
  it('are bound on the right: the mirrored sheets', () => {
    expect(stitchedSheets(8, 'rtl').map(row)).toEqual(['1 8 | 7 2', '3 6 | 5 4']);
  });
});

describe('places on the sheet', () => {
  const a4 = { width: 297, height: 210 };
  const a5 = { width: 148, height: 210 };

  it('touch the fold from both sides', () => {
    expect(cornerOn(a4, a5, 'left', 0)).toEqual([0.5, 0]);
    expect(cornerOn(a4, a5, 'right', 0)).toEqual([148.5, 0]);
  });

  // Creep: in all, the thickness of the paper times the number of nested sheets (R: https://www.pdfpress.app/blog/booklet-creep-compensation-guide); the outermost moves by nothing.
  it('of inner sheets lie nearer to the fold by the paper that is folded round them', () => {
    const sheets = stitchedSheets(60, 'ltr');
    expect(sheets).toHaveLength(15);
    expect(sheets.map((sheet) => creepOf(sheet, SHEET_THICKNESS))[0]).toBe(0);
    expect(creepOf({ depth: 14 }, 0.1)).toBeCloseTo(1.4, 9);
    expect(cornerOn(a4, a5, 'left', 1.4)[0]).toBeCloseTo(1.9, 9);
    expect(cornerOn(a4, a5, 'right', 1.4)[0]).toBeCloseTo(147.1, 9);
  });

  it('have marks to fold on every front, two staples on each outermost one, and a lower bar from one signature to the next', () => {
    const sheets = stitchedSheets(120, 'ltr');
    const marks = sheets.map((sheet) => marksOn(a4, sheet, 2));
    expect(marks.map((each) => each.filter(({ mark }) => mark === 'fold').length)).toEqual(Array(30).fill(2));
    const staples = marks.flatMap((each, index) => each.flatMap((mark) => (mark.mark === 'staple' ? [[index, (mark.from + mark.to) / 2]] : [])));
    expect(staples).toEqual([[0, 52.5], [0, 157.5], [15, 52.5], [15, 157.5]]);
    const bars = marks.flat().flatMap((mark) => (mark.mark === 'order' ? [mark] : []));
    expect(bars).toHaveLength(2);
    expect(bars[1]?.to).toBe(bars[0]?.from);
    for (const mark of marks.flat()) expect(mark.x).toBe(148.5);
    expect(marksOn(a4, { signature: 0, depth: 0, front: { left: 4, right: 1 }, back: { left: 2, right: 3 } }, 1).some(({ mark }) => mark === 'order')).toBe(false);
  });
});
