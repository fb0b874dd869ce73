import { placed, plus, times, type Pose, type Vec3 } from '../../model/index.ts';


/** A direction after the turn of a pose, its shift left out. */
export function turnedBy(pose: Pose, direction: Vec3): Vec3 {
  const origin = placed(pose, [0, 0, 0]);
  return plus(placed(pose, direction), times(origin, -1));
}
