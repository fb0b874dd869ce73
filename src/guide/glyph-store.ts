/** A pictogram: the inside of an `<svg>` on a grid of 48 units' height. */
export interface Glyph {
  readonly svg: string;
  /** Units. */
  readonly width: number;
}

/** Pictograms are kept once and referred to wherever they stand: a page of steps repeats them hundreds of times. */
export interface GlyphStore {
  /** The name a pictogram is kept under. A sign keeps its safety colours where the page is dark. */
  readonly keep: (glyph: Glyph, kind?: GlyphKind) => string;
  /** All kept pictograms as `<symbol>` elements, in the order they were first asked for. */
  readonly symbols: () => string;
}

export type GlyphKind = 'plain' | 'sign';

export function glyphStore(): GlyphStore {
  const kept = new Map<string, string>();
  return {
    keep: (glyph, kind = 'plain') => {
      const symbol = `class="${kind}" viewBox="0 0 ${glyph.width} 48">${glyph.svg}</symbol>`;
      const known = kept.get(symbol) ?? `g${kept.size.toString(36)}`;
      kept.set(symbol, known);
      return known;
    },
    symbols: () => [...kept].map(([symbol, id]) => `<symbol id="${id}" ${symbol}`).join(''),
  };
}
