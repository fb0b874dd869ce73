import type { Shape } from '../model/types.ts';
import type { Form, PartFacts, PartTold, ShapeOf } from './types.ts';

/** The facts of a kind of part whose shape is of one of these forms. They throw a RangeError when asked about a shape of another. */
export function part<const Of extends Form>(forms: readonly Of[], told: PartTold<Of>): PartFacts {
  const own = (shape: Shape): ShapeOf<Of> => {
    if (!isOf(forms, shape)) throw new RangeError(`a shape of the form ${shape.form}; would be right: ${forms.join(' or ')}`);
    return shape;
  };
  const undrilled = (shape: Shape): Shape => told.undrilled?.(own(shape)) ?? shape;
  return {
    ...told,
    mass: (shape, density) => told.mass(own(shape), density),
    size: (shape) => told.size?.(own(shape)) ?? [],
    variety: (shape) => told.variety?.(own(shape)) ?? '',
    named: (shape) => told.named?.(own(shape)) ?? null,
    undrilled,
    delivered: (shape) => told.delivered?.(own(shape)) ?? undrilled(shape),
  };
}

const isOf = <Of extends Form>(forms: readonly Of[], shape: Shape): shape is ShapeOf<Of> => forms.some((form) => form === shape.form);
