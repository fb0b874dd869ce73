import type { Model } from '../../model/index.ts';
import { judge } from '../judge.ts';
import type { Check } from '../types.ts';
import { bestFit } from './stock-panel.ts';

type Size = readonly [number, number];

/** Every size of flat panel against the piece it is cut from: an off-cut beside a deck's blank where one is large enough, else the panel as delivered. */
export const stockPlate: Check = ({ model }) => model.plates.map((plate) => {
  const offcut = offcutsOf(model).find((piece) => bestFit([plate.width, plate.height], piece).play >= 1);
  const { panel, name } = model.kit;
  const best = bestFit([plate.width, plate.height], offcut ?? [panel.length, panel.width]);
  return judge({
    name: 'stock-plate', figure: best.needed, limit: best.there, bound: 'most', unit: 'mm',
    source: offcut ? `off-cut beside the deck’s blank on the panel of ${name}` : `panel of ${name} as delivered, either way round`,
    parts: plate.partIds,
  });
});



/** The two rectangles that a straight cut beside the blank leaves, for the blank laid either way it fits; a knife's kerf off each. */
function offcutsOf(model: Model): readonly Size[] {
  const { panel: { length, width }, practice: { knifeKerf } } = model.kit;
  const [x, y] = model.pattern.blank;
  return ([[x, y], [y, x]] as const).flatMap(([along, across]): Size[] => {
    if (along > length || across > width) return [];
    return [[length - along - knifeKerf, width], [along, width - across - knifeKerf], [length, width - across - knifeKerf]];
  }).filter(([a, b]) => a > 0 && b > 0);
}
