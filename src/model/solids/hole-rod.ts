import type { Manifold, ManifoldToplevel } from 'manifold-3d';
import type { PanelHole } from '../types.ts';
import { rod } from './round.ts';

/** Past a face of the panel, mm: so little that the rod of a tab's hole does not bore into what the tab is folded onto. */
const PAST = 0.2;

/** What a hole takes out of its panel, along z round the hole's middle; the drawn face lies at 0, the other at minus the thickness. */
export function holeRod(kernel: ManifoldToplevel, { thickness }: { readonly thickness: number }, { diameter, depth, face }: Omit<PanelHole, 'at'>): Manifold {
  const bottom = depth === null ? thickness + PAST : depth;
  return face === 'drawn' ? rod(kernel, diameter, -bottom, PAST, 'hole') : rod(kernel, diameter, -thickness - PAST, bottom - thickness, 'hole');
}
