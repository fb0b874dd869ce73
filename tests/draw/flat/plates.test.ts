import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { platePaper, platePicture } from '../../../src/draw/flat/index.ts';
import { tell } from '../../../src/scene/index.ts';
import { toldText } from '../../../src/draw/kit/told-text.ts';
import { plateMarks } from '../../../src/draw/flat/plate-picture.ts';
import type { FlatPanel, Vec2 } from '../../../src/model/index.ts';
import { flat, linesOf, outside, overlaps, pointsOutside, struckFigures, texts, viewOf, widthAndHeight } from './inspect.ts';

const stock: Vec2 = [1500, 1000];

/** Two rows of holes, 32 mm from the upper and lower edge, the first and last 40 mm from the ends. */
function plateOf(width: number, height: number, columns: number): FlatPanel {
  const pitch = (width - 80) / (columns - 1);
  const holes = Array.from({ length: columns }, (_, index) => 40 + index * pitch)
    .flatMap((x) => [32, height - 32].map((y) => ({ at: [x, y] as Vec2, diameter: 6 })));
  return { marked: 'upper', width, height, thickness: 9, skin: 1, holes, partIds: ['backrest-back'] };
}

const backrest = plateOf(172, 194, 2);
const guard = plateOf(892, 234, 4);

const anyPlate = fc.record({
  width: fc.integer({ min: 120, max: 1100 }),
  height: fc.integer({ min: 120, max: 500 }),
  columns: fc.integer({ min: 2, max: 5 }),
}).map(({ width, height, columns }) => plateOf(width, height, columns));

describe('the picture of a flat panel', () => {
  it('keeps its labels apart, all it draws on the paper and its figures free of lines, for any panel', () => {
    fc.assert(fc.property(anyPlate, fc.integer({ min: 1, max: 12 }), (plate, count) => {
      const picture = platePicture(plate, stock, count);
      expect(picture.labels.length).toBeGreaterThan(6);
      expect(overlaps(picture.labels)).toEqual([]);
      expect(outside(picture)).toEqual([]);
      expect(pointsOutside(picture)).toEqual([]);
      expect(struckFigures(plateMarks(plate, stock, count, platePaper))).toEqual([]);
    }), { numRuns: 200 });
  });

  it('tells the sides, each place of a hole once from one corner, the holes and the panels', () => {
    // By hand: columns at 40 and 172 − 40, rows at 32 and 194 − 32.
    expect([...texts(platePicture(backrest, stock, 1))].sort()).toEqual(['1', '2', '0', '0', '172', '194', '40', '132', '32', '162', 'Ø6', '×4', '×1'].sort());
    const drawn = texts(platePicture(guard, stock, 2));
    for (const text of ['892', '234', '40', ...[1, 2].map((holes) => toldText(tell.mm(40 + (holes * 812) / 3))), '852', '32', '202', '×8', '×2']) expect(drawn).toContain(text);
  });

  it('tells holes of two diameters apart', () => {
    const two: FlatPanel = { ...backrest, holes: [...backrest.holes, { at: [86, 97], diameter: 20 }] };
    const drawn = texts(platePicture(two, stock, 1));
    for (const text of ['Ø6', '×4', 'Ø20', '×1']) expect(drawn).toContain(text);
  });

  it('draws the panel to the scale it names, its holes where they are', () => {
    for (const plate of [backrest, guard]) {
      const view = viewOf(plateMarks(plate, stock, 1, platePaper), 'plate');
      const outline = linesOf(view.marks).find(({ pen }) => pen.name === 'cut');
      const [width, height] = widthAndHeight(outline?.points ?? []);
      expect(width).toBeCloseTo(plate.width * view.scale, 6);
      expect(height).toBeCloseTo(plate.height * view.scale, 6);
      const [left, bottom] = outline?.points[0] ?? [NaN, NaN];
      const centres = flat(view.marks).flatMap((mark) => (mark.mark === 'circle' ? [mark.centre] : []));
      expect(centres).toHaveLength(plate.holes.length);
      centres.forEach(([x, y], index) => {
        expect((x - left) / view.scale).toBeCloseTo(plate.holes[index]?.at[0] ?? NaN, 6);
        expect((bottom - y) / view.scale).toBeCloseTo(plate.holes[index]?.at[1] ?? NaN, 6);
      });
    }
  });

  it('lays the panel into a corner of the stock panel, to one scale', () => {
    const { marks, scale } = viewOf(plateMarks(guard, stock, 1, platePaper), 'stock');
    const outlines = linesOf(marks).filter(({ pen }) => pen.name === 'cut').map(({ points }) => points);
    const sizes = outlines.map((points) => widthAndHeight(points).map((side) => Math.round((side / scale) * 1000) / 1000));
    expect(sizes).toEqual([[1500, 1000], [892, 234]]);
    expect(outlines[0]?.[0]).toEqual(outlines[1]?.[0]);
  });

  it('refuses a stock panel that is too small and turns the panel when only that fits', () => {
    expect(() => platePicture(guard, [800, 800], 1)).toThrow('The flat panel of 892.0 × 234.0 mm does not fit on the stock panel of 800 × 800 mm');
    const { marks, scale } = viewOf(plateMarks(guard, [800, 900], 1, platePaper), 'stock');
    const [, own] = linesOf(marks).filter(({ pen }) => pen.name === 'cut').map(({ points }) => widthAndHeight(points));
    expect(own?.map((side) => Math.round(side / scale))).toEqual([234, 892]);
  });

  it('writes figures at least as high as the smallest readable size, and comes out the same each time', () => {
    const { svg } = platePicture(guard, stock, 2);
    const caps = [...svg.matchAll(/font-size="([\d.]+)"/g)].map(([, size]) => Number(size) * 0.714);
    expect(Math.min(...caps)).toBeGreaterThanOrEqual(3.2);
    expect(platePicture(guard, stock, 2).svg).toBe(svg);
    expect(svg.replace(/ stroke-dasharray="[^"]*"| data-scale="[^"]*"/g, '')).not.toMatch(/\d\.\d{3}|NaN|Infinity|undefined/);
  });

  it('is as stored', async () => {
    await expect(platePicture(guard, stock, 2).svg).toMatchFileSnapshot('./stored/plate.svg');
  });
});
