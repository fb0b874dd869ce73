import { placed, plus, times, type Part, type Vec3 } from '../../model/index.ts';
import type { Step } from '../../plan/index.ts';
import type { StageHand } from './stage.ts';

/** A part drawn `off` mm from its place, against its `way` (a unit vector). */
export interface Comer {
  readonly hand: StageHand;
  readonly step: Step;
  readonly part: Part;
  readonly way: Vec3;
  readonly off: number;
}

export type ArrowPath = (comer: Comer) => readonly [Vec3, Vec3];

/** White between an arrow and what it comes from or goes to, mm. */
const GAP = 10;

/** A place so many mm along its way from a part's origin in its place. */
export const alongWay = ({ hand, part, way }: Comer) => (distance: number): Vec3 => plus(placed(hand.pose(part.id), [0, 0, 0]), times(way, distance));

/** From the foremost place of a part to the mouth of what it goes into. */
export const intoMouth: ArrowPath = (comer) => {
  const { hand, step, part: { shape }, off } = comer;
  const on = alongWay(comer);
  switch (shape.form) {
    case 'pin': return [on(shape.length - off), on(-2)];
    case 'joint': return [on(shape.joint.stop + shape.joint.socketDepth + GAP - off), on(shape.joint.stop - GAP)];
    case 'tube': return [on(shape.length / 2 + GAP - off), on(shape.length / 2 - socketDepth(hand, step) - GAP)];
    default: return [on(-off), on(0)];
  }
};

/** From a part's middle to where that ends up. */
export const toItsPlace: ArrowPath = (comer) => [alongWay(comer)(-comer.off), alongWay(comer)(0)];

/** Depth of the socket that a deck tube goes into, mm. */
function socketDepth(hand: StageHand, step: Step): number {
  const joint = step.present.map((id) => hand.part(id).shape).find((shape) => shape.form === 'joint');
  return joint?.form === 'joint' ? joint.joint.socketDepth : 0;
}
