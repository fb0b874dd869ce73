import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DrawnPicture } from '../../../src/draw/index.ts';
import { cutBarsPicture, markingPicture, patternPaper, patternPicture, sectionSeries, spacingPicture, stepPaper } from '../../../src/draw/flat/index.ts';
import type { Marking } from '../../../src/draw/flat/index.ts';
import { stageMarks } from '../../../src/draw/flat/marking-picture.ts';
import { patternMarks } from '../../../src/draw/flat/pattern-picture.ts';
import type { FlatPattern } from '../../../src/model/index.ts';
import { outside, overlaps, pointsOutside, struckFigures } from './inspect.ts';
import { kitWith, patternFor } from './patterns.ts';

const hardware = { tube: { outside: 28, inside: 23 }, pin: { diameter: 5, length: 17, headDiameter: 16, headHeight: 3 } };

const markings: readonly Marking[] = [
  { stage: 'blank', stock: [2400, 2000] }, { stage: 'inside' }, { stage: 'creases' }, { stage: 'notches' },
  { stage: 'holes' }, { stage: 'notches-cut' }, { stage: 'crease' }, { stage: 'half-cut' },
];

const anyPattern = fc.record({
  width: fc.integer({ min: 500, max: 1100 }),
  depth: fc.integer({ min: 300, max: 600 }),
  tube: fc.integer({ min: 22, max: 40 }),
  thickness: fc.integer({ min: 5, max: 14 }),
}).map(({ width, depth, tube, thickness }) => patternFor(width, depth, kitWith({ tube, thickness })));

function pictures(pattern: FlatPattern): readonly DrawnPicture[] {
  return [
    patternPicture(pattern),
    ...markings.map((marking) => markingPicture(pattern, marking)),
    sectionSeries(pattern, 'left', hardware),
    sectionSeries(pattern, 'back', hardware),
  ];
}

function sound(picture: DrawnPicture): void {
  expect(picture.labels.length, picture.svg).toBeGreaterThan(0);
  expect(overlaps(picture.labels), picture.svg).toEqual([]);
  expect(outside(picture), picture.svg).toEqual([]);
  expect(pointsOutside(picture), picture.svg).toEqual([]);
}

describe('every flat picture', () => {
  it('keeps its labels apart and all it draws on the paper, for any panel', () => {
    fc.assert(fc.property(anyPattern, (pattern) => pictures(pattern).forEach(sound)), { numRuns: 100 });
  });

  it('lets no line run through a figure, for any panel', () => {
    fc.assert(fc.property(anyPattern, (pattern) => {
      expect(struckFigures(patternMarks(pattern, patternPaper)), 'pattern').toEqual([]);
      for (const marking of markings) expect(struckFigures(stageMarks(pattern, marking, stepPaper)), marking.stage).toEqual([]);
    }), { numRuns: 100 });
  });

  it('is a whole svg element in mm, left to right, with as many boxes as texts stand in it', () => {
    for (const { svg, labels, width, height } of pictures(patternFor(1000, 500))) {
      expect(svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" .*<\/svg>$/s);
      expect(svg).toContain(`viewBox="0 0 ${width} ${height}"`);
      expect(svg).toContain('direction="ltr"');
      expect(svg).toContain('font-family="Noto Sans"');
      expect(new Set([...svg.matchAll(/font-weight="(\d+)"/g)].map(([, weight]) => weight)).size).toBeLessThanOrEqual(2);
      expect([...svg.matchAll(/<text /g)]).toHaveLength(labels.length);
      expect(svg).not.toMatch(/NaN|Infinity|undefined/);
    }
  });

  it('holds no more than two decimals but for dash lengths', () => {
    for (const { svg } of pictures(patternFor(873, 411))) {
      expect(svg.replace(/ stroke-dasharray="[^"]*"| data-scale="[^"]*"/g, '')).not.toMatch(/\d\.\d{3}/);
    }
  });

  it('comes out the same, byte for byte, from the same panel', () => {
    const once = pictures(patternFor(913, 377)).map(({ svg }) => svg);
    const again = pictures(patternFor(913, 377)).map(({ svg }) => svg);
    expect(again).toEqual(once);
    expect(pictures(patternFor(914, 377)).map(({ svg }) => svg)).not.toEqual(once);
  });

  it('writes figures at least as high as the smallest readable size', () => {
    const capsOf = ({ svg }: DrawnPicture) => [...svg.matchAll(/font-size="([\d.]+)"/g)].map(([, size]) => Number(size) * 0.714);
    const pattern = patternFor(1000, 500);
    expect(Math.min(...capsOf(patternPicture(pattern)))).toBeGreaterThanOrEqual(2.5);
    const others = [
      ...pictures(pattern).slice(1),
      cutBarsPicture({ stock: 2000, kerf: 1, patterns: [{ count: 2, pieces: [{ kind: 'post', length: 1500 }] }] }),
      spacingPicture({ length: 1500, diameter: 28, marks: [89, 529], edge: 'lower', sleeve: { length: 74, diameter: 38 }, count: 4 }),
    ];
    for (const picture of others) expect(Math.min(...capsOf(picture)), picture.svg).toBeGreaterThanOrEqual(3.2);
  });

  it('says so when the paper is too small', () => {
    expect(() => markingPicture(patternFor(1000, 500), { stage: 'creases' }, { width: 60, height: 20 })).toThrow(/does not fit into/);
  });
});
