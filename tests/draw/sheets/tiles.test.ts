import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { markingSheets, overlap, sheetRoom, sheetWhite } from '../../../src/draw/sheets/index.ts';
import { laidOut } from '../../../src/draw/sheets/laid-out.ts';
import { plateTemplate, type Template } from '../../../src/draw/sheets/templates.ts';
import { tiled, type Tile } from '../../../src/draw/sheets/tiles.ts';
import { readPaths } from '../kit/read-paths.ts';
import type { Mark } from '../../../src/draw/kit/marks.ts';
import type { Vec2 } from '../../../src/model/index.ts';
import type { Box } from '../../../src/draw/index.ts';
import { everySize, modelOf } from '../../support/items.ts';
import { outside, overlaps, pointsOutside } from '../flat/inspect.ts';

/** A4 by ISO 216; US Letter 8.5 × 11 in (ANSI/ASME Y14.1 size A). */
const papers = { a4: { width: 210, height: 297 }, letter: { width: 215.9, height: 279.4 } } as const;
const onPaper = (paper: keyof typeof papers, size: typeof everySize[number]) => ({ ...size, sheet: papers[paper], title: `${size.name} on ${paper}` });
const firstSizes = everySize.filter(({ item, size }) => item.sizes[0]?.name === size);
const sizes = [...everySize.map((size) => onPaper('a4', size)), ...firstSizes.map((size) => onPaper('letter', size))];

/** Points of a drawing's lines every 2 mm at most, and the middles of its circles, in the drawing's own mm. */
function samples(template: Template): readonly Vec2[] {
  const own = template.draw({ scale: 1, origin: [0, 0] });
  return own.flatMap((mark) => pointsOf(mark)).map(([x, y]): Vec2 => [x, -y]);
}

function pointsOf(mark: Mark): readonly Vec2[] {
  if (mark.mark === 'circle') return [mark.centre];
  if (mark.mark !== 'line') return [];
  const ring = mark.closed ? [...mark.points, ...mark.points.slice(0, 1)] : mark.points;
  return ring.slice(1).flatMap((to, index): readonly Vec2[] => {
    const from = ring[index] ?? to;
    const steps = Math.max(1, Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) / 2));
    return Array.from({ length: steps + 1 }, (_, step): Vec2 => [from[0] + ((to[0] - from[0]) * step) / steps, from[1] + ((to[1] - from[1]) * step) / steps]);
  });
}

const onSheet = ({ view }: Tile, [x, y]: Vec2): Vec2 => [view.origin[0] + x * view.scale, view.origin[1] - y * view.scale];
const inDrawing = ({ view }: Tile, [x, y]: Vec2): Vec2 => [x - view.origin[0], view.origin[1] - y];
const within = ({ x, y, width, height }: Box, [px, py]: Vec2): boolean => px >= x - 1e-6 && px <= x + width + 1e-6 && py >= y - 1e-6 && py <= y + height + 1e-6;
/** Nought is written without a sign. */
const key = (at: Vec2): string => at.map((value) => String(Math.round(value * 1e6) / 1e6 + 0)).join(' ');

