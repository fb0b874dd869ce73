import type { Shape } from '../model/types.ts';
import type { Form, PartFacts, PartTold, ShapeOf } from './types.ts';

/** The facts of a kind of part whose shape is of one form. They throw a RangeError when asked about a shape of another. */
export function part<Of extends Form>(form: Of, told: PartTold<Of>): PartFacts {
  const own = (shape: Shape): ShapeOf<Of> => {
    if (!isOf(form, shape)) throw new RangeError(`a shape of the form ${shape.form}; would be right: ${form}`);
    return shape;
  };
  const undrilled = (shape: Shape): Shape => told.undrilled?.(own(shape)) ?? shape;
  return {
    ...told,
    form,
    mass: (kit, shape) => told.mass(kit, own(shape)),
    size: (shape) => told.size?.(own(shape)) ?? [],
    undrilled,
    delivered: (shape) => told.delivered?.(own(shape)) ?? undrilled(shape),
  };
}

const isOf = <Of extends Form>(form: Of, shape: Shape): shape is ShapeOf<Of> => shape.form === form;
