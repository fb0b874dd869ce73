import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import type { Check } from '../types.ts';

/** The tighter side of a piece on a piece of stock, mm; `play` is what is there over what is needed. */
interface Fit {
  readonly needed: number;
  readonly there: number;
  readonly play: number;
}

const fitOf = (needed: number, there: number): Fit => ({ needed, there, play: there / needed });

const tighter = (a: Fit, b: Fit): Fit => (a.play <= b.play ? a : b);

const looser = (a: Fit, b: Fit): Fit => (a.play >= b.play ? a : b);

/** A rectangle on another, laid whichever way leaves more over. */
export function bestFit([x, y]: readonly [number, number], [length, width]: readonly [number, number]): Fit {
  const laid = (along: number, across: number): Fit => tighter(fitOf(along, length), fitOf(across, width));
  return looser(laid(x, y), laid(y, x));
}

/** The blank of the flat pattern against the panel as delivered, laid whichever way leaves more over. */
export const stockPanel: Check = ({ model }) => {
  const { length, width } = model.kit.panel;
  const best = bestFit(model.pattern.blank, [length, width]);
  return [judge({
    name: 'stock-panel', figure: best.needed, limit: best.there, bound: 'most', unit: 'mm',
    source: `panel of ${model.kit.name} as delivered, either way round`, parts: idsOf(model, 'panel'),
  })];
};
