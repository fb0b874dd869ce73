// Against the packaged font's own tables (WOFF 1.0, W3C; OpenType cmap format 4, hmtx, OS/2).
import { readFileSync } from 'node:fs';
import { inflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { capHeight, textSize } from '../../../src/draw/picture/sizes.ts';
import { textAt, textWidth } from '../../../src/draw/picture/text.ts';

const tables = fontTables('node_modules/@fontsource/noto-sans/files/noto-sans-latin-700-normal.woff');

describe('text', () => {
  it('is as wide as the font says', () => {
    for (const sign of '0123456789×+=,.- ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz°/½¼¾øØ()%') {
      expect(textWidth(sign), sign).toBeCloseTo((advance(sign) * textSize) / 1000, 9);
    }
  });

  it('has capitals of at least 3.2 mm', () => {
    const capitals = table('OS/2').readInt16BE(88) / table('head').readUInt16BE(18);
    expect(capHeight).toBeCloseTo(capitals * textSize, 9);
    expect(capHeight).toBeGreaterThanOrEqual(3.2);
  });

  // ISO/IEC Guide 37 (R): running text of 10 pt or more; 1 pt = 25.4/72 mm.
  it('is at least 10 pt', () => {
    expect(textSize / (25.4 / 72)).toBeGreaterThanOrEqual(10);
  });

  it('gives direction marks no width and unknown signs a whole square', () => {
    expect(textWidth('\u20661000\u2069')).toBe(textWidth('1000'));
    expect(textWidth('٣')).toBe(textSize);
  });

  it('keeps signs that mean something in SVG', () => {
    expect(textAt('a<b&c', [10, 10])).toContain('>a&lt;b&amp;c</text>');
  });
});

function fontTables(file: string): Map<string, Buffer> {
  const font = readFileSync(file);
  const entries = Array.from({ length: font.readUInt16BE(12) }, (_, i): [string, Buffer] => {
    const at = 44 + 20 * i;
    const [offset, packed, length] = [font.readUInt32BE(at + 4), font.readUInt32BE(at + 8), font.readUInt32BE(at + 12)];
    const data = font.subarray(offset, offset + packed);
    return [font.toString('latin1', at, at + 4), packed < length ? inflateSync(data) : data];
  });
  return new Map(entries);
}

function table(name: string): Buffer {
  const found = tables.get(name);
  if (!found) throw new Error(`the font has no table ${name}`);
  return found;
}

function advance(sign: string): number {
  return table('hmtx').readUInt16BE(4 * Math.min(glyph(sign), table('hhea').readUInt16BE(34) - 1));
}

function glyph(sign: string): number {
  const code = sign.codePointAt(0) ?? 0;
  const cmap = table('cmap');
  const offsets = Array.from({ length: cmap.readUInt16BE(2) }, (_, i) => cmap.readUInt32BE(8 + 8 * i));
  const at = offsets.find((offset) => cmap.readUInt16BE(offset) === 4) ?? 0;
  const double = cmap.readUInt16BE(at + 6);
  for (let i = 0; i < double; i += 2) {
    const start = cmap.readUInt16BE(at + 16 + double + i);
    if (code > cmap.readUInt16BE(at + 14 + i) || code < start) continue;
    const delta = cmap.readInt16BE(at + 16 + 2 * double + i);
    const spot = at + 16 + 3 * double + i;
    const range = cmap.readUInt16BE(spot);
    return ((range === 0 ? code : cmap.readUInt16BE(spot + range + 2 * (code - start))) + delta) & 0xffff;
  }
  throw new Error(`the font has no ${sign}`);
}
