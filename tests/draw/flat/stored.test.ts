import { describe, expect, it } from 'vitest';
import { cutBarsPicture, markingPicture, patternPicture, sectionSeries } from '../../../src/draw/flat/index.ts';
import { area, figure, line } from '../../../src/draw/kit/marks.ts';
import { tell } from '../../../src/scene/index.ts';
import { pens } from '../../../src/draw/kit/pens.ts';
import { toPicture } from '../../../src/draw/kit/svg.ts';
import { outside, overlaps, pointsOutside, struckFigures } from './inspect.ts';
import { patternFor } from './patterns.ts';

const hardware = { tube: { outside: 28, inside: 23 }, pin: { diameter: 5, length: 17, headDiameter: 16, headHeight: 3 } };

describe('stored pictures', () => {
  // Open them in a browser; a change shows as a picture. Re-make with `npx vitest run tests/draw/flat -u`.
  const pattern = patternFor(1000, 500);
  it.each([
    ['pattern', patternPicture(pattern)],
    ['marking-creases', markingPicture(pattern, { stage: 'creases' })],
    ['marking-half-cut', markingPicture(pattern, { stage: 'half-cut' })],
    ['sections-right', sectionSeries(pattern, 'right', hardware)],
    ['cut-bars', cutBarsPicture({ stock: 2000, kerf: 1, patterns: [{ count: 4, pieces: [999.5, 999.5].map((length) => ({ kind: 'long-tube', length })) }] })],
  ] as const)('are as stored: %s', async (name, { svg }) => {
    await expect(svg).toMatchFileSnapshot(`./stored/${name}.svg`);
  });
});

describe('the checks on pictures find a spoilt one', () => {
  const paper = { width: 40, height: 20 };

  it('two figures on each other', () => {
    expect(overlaps(toPicture(paper, [figure(tell.mm(100), [20, 10], 4), figure(tell.mm(7), [21, 12], 4)]).labels)).toHaveLength(1);
  });

  it('a figure and a line off the paper', () => {
    expect(outside(toPicture(paper, [figure(tell.mm(100), [2, 10], 4)]))).toHaveLength(1);
    expect(pointsOutside(toPicture(paper, [area('ink', [[1, 1], [50, 1], [1, 5]])]))).toHaveLength(1);
  });

  it('a line through a figure', () => {
    expect(struckFigures([figure(tell.mm(100), [20, 10], 4), line(pens.dimension, [0, 10], [40, 10])])).toHaveLength(1);
    expect(struckFigures([figure(tell.mm(100), [20, 10], 4), line(pens.dimension, [0, 13], [40, 13])])).toHaveLength(0);
  });
});
