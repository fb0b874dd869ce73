import { plus, times, unit, type Vec3 } from '../../model/index.ts';
import { tell } from '../told.ts';
import type { Mark, Scene, SceneBody, View } from '../types.ts';
import { turnedBy } from './directions.ts';
import { boxRound, reachOf, type Box } from './extent.ts';
import type { Slide } from './on-the-way.ts';
import { partsShown } from './parts-shown.ts';
import { stageHand } from './stage.ts';
import { homeName, type StepGivens } from './work-scene.ts';

/** Level, from the right. */
const FROM_RIGHT: View = { towardsEye: [1, 0, 0], up: [0, 0, 1] };

/** How far under the work its lengths are told, mm. */
const UNDER = 34;

/** How far what has come reaches into what stands there: both cut through the middle, seen level from the right, with what is left free of the bars that it has come past. */
export function homeInSection({ model, step, solids }: StepGivens): Scene {
  const hand = stageHand(model, step, solids);
  const slides = step.motions.filter((motion): motion is Slide => motion.kind === 'slide');
  const moving = new Set(slides.flatMap(({ parts }) => parts));
  const come = boxRound([...moving].map((id) => hand.body(id, 'new')));
  const plane = { at: [(come.min[0] + come.max[0]) / 2, come.min[1], come.min[2]] as const, towardsEye: FROM_RIGHT.towardsEye };
  const bodies = partsShown(step).flatMap((id) => hand.bodyBehind(id, moving.has(id) ? 'new' : 'present', plane) ?? []);
  const ways = slides.map(({ by }) => unit(turnedBy(step.standing.pose, by)));
  return { id: homeName(step), view: FROM_RIGHT, marks: ways.slice(0, 1).flatMap((way) => leftFree(bodies, moving, come, way)), bodies };
}

/** From the free ends of what stands there to the end of what has come that went in last. */
function leftFree(bodies: readonly SceneBody[], moving: ReadonlySet<string>, come: Box, way: Vec3): readonly Mark[] {
  const back = times(way, -1);
  const [own, other] = [reachOf(come, back), reachOf(boxRound(bodies.filter(({ id }) => !moving.has(id))), back)];
  if (other - own < 1) return [];
  const low = boxRound(bodies).min[2];
  const at = (far: number): Vec3 => plus(times(back, far), [0, 0, low]);
  return [{ mark: 'length', from: at(other), to: at(own), away: [0, 0, -UNDER], told: tell.mm(Math.round(2 * (other - own)) / 2) }];
}
