import { describe, expect, it } from 'vitest';
import { asArtifacts, boxAfter, edited, fillMarkedRectangles, markedContent, paintsSomething, showsMissingGlyph } from '../../../src/booklet/print/pageContent.ts';
import { readOperators } from '../../../src/booklet/print/operators.ts';
import { picturePlace, readPlaceLabel } from '../../../src/booklet/print/place.ts';
import { picturePages } from '../../../src/booklet/print/picturePages.ts';

const PAGE = '.24 0 0 -.24 0 800 cm\nq\n10 0 0 10 100 200 cm\n/P <</MCID 0 >>BDC\nBT (\\(re f) q) Tj ET\nEMC\n'
  + '/Figure <</MCID 3 >>BDC\n0 0 100 50 re\nf\nQ\nEMC\n0 0 5 5 re\nf\n';

describe('a page’s content', () => {
  it('hands over the marked rectangle alone, with the matrix down to the page', () => {
    const seen: unknown[] = [];
    const page = readOperators(PAGE);
    const filled = edited(page, fillMarkedRectangles(page, ({ mcid, toPage, width, height }) => { seen.push({ mcid, toPage, width, height }); return 'HERE'; }));
    // By hand: 10 × 0.24 = 2.4; 100 × 0.24 = 24; 800 − 200 × 0.24 = 752.
    expect(seen).toEqual([{ mcid: 3, toPage: [2.4, 0, 0, -2.4, 24, 752], width: 100, height: 50 }]);
    expect(filled).toBe(PAGE.replace('0 0 100 50 re\nf', 'HERE'));
  });

  it('stays as it is where nothing is to be filled', () => {
    expect(edited(readOperators(PAGE), fillMarkedRectangles(readOperators(PAGE), () => undefined))).toBe(PAGE);
  });

  it('forgets a matrix at Q', () => {
    const after: (readonly number[])[] = [];
    fillMarkedRectangles(readOperators('q 2 0 0 2 0 0 cm Q /Figure <</MCID 1>> BDC 0 0 1 1 re f EMC'), ({ toPage }) => { after.push(toPage); return undefined; });
    expect(after).toEqual([[1, 0, 0, 1, 0, 0]]);
  });

  it('tells a blank page from one with marks, and letters from empty boxes', () => {
    expect(paintsSomething(readOperators('.24 0 0 -.24 0 800 cm q 0 0 9 9 re W* n (f) pop Q'))).toBe(false);
    expect(paintsSomething(readOperators('BT <0003> Tj ET'))).toBe(true);
    expect(showsMissingGlyph(readOperators('BT <00030000> Tj ET'))).toBe(true);
    expect(showsMissingGlyph(readOperators('BT <00300003> Tj <0100> Tj ET'))).toBe(false);
  });

  it('tells which marked content shows text, and makes the rest artifacts', () => {
    const text = '/P <</MCID 0 >>BDC /Span <</ActualText <feff0041>>> BDC BT <0003> Tj ET EMC EMC\n/TD <</MCID 1 >>BDC 0 0 9 9 re f EMC\n';
    const content = readOperators(text);
    const aside = (...mcids: readonly number[]): string => edited(content, asArtifacts(content, new Set(mcids)));
    expect([...markedContent(content)]).toEqual([[0, true], [1, false]]);
    expect(aside(1)).toBe(text.replace('/TD <</MCID 1 >>BDC', '/Artifact BMC'));
    expect(aside()).toBe(text);
  });

  it('finds the upright box of a turned rectangle', () => {
    expect(boxAfter([0, 1, -1, 0, 50, 0], 20, 10)).toEqual([40, 0, 50, 20]);
  });
});

describe('a picture’s place', () => {
  it('keeps the words whole through the label', () => {
    const alt = 'Fold "A" & <B> | 90°';
    const label = /aria-label="([^"]*)"/.exec(picturePlace({ id: 'fold', width: 10, height: 5, alt }))?.[1] ?? '';
    const text = label.replaceAll('&quot;', '"').replaceAll('&lt;', '<').replaceAll('&amp;', '&');
    expect(readPlaceLabel(text)).toEqual({ id: 'fold', alt });
    expect(readPlaceLabel('some other figure')).toBeUndefined();
  });

  it('refuses a place without words or size', () => {
    expect(() => picturePlace({ id: 'a', width: 10, height: 5, alt: ' ' })).toThrow('the alternative text is empty');
    expect(() => picturePlace({ id: 'a', width: 0, height: 5, alt: 'x' })).toThrow('0 × 5 mm');
  });
});

describe('a picture’s page', () => {
  const svg = (inside: string): string => `<svg viewBox="0 0 20 10">${inside}</svg>`;
  it('refuses a viewBox of another size and what prints as a bitmap', () => {
    expect(() => picturePages([{ id: 'a', svg: svg(''), width: 20, height: 11 }])).toThrow('viewBox is “0 0 20 10”, its size 20 × 11 mm');
    expect(() => picturePages([{ id: 'a', svg: svg('<mask id="m"/>'), width: 20, height: 10 }])).toThrow('picture “a” holds <mask>');
  });
});
