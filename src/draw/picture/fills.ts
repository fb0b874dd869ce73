import type { LineDrawing } from '../types.ts';
import { onPaper, type Fit } from '../kit/fit.ts';
import type { Paints } from './looks.ts';
import { tint } from './sizes.ts';
import { pathData } from './svg.ts';

/** The tint of new bodies. The others stay as white as the paper: visible regions never lie over one another. */
export function fills(drawing: LineDrawing, paints: Paints, fit: Fit): string {
  const rings = drawing.regions.filter((region) => paints.get(region.body) === 'tint').flatMap((region) => region.rings);
  const data = rings.map((ring) => pathData(ring.map((p) => onPaper(fit, p)), true)).join('');
  return data ? `<path d="${data}" fill="${tint}" fill-rule="evenodd"/>` : '';
}