describe.each(sizes)('the tiles of $title', ({ item, size, sheet }) => {
  const laid = laidOut(modelOf(item, size), sheet);

  it('are at true size, and every line of the drawing is on some tile', () => {
    for (const { template, tiles } of laid.tilings) {
      for (const tile of tiles) expect(tile.view.scale).toBe(1);
      const lost = samples(template).filter((point) => !tiles.some((tile) => within(tile.cell, onSheet(tile, point))));
      expect(lost).toEqual([]);
    }
  });

  it('each have a line, and are told apart by row and column', () => {
    for (const { template, tiles } of laid.tilings) {
      const points = samples(template);
      for (const tile of tiles) expect(points.some((point) => within(tile.cell, onSheet(tile, point))), tile.label).toBe(true);
      expect(new Set(tiles.map(({ label }) => label)).size).toBe(tiles.length);
      for (const { label, row, column } of tiles) expect(label).toBe(`${String.fromCharCode(65 + row)}${column + 1}`);
    }
  });

  it('share their register marks with each neighbour, on the same spots of the drawing', () => {
    for (const { tiles } of laid.tilings) {
      for (const tile of tiles) {
        const neighbours = tiles.filter((other) => Math.abs(other.row - tile.row) + Math.abs(other.column - tile.column) === 1);
        const own = tile.register.map((mark) => key(inDrawing(tile, mark)));
        const shared = neighbours.map((other) => other.register.map((mark) => key(inDrawing(other, mark))).filter((mark) => own.includes(mark)));
        for (const marks of shared) expect(marks).toHaveLength(2);
        expect([...new Set(shared.flat())].sort()).toEqual([...own].sort());
      }
    }
  });

  it('hang together, so that they can be joined to one sheet', () => {
    for (const { tiles } of laid.tilings) {
      const reached = new Set(tiles.slice(0, 1));
      for (let before = 0; before < reached.size;) {
        before = reached.size;
        for (const tile of tiles) if ([...reached].some((other) => Math.abs(other.row - tile.row) + Math.abs(other.column - tile.column) === 1)) reached.add(tile);
      }
      expect(reached.size).toBe(tiles.length);
    }
  });

  it('have one window for all that lies inside the white of the sheet', () => {
    const { room: { width, height, window } } = laid;
    expect(width + 2 * sheetWhite).toBeCloseTo(sheet.width, 9);
    expect(height + 2 * sheetWhite).toBeCloseTo(sheet.height, 9);
    expect(window.x + window.width).toBeLessThanOrEqual(width + 1e-9);
    expect(window.y + window.height).toBeLessThanOrEqual(height + 1e-9);
  });

  it('come out as sheets that each carry bars of 100 mm both ways, a number and nothing outside or on top of each other', () => {
    const pictures = markingSheets(modelOf(item, size), sheet, '1 · 00000000');
    expect(pictures).toHaveLength(1 + laid.tilings.flatMap(({ tiles }) => tiles).length + laid.stripSheets.length);
    const { x, y } = laid.room.window;
    for (const [index, picture] of pictures.entries()) {
      expect(picture.svg).toContain(`data-line="bar" stroke="#000" stroke-width=".5"`);
      const bars = readPaths(picture.svg).filter(({ element }) => element.includes('data-line="bar"')).map(({ points }) => points.flat());
      const long = bars.map(([x1 = 0, y1 = 0, x2 = 0, y2 = 0]) => [x2 - x1, y2 - y1].map((length) => Math.round(length * 100) / 100).join()).filter((ends) => ends === '100,0' || ends === '0,100');
      expect(long.sort()).toEqual(['0,100', '100,0']);
      expect(picture.svg.match(/data-pictogram="tape"/g)).toHaveLength(2);
      expect(picture.svg).toContain(`>${index + 1}/${pictures.length}<`);
      expect(overlaps(picture.labels), picture.id).toEqual([]);
      expect(outside(picture), picture.id).toEqual([]);
      expect(pointsOutside(picture), picture.id).toEqual([]);
      expect(picture.svg.replace(/<[^>]*>/g, ' ').replace(/\bmm\b|[A-Z]\d*\b/g, '')).not.toMatch(/[g-zG-Z]/);
    }
    expect([x, y]).toEqual([9, 19]);
  });
});

describe('the tiles of any flat panel', () => {
  const any = fc.record({
    width: fc.double({ min: 20, max: 1600, noNaN: true }), height: fc.double({ min: 20, max: 1600, noNaN: true }),
    holes: fc.array(fc.record({ at: fc.tuple(fc.double({ min: 0.03, max: 0.97, noNaN: true }), fc.double({ min: 0.03, max: 0.97, noNaN: true })) }), { maxLength: 6 }),
  });

  it('show each of its lines and holes', () => {
    fc.assert(fc.property(any, ({ width, height, holes }) => {
      const template = plateTemplate({ marked: 'upper', width, height, thickness: 9, skin: 1, partIds: [], holes: holes.map(({ at: [x, y] }) => ({ at: [x * width, y * height] as const, diameter: 6 })) });
      const { tiles } = tiled(template, sheetRoom(papers.a4).window);
      expect(samples(template).filter((point) => !tiles.some((tile) => within(tile.cell, onSheet(tile, point))))).toEqual([]);
      // The edge runs through every sheet of the rim: with fewer sheets it cannot be shown.
      const { window } = sheetRoom(papers.a4);
      const [columns, rows] = [[width, window.width], [height, window.height]].map(([length = 0, room = 0]) => Math.max(1, Math.ceil((length - overlap) / (room - overlap)))) as [number, number];
      const least = Math.min(columns, rows) === 1 ? Math.max(columns, rows) : 2 * (columns + rows) - 4;
      expect(tiles.length).toBeGreaterThanOrEqual(least);
    }), { numRuns: 60 });
  });
});
