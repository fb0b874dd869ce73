import { chained, moved, placed, turned, undone, unit, type Shape, type Vec3 } from '../../model/index.ts';
import type { SceneBody, View } from '../types.ts';
import { turnedBy } from './directions.ts';
import type { StageHand } from './stage.ts';

type Plate = Extract<Shape, { readonly form: 'plate' }>;

/** The line round a panel that is left out: a strip of this width and height, mm. */
const STRIP = { width: 1.6, height: 0.3 } as const;
/** What is no farther behind a panel than this is at it, not hidden by it, mm. */
const AT = 40;

/** Of a flat panel that stands between the eye and one of these places, only the outline, pale; null for what hides none of them. */
export function seenThrough(hand: StageHand, id: string, places: readonly Vec3[], { towardsEye }: View): readonly SceneBody[] | null {
  const { shape } = hand.part(id);
  if (shape.form !== 'plate' || !places.some((place) => hides(hand, id, shape, place, unit(towardsEye)))) return null;
  const [x, y] = [shape.width / 2, shape.height / 2];
  const sides = [{ at: [0, -y], long: shape.width, turn: 0 }, { at: [0, y], long: shape.width, turn: 0 }, { at: [-x, 0], long: shape.height, turn: Math.PI / 2 }, { at: [x, 0], long: shape.height, turn: Math.PI / 2 }] as const;
  return sides.map(({ at, long, turn }, index) => hand.prop(
    { partId: id, id: `outline-${index + 1}` }, { form: 'strip', length: long, ...STRIP }, chained(hand.pose(id), moved([...at, shape.thickness / 2]), turned([0, 0, 1], turn)), 'pale',
  ));
}

/** Whether the line from a place to the eye goes through the plate, well before the place. */
function hides(hand: StageHand, id: string, { width, height, thickness }: Plate, place: Vec3, towardsEye: Vec3): boolean {
  const own = undone(hand.pose(id));
  const [x, y, z] = placed(own, place);
  const [dx, dy, dz] = turnedBy(own, towardsEye);
  if (Math.abs(dz) < 1e-6) return false;
  const far = (thickness / 2 - z) / dz;
  return far > AT && Math.abs(x + far * dx) < width / 2 && Math.abs(y + far * dy) < height / 2;
}
