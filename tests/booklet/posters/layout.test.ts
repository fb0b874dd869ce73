import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { overview, overviewGrid, thumbScale } from '../../../src/booklet/posters/overview-layout.ts';
import { posterSheets, type PosterPaper } from '../../../src/booklet/posters/sheet.ts';
import { pictureRoom, turned, wall, wallPage } from '../../../src/booklet/posters/wall-layout.ts';

const papers: readonly PosterPaper[] = ['a3', 'a4', 'letter'];

describe('a wall page', () => {
  it('lies for a broad picture and stands for a high one', () => {
    expect(wallPage([{ width: 156, height: 98 }], 'a4').turn).toBe('lying');
    expect(wallPage([{ width: 156, height: 240 }], 'a4').turn).toBe('upright');
  });

  it('sets the picture as large as the room, by hand', () => {
    // A4 lying: 297 − 20 − 56 = 221 mm of width, 210 − 20 − 26 = 164 mm of height; 221 / 156 = 1.4166 holds for 107 mm of height.
    expect(wallPage([{ width: 156, height: 107 }], 'a4')).toEqual({ turn: 'lying', beside: false, scale: 1.416 });
  });

  it('keeps every picture in its room, larger than on any other turn', () => {
    const extents = fc.array(fc.record({ width: fc.integer({ min: 30, max: 200 }), height: fc.integer({ min: 30, max: 250 }) }), { minLength: 1, maxLength: 3 });
    fc.assert(fc.property(extents, fc.constantFrom(...papers), (pictures, paper) => {
      const { turn, scale, beside } = wallPage(pictures, paper);
      const room = pictureRoom(paper, turn);
      const sum = (lengths: readonly number[]): number => lengths.reduce((total, length) => total + length, 0) * scale;
      const white = (pictures.length - 1) * wall.between * posterSheets[paper].scale;
      const most = (lengths: readonly number[]): number => Math.max(...lengths) * scale;
      const [widths, heights] = [pictures.map(({ width }) => width), pictures.map(({ height }) => height)];
      expect(beside ? sum(widths) + white : most(widths)).toBeLessThanOrEqual(room.width + 1e-6);
      expect(beside ? most(heights) : sum(heights) + white).toBeLessThanOrEqual(room.height + 1e-6);
    }));
  });

  it('is √2 as large on A3', () => {
    const [small, large] = (['a4', 'a3'] as const).map((paper) => wallPage([{ width: 156, height: 107 }], paper).scale);
    expect((large ?? 0) / (small ?? 1)).toBeCloseTo(Math.SQRT2, 2);
    expect(turned('a3', 'lying')).toEqual({ width: 420, height: 297 });
  });

  // 20 minutes of arc for the height of a letter that is read with ease: common practice, no source.
  it('has a numeral that is read at 2 m', () => {
    const arcMinutes = (height: number, distance: number): number => (Math.atan(height / distance) * 180 * 60) / Math.PI;
    expect(arcMinutes(wall.numeral, 2000)).toBeGreaterThan(50);
  });
});

describe('the overview', () => {
  const thumb = { width: 60, height: 46 };
  it('has a cell for each step and one for the finished item, all on the page, whatever their number', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 90 }), fc.constantFrom(...papers), (count, paper) => {
      const grid = overviewGrid(count, paper, thumb);
      expect(grid.columns * grid.rows).toBeGreaterThanOrEqual(count);
      expect(grid.columns * (grid.rows - 1)).toBeLessThan(count);
      const { width, height } = posterSheets[paper];
      expect(grid.columns * grid.cell.width + (grid.columns - 1) * overview.gap).toBeLessThanOrEqual(width - 20);
      expect(grid.rows * grid.cell.height + (grid.rows - 1) * overview.gap + overview.head).toBeLessThanOrEqual(height - 20);
      expect(thumbScale(grid, thumb) * thumb.width).toBeLessThanOrEqual(grid.cell.width + 1e-6);
      expect(thumbScale(grid, thumb)).toBeGreaterThan(0);
    }));
  });

  it('has numerals of 3 mm and more', () => {
    expect(overview.numeral).toBeGreaterThanOrEqual(3);
  });
});
