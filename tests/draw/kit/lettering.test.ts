import { readFileSync } from 'node:fs';
import { inflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { capHeights, fontSize, textBox, textWidth } from '../../../src/draw/kit/lettering.ts';
import { advances } from '../../../src/draw/kit/advances.ts';
import type { Weight } from '../../../src/draw/kit/lettering.ts';

/** A table of a WOFF 1.0 font file (W3C recommendation "WOFF File Format 1.0", section 4). */
function fontTables(file: Buffer): Record<string, Buffer> {
  const count = file.readUInt16BE(12);
  return Object.fromEntries(Array.from({ length: count }, (_, index) => {
    const at = 44 + 20 * index;
    const [offset, packed, size] = [file.readUInt32BE(at + 4), file.readUInt32BE(at + 8), file.readUInt32BE(at + 12)];
    const data = file.subarray(offset, offset + packed);
    return [file.toString('latin1', at, at + 4), packed < size ? inflateSync(data) : data];
  }));
}

/** Glyph of a character by the font's format 4 character map. */
function glyphOf(cmap: Buffer, code: number): number {
  const tables = Array.from({ length: cmap.readUInt16BE(2) }, (_, index) => cmap.subarray(cmap.readUInt32BE(8 + 8 * index)));
  const map = tables.find((table) => table.readUInt16BE(0) === 4);
  if (!map) throw new Error('no format 4 map');
  const size = map.readUInt16BE(6);
  for (let at = 0; at < size; at += 2) {
    if (code > map.readUInt16BE(14 + at)) continue;
    const start = map.readUInt16BE(16 + size + at);
    if (code < start) return 0;
    const delta = map.readUInt16BE(16 + 2 * size + at);
    const range = map.readUInt16BE(16 + 3 * size + at);
    return range === 0 ? (code + delta) & 0xffff : (map.readUInt16BE(16 + 3 * size + at + range + 2 * (code - start)) + delta) & 0xffff;
  }
  return 0;
}

describe('lettering', () => {
  // Outside: the Noto Sans font files themselves (@fontsource/noto-sans), tables OS/2, cmap, hmtx.
  it.each([400, 700] as const)('knows the advance widths and the cap height of the font, weight %i', (weight: Weight) => {
    const tables = fontTables(readFileSync(`node_modules/@fontsource/noto-sans/files/noto-sans-latin-${weight}-normal.woff`));
    const table = (name: string): Buffer => tables[name] ?? Buffer.alloc(0);
    const em = table('head').readUInt16BE(18);
    const cap = table('OS/2').readInt16BE(88);
    const long = table('hhea').readUInt16BE(34);
    expect(fontSize(cap / em)).toBeCloseTo(1, 6);
    for (const sign of Object.keys(advances)) {
      const glyph = glyphOf(table('cmap'), sign.codePointAt(0) ?? 0);
      expect(glyph, sign).toBeGreaterThan(0);
      const advance = table('hmtx').readUInt16BE(4 * Math.min(glyph, long - 1));
      expect(textWidth(sign, cap / em, weight), sign).toBeCloseTo(advance / em, 6);
    }
  });

  it('keeps figures large: at least 2.5 mm on the pattern page, 3.2 mm elsewhere', () => {
    expect(capHeights.pattern).toBeGreaterThanOrEqual(2.5);
    expect(Math.min(capHeights.step, capHeights.count, capHeights.order)).toBeGreaterThanOrEqual(3.2);
  });

  it('turns the box with the text', () => {
    const upright = textBox('190.5', [50, 50], 4, 400, 0);
    const turned = textBox('190.5', [50, 50], 4, 400, -90);
    expect(turned.width).toBeCloseTo(upright.height, 9);
    expect(turned.height).toBeCloseTo(upright.width, 9);
    expect(upright.x + upright.width / 2).toBeCloseTo(50, 9);
  });

  it('refuses a sign whose width it does not know; signs of direction have none', () => {
    expect(() => textWidth('٣', 4, 400)).toThrow(/"٣"/);
    expect(textWidth('\u20661000\u2069', 4, 400)).toBe(textWidth('1000', 4, 400));
  });
});
