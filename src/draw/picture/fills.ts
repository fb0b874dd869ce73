import { onPaper, type Fit } from '../kit/fit.ts';
import { area, type Mark } from '../kit/marks.ts';
import type { LineDrawing } from '../types.ts';
import type { Colour } from '../kit/colours.ts';
import type { Paint, Paints } from './looks.ts';

/** The tint of new bodies, what is drawn on parts, and openings that end blind. The others stay as white as the paper: visible regions never lie over one another. */
export function fills(drawing: LineDrawing, paints: Paints, fit: Fit): readonly Mark[] {
  const filled = (paint: Paint, colour: Colour): readonly Mark[] => {
    const rings = drawing.regions.filter((region) => paints.get(region.body) === paint).flatMap((region) => region.rings);
    return rings.length === 0 ? [] : [area(colour, ...rings.map((ring) => ring.map((p) => onPaper(fit, p))))];
  };
  return [...filled('tint', 'fresh'), ...filled('ink', 'ink'), ...filled('dark', 'blind')];
}
