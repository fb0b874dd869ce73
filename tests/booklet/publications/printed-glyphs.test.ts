import { describe, expect, it } from 'vitest';
import { bookletPages } from '../../../src/booklet/pages/index.ts';
import { readPlaceLabel } from '../../../src/booklet/print/place.ts';
import { glyphPrints, printedGlyphs } from '../../../src/booklet/publications/printed-glyphs.ts';
import { rackInput } from '../pages/rack-booklet.ts';

const prints = glyphPrints();
const labels = (html: string): readonly string[] => [...html.matchAll(/<svg class="glyph"[^>]* aria-label="([^"]*)"/g)].map(([, label = '']) => label);

describe('pictograms that are printed once', () => {
  it('have an id each, are of the shape of their drawing, and hold no letters, whose font would come along with each', () => {
    expect(new Set(prints.map(({ id }) => id)).size).toBe(prints.length);
    for (const { id, svg, width, height } of prints) {
      expect(svg, id).toContain(`viewBox="0 0 ${width} ${height}"`);
      expect(svg, id).not.toContain('<text');
    }
  });

  it.each(['pictures', 'words'] as const)('leave a place wherever one is drawn in the edition %s, with the same words, and all that they leave are among the prints', (edition) => {
    const drawn = bookletPages({ ...rackInput(), edition });
    const placed = bookletPages({ ...rackInput(), edition, glyphs: printedGlyphs });
    expect(placed.pageCount).toBe(drawn.pageCount);
    expect(labels(placed.html).map((label) => readPlaceLabel(label)?.alt ?? label)).toEqual(labels(drawn.html));
    const ids = labels(placed.html).flatMap((label) => readPlaceLabel(label)?.id ?? []);
    expect(ids.length).toBeGreaterThan(300);
    expect(ids.filter((id) => !prints.some((print) => print.id === id))).toEqual([]);
    // Only numerals on a pictogram, and marks of the page itself, are drawn in their place.
    expect(labels(placed.html).length - ids.length).toBeLessThan(20);
    expect(placed.html.length).toBeLessThan(0.7 * drawn.html.length);
  });
});
