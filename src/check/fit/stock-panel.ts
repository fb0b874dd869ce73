import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import type { Check } from '../types.ts';

/** One side of the blank on one side of the stock panel, mm. */
interface Fit {
  readonly needed: number;
  readonly there: number;
}

const play = (fit: Fit): number => fit.there / fit.needed;

const tighter = (a: Fit, b: Fit): Fit => (play(a) <= play(b) ? a : b);

const looser = (a: Fit, b: Fit): Fit => (play(a) >= play(b) ? a : b);

/** The blank of the flat pattern against the panel as delivered, laid whichever way leaves more over. */
export const stockPanel: Check = ({ model }) => {
  const { length, width } = model.kit.panel;
  const [x, y] = model.pattern.blank;
  const laid = (along: number, across: number): Fit =>
    tighter({ needed: along, there: length }, { needed: across, there: width });
  const best = looser(laid(x, y), laid(y, x));
  return [judge({
    name: 'stock-panel', figure: best.needed, limit: best.there, bound: 'most', unit: 'mm',
    source: `panel of ${model.kit.name} as delivered, either way round`, parts: idsOf(model, 'panel'),
  })];
};
