import { panelKinds, type Kit } from '../read/index.ts';
import { boxOf } from './patterns/outline.ts';
import { wrappedPattern } from './patterns/wrapped.ts';
import type { FlatPanel, FlatPattern, Pattern } from './types.ts';

/** The pattern of a deck's panel, told as those of all panels are. */
export function patternOfDeck(kit: Kit, { axes, flaps }: FlatPattern): Pattern {
  const [panel] = panelKinds(kit);
  if (panel === undefined) throw new RangeError('a kit has at least one panel');
  return wrappedPattern(kit, panel, flaps.map(({ side, from, to }) => {
    const [half, out] = side === 'left' || side === 'right' ? [axes[1], axes[0]] : [axes[0], axes[1]];
    return { side, out, notches: [], bars: [{ flap: side, from, to, reach: half - to, tube: kit.tube.outsideDiameter, hold: 'wrap' }] };
  }));
}

/** The pattern of a flat panel, its origin in its middle. */
export function patternOfPlate(kit: Kit, { width, height, holes }: FlatPanel): Pattern {
  const [x, y] = [width / 2, height / 2];
  const outline = [[-x, -y], [x, -y], [x, y], [-x, y]] as const;
  const { thickness, skin, neutralLayer } = kit.panel;
  return {
    form: 'flat', panel: panelKinds(kit)[0]?.name ?? '', thickness, skin, neutralLayer, ...boxOf(outline), outline, base: outline, flaps: [],
    holes: holes.map(({ at, diameter }) => ({ at: [at[0] - x, at[1] - y] as const, diameter, flap: null })),
  };
}
