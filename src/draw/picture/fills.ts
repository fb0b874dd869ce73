import { onPaper, type Fit } from '../kit/fit.ts';
import { area, type Mark } from '../kit/marks.ts';
import type { LineDrawing } from '../types.ts';
import type { Paints } from './looks.ts';

/** The tint of new bodies. The others stay as white as the paper: visible regions never lie over one another. */
export function fills(drawing: LineDrawing, paints: Paints, fit: Fit): readonly Mark[] {
  const rings = drawing.regions.filter((region) => paints.get(region.body) === 'tint').flatMap((region) => region.rings);
  return rings.length === 0 ? [] : [area('fresh', ...rings.map((ring) => ring.map((p) => onPaper(fit, p))))];
}
