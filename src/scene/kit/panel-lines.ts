import { chained, moved, turned, type Model, type Shape, type Side, type Vec3 } from '../../model/index.ts';
import type { StageHand } from './stage.ts';
import type { SceneBody } from '../types.ts';

/** A line on the panel is a strip of this width and height, mm. */
const STRIP = { width: 1.2, height: 0.3 };

/** The inside line, as far as the notches leave it, and the creases of each flap that still lies flat, as thin pale strips. */
export function panelLines(model: Model, hand: StageHand, panelId: string, folded: readonly Side[]): readonly SceneBody[] {
  const { pattern } = model;
  const [ix, iy] = pattern.inside;
  const outer = (side: Side): number => (side === 'left' || side === 'right' ? ix : iy);
  const lines = pattern.flaps.filter((flap) => !folded.includes(flap.side)).flatMap((flap) => [
    { side: flap.side, out: outer(flap.side), half: flap.to },
    ...flap.creases.map((crease) => ({ side: flap.side, out: outer(flap.side) + crease, half: flap.to })),
    { side: flap.side, out: outer(flap.side) + flap.halfCut, half: flap.to },
  ]);
  return lines.map(({ side, out, half }, index) => {
    const strip: Shape = { form: 'strip', length: 2 * half, width: STRIP.width, height: STRIP.height };
    const at: Vec3 = [out, 0, 0];
    return hand.prop({ partId: panelId, id: `line-${index + 1}` }, strip,
      chained(hand.pose(panelId), turned([0, 0, 1], (QUARTERS[side] * Math.PI) / 2), moved(at), turned([0, 0, 1], Math.PI / 2)), 'pale');
  });
}

const QUARTERS: Readonly<Record<Side, number>> = { right: 0, back: 1, left: 2, front: 3 };
