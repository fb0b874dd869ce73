import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { breakPages, leastScale } from '../../../src/booklet/pages/break-pages.ts';
import { packPages, packRows } from '../../../src/booklet/pages/pack.ts';
import { loadInKilograms } from '../../../src/booklet/pages/index.ts';

const tall = (...heights: number[]): { height: number; leads: boolean }[] => heights.map((height) => ({ height: Math.abs(height), leads: height < 0 }));
const heights = (pages: readonly (readonly { readonly height: number }[])[]): number[][] => pages.map((page) => page.map((entry) => entry.height));

describe('packing pages', () => {
  it('fills each page in order', () => {
    expect(heights(packPages(tall(100, 100, 60, 100), 260))).toEqual([[100, 100, 60], [100]]);
  });

  it('leaves room on the first page', () => {
    expect(heights(packPages(tall(100, 100, 100), 260, 180))).toEqual([[100], [100, 100]]);
  });

  it('keeps what leads with what it leads to', () => {
    expect(heights(packPages(tall(100, 100, -20, -20, 100), 260))).toEqual([[100, 100], [20, 20, 100]]);
  });

  it('refuses what is higher than a page', () => {
    expect(() => packPages(tall(261), 260)).toThrow('261 mm of height do not fit a page that holds 260 mm');
  });

  it('loses nothing, keeps the order and never overfills', () => {
    fc.assert(fc.property(fc.array(fc.record({ height: fc.integer({ min: 1, max: 90 }), leads: fc.boolean() })), fc.integer({ min: 100, max: 300 }), (entries, first) => {
      const limited = entries.map((entry, index) => ({ ...entry, leads: entry.leads && index % 3 === 0 }));
      const pages = packPages(limited, 300, first);
      expect(pages.flat()).toEqual(limited);
      pages.forEach((page, index) => {
        expect(page.reduce((sum, entry) => sum + entry.height, 0)).toBeLessThanOrEqual(index === 0 ? first : 300);
        if (page.length > 0) expect(index === pages.length - 1 || page.at(-1)?.leads !== true).toBe(true);
      });
    }));
  });

  it('puts things side by side as long as they fit', () => {
    expect(packRows([{ width: 40 }, { width: 50 }, { width: 1 }, { width: 100 }], 100, 10).map((row) => row.length)).toEqual([2, 1, 1]);
  });
});

describe('breaking pages', () => {
  const steps = (...entries: number[]): { height: number; flexible: number; leads: boolean }[] =>
    entries.map((height) => ({ height: Math.abs(height), flexible: height < 0 ? 0 : 0.8 * height, leads: height < 0 }));
  const plain = (entries: ReturnType<typeof steps>, room: number, first?: number): unknown =>
    breakPages(entries, room, first).map((page) => [page.entries.map((entry) => entry.height), page.scale, page.white]);

  it('leaves pictures as they are where they fit, and tells what is left over', () => {
    expect(plain(steps(130, 130, 130, 130), 274)).toEqual([[[130, 130], 1, 14], [[130, 130], 1, 14]]);
  });

  // By hand: 40 + 2 × 130 = 300 mm into 274 takes 26 of 208 mm of pictures: 1 − 26 / 208 = 0.875.
  it('sets pictures smaller rather than leave a page half empty', () => {
    expect(plain(steps(-40, 130, 130), 274)).toEqual([[[40, 130, 130], 0.875, 0]]);
  });

  it('lets the last page alone be short', () => {
    expect(plain(steps(90, 90, 90, 90), 270)).toEqual([[[90, 90, 90], 1, 0], [[90], 1, 180]]);
  });

  it('never sets pictures smaller than can be read', () => {
    expect(plain(steps(170, 170), 274)).toEqual([[[170], 1, 104], [[170], 1, 104]]);
    expect(() => plain(steps(400), 274)).toThrow('400 mm of height do not fit a page that holds 274 mm');
  });

  it('leaves room on the first page', () => {
    expect(plain(steps(130, 130, 130), 274, 180)).toEqual([[[130], 1, 50], [[130, 130], 1, 14]]);
  });

  describe('parts an entry', () => {
    interface Pieced { readonly height: number; readonly flexible: number; readonly pieces: readonly number[]; readonly leads?: boolean }
    const pieced = (...pieces: number[]): Pieced => ({ height: pieces.reduce((sum, each) => sum + each, 0), flexible: 0, pieces });
    const parting = { pieces: ({ pieces }: Pieced) => pieces.length, part: ({ pieces }: Pieced, from: number, to: number) => pieced(...pieces.slice(from, to)) };
    const parted = (...entries: Pieced[]): number[][][] => breakPages(entries, 270, 270, leastScale, parting).map((page) => page.entries.map(({ pieces }) => [...pieces]));

    // By hand: whole, no two of 150, 160, 160 and 150 fit 270 mm; parted, 150 + 100, 60 + 160 and 150 do.
    it('between its pieces where that saves a page', () => {
      expect(parted(pieced(150), pieced(100, 60), pieced(160), pieced(150))).toEqual([[[150], [100]], [[60], [160]], [[150]]]);
    });

    it('not where no page is saved', () => {
      expect(parted(pieced(150), pieced(100, 100), pieced(20))).toEqual([[[150]], [[100, 100], [20]]]);
    });

    it('that is higher than a page, so that no page is left with little', () => {
      expect(parted(pieced(90, 90, 60, 60, 60))).toEqual([[[90, 90, 60]], [[60, 60]]]);
    });

    it('never from all that leads up to it', () => {
      const pages = breakPages([{ ...pieced(200), leads: false }, { ...pieced(30), leads: true }, { ...pieced(60, 200), leads: false }], 270, 270, leastScale, parting);
      expect(pages.every(({ entries }) => entries.at(-1)?.pieces[0] !== 30)).toBe(true);
    });
  });

  it('loses nothing, keeps the order and never overfills', () => {
    fc.assert(fc.property(fc.array(fc.record({ height: fc.integer({ min: 20, max: 120 }), share: fc.double({ min: 0, max: 0.9, noNaN: true }), leads: fc.boolean() })), (given) => {
      const entries = given.map(({ height, share, leads }, index) => ({ height, flexible: height * share, leads: leads && index % 3 === 0 }));
      const pages = breakPages(entries, 270, 250);
      expect(pages.flatMap((page) => page.entries)).toEqual(entries);
      pages.forEach(({ entries: here, scale, white }, index) => {
        expect(scale).toBeGreaterThanOrEqual(leastScale);
        const used = here.reduce((sum, entry) => sum + entry.height - (1 - scale) * entry.flexible, 0);
        const room = index === 0 ? 250 : 270;
        expect(used).toBeLessThanOrEqual(room + 1e-6);
        if (scale === 1) expect(used + white).toBeCloseTo(room, 6);
        expect(index === pages.length - 1 || here.at(-1)?.leads !== true).toBe(true);
      });
    }));
  });
});

describe('a safe load', () => {
  // N / 9.81, by hand: 98.1 N = 10 kg, 147.15 N = 15 kg, 9.81 N = 1 kg.
  it('is printed in whole 5 kg, below 10 kg in whole kg, always rounded down', () => {
    expect([147.15, 147.1, 98.1, 98, 90, 9.81, 9.8, 0].map(loadInKilograms)).toEqual([15, 10, 10, 9, 9, 1, 0, 0]);
  });
});
