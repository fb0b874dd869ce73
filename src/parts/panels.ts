import { FLAT } from '../model/folding.ts';
import { areaOf } from '../model/patterns/outline.ts';
import type { ShapeOf } from './types.ts';

/** A panel's mass: what is left of its blank when it is cut, kg; nothing where the notches take more than there is, which the checks tell. */
export function panelMass(shape: ShapeOf<'panel' | 'folded' | 'plate'>, density: number): number {
  switch (shape.form) {
    case 'panel': {
      const { blank, notch, thickness } = shape.pattern;
      return Math.max(0, blank[0] * blank[1] - 4 * notch[0] * notch[1]) * thickness * density;
    }
    case 'folded': return areaOf(shape.pattern.outline) * shape.pattern.thickness * density;
    case 'plate': return shape.width * shape.height * shape.thickness * density;
  }
}

/** As it is printed: whole mm; folded panels are told by their patterns. */
export const sidesOf = (shape: ShapeOf<'panel' | 'folded' | 'plate'>): readonly number[] =>
  (shape.form === 'plate' ? [Math.round(shape.width), Math.round(shape.height)] : []);

/** As it comes to hand: flat. */
export function laidFlat(shape: ShapeOf<'panel' | 'folded' | 'plate'>): ShapeOf<'panel' | 'folded' | 'plate'> {
  switch (shape.form) {
    case 'panel': return { ...shape, folding: FLAT };
    case 'folded': return { ...shape, folding: Object.fromEntries(Object.keys(shape.folding).map((flap) => [flap, 0])) };
    case 'plate': return shape;
  }
}
