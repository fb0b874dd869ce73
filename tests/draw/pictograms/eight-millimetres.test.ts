import { describe, expect, it } from 'vitest';
import { pictogram, pictogramNames } from '../../../src/draw/pictograms/index.ts';
import { shapesOf } from './painter.ts';
import { raster, tooNarrow, type Narrow } from './raster.ts';

/** A pictogram printed 8 mm high: units of its grid in a millimetre, and dots of the raster it is measured on in a unit. */
const unitsPerMm = 48 / 8;
const dotsPerUnit = 6;

/**
 * Three dots of a 300 dpi printer hold a line open or closed: 0.25 mm of ink and 0.22 mm of paper, which ink spreads
 * into (common practice, no source). Corners run out to nothing: what is narrower there may be so large, mm².
 */
const inkWidth = 0.25;
const gapWidth = 0.22;
const corner = { ink: 0.053, gap: 0.083 };

const tell = (narrow: readonly Narrow[], most: number): readonly string[] => narrow
  .filter(({ area }) => area / unitsPerMm ** 2 > most)
  .map(({ area, x, y }) => `${(area / unitsPerMm ** 2).toFixed(3)} mm² at ${x.toFixed(1)}, ${y.toFixed(1)}`);

describe('a pictogram 8 mm high', () => {
  it('is measured rightly', () => {
    const narrowIn = (width: number): number => {
      const line = shapesOf(`<path d="M10 24L38 24" fill="none" stroke="#000" stroke-width="${width}" stroke-linecap="round" stroke-linejoin="round"/>`);
      return tooNarrow(raster(line, 48, 48, dotsPerUnit), 1, inkWidth * unitsPerMm).reduce((sum, { area }) => sum + area, 0);
    };
    // 28 units of line with round ends: all of it, and none but for the dots of the rounding.
    expect(Math.abs(narrowIn(1.2) / (28 * 1.2 + Math.PI * 0.36) - 1)).toBeLessThan(0.15);
    expect(narrowIn(2)).toBeLessThan(0.6);
  });

  it.each(pictogramNames)('keeps its lines apart and its gaps open: %s', (name) => {
    const { svg, width, height } = pictogram(name);
    const dots = raster(shapesOf(svg), width, height, dotsPerUnit);
    expect({
      thin: tell(tooNarrow(dots, 1, inkWidth * unitsPerMm), corner.ink),
      closed: tell(tooNarrow(dots, 0, gapWidth * unitsPerMm), corner.gap),
    }).toEqual({ thin: [], closed: [] });
  });
});
