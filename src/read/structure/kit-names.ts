import { jointKinds, panelKinds, tubeKinds } from '../catalogue/joints.ts';
import { heightOf } from '../catalogue/fittings.ts';
import type { FittingKind } from '../catalogue/types.ts';
import type { Kit, Quantity } from '../types.ts';

/** What an item may call of its kit: its usual kind of tube and panel come first. */
export interface KitNames {
  readonly tubes: readonly string[];
  readonly panels: readonly string[];
  readonly fittings: ReadonlyMap<string, FittingKind['is']>;
}

export const kitNames = (kit: Kit): KitNames => ({
  tubes: tubeKinds(kit).map(({ name }) => name),
  panels: panelKinds(kit).map(({ name }) => name),
  fittings: new Map(kit.catalogue.fittings.map(({ name, is }) => [name, is])),
});

/**
 * Measures of the kit that the expressions of a structure may use, mm: `kit_stop` from a corner joint's middle to the end of
 * a pushed-in tube, `kit_socket` to its mouth, `kit_above` to the upper end of its sleeve; `kit_tube` the usual tube's outside
 * diameter, `kit_panel` the usual panel's thickness, `kit_over` from a bar's axis to the upper face of a panel wrapped on it;
 * and for every fitting its height, such as `kit_braked_castor`.
 */
export function kitValues(kit: Kit): Readonly<Record<string, Quantity>> {
  const [corner] = jointKinds(kit);
  const sleeve = corner?.ports.find((port) => port.is === 'sleeve');
  const { stop, socketDepth } = kit.joint;
  const { outsideDiameter } = kit.tube;
  const lengths: readonly (readonly [string, number])[] = [
    ['kit_stop', stop],
    ['kit_socket', stop + socketDepth],
    ['kit_above', sleeve?.above ?? 0],
    ['kit_tube', outsideDiameter],
    ['kit_panel', kit.panel.thickness],
    ['kit_over', outsideDiameter / 2 + kit.practice.wrapClearance + kit.panel.thickness],
    ...kit.catalogue.fittings.map((fitting) => [`kit_${fitting.name.replaceAll('-', '_')}`, heightOf(fitting)] as const),
  ];
  return Object.fromEntries(lengths.map(([name, value]) => [name, { value, dimension: 'length' } as const]));
}
