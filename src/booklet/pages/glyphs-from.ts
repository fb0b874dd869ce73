import type { Action, Caution, Glyph, Glyphs, PlainGlyph, Tool } from './types.ts';

/** The pictograms as the room `draw` gives them. */
export interface Pictograms<PairName extends string> {
  readonly pictogram: (name: Tool | PlainGlyph) => Glyph;
  readonly actionPictogram: (action: Action) => Glyph;
  readonly signFor: (caution: Caution) => Glyph;
  readonly isPairName: (name: string) => name is PairName;
  readonly pairFor: (name: PairName) => { readonly right: Glyph; readonly wrong: Glyph };
  readonly loadNumerals: Glyphs['loadNumerals'];
}

/** The pages' pictograms from those of the room `draw`. A pair that was never drawn throws when it is asked for. */
export function glyphsFrom<PairName extends string>(drawn: Pictograms<PairName>): Glyphs {
  return {
    action: drawn.actionPictogram,
    tool: drawn.pictogram,
    caution: drawn.signFor,
    plain: drawn.pictogram,
    pair: (name) => {
      if (!drawn.isPairName(name)) throw new Error(`booklet: no pair of pictures for the check "${name}"`);
      return drawn.pairFor(name);
    },
    loadNumerals: drawn.loadNumerals,
  };
}
