import { chained, moved, placed, turned, type Pose, type Vec3 } from '../../model/index.ts';
import type { Mark, SceneBody } from '../types.ts';
import { foldingOf, stageHand } from './stage.ts';
import { STANDARD_VIEW } from './views.ts';
import { sceneName, type StepGivens, type WorkScene } from './work-scene.ts';

const ARROW_STEPS = 28;

/** The edge that the work turns over: the near long one, by which it rolls towards the reader, or its foot, on which it stands up. */
export type Edge = 'near' | 'foot';

/** Work by which the whole is turned: pale as it lay before, full as it lies after, the arrow from one to the other. */
export const turnWork = (edge: Edge): WorkScene => ({
  scene: (givens) => {
    const { before, turn } = turning(givens, edge);
    const after = before.map((body): SceneBody => ({ ...body, id: `${body.id}#after`, look: 'present', pose: chained(turn.pose(1), body.pose) }));
    return { id: sceneName(givens.step), bodies: [...before.map((body): SceneBody => ({ ...body, look: 'pale' })), ...after], marks: [turn.arrow], view: STANDARD_VIEW };
  },
  moment: (givens, done) => {
    const { before, turn } = turning(givens, edge);
    return { id: sceneName(givens.step), bodies: before.map((body) => ({ ...body, pose: chained(turn.pose(done), body.pose) })), marks: [], view: STANDARD_VIEW };
  },
});

/** The work as it lies before, and its way round. */
function turning({ model, step, solids }: StepGivens, edge: Edge): { readonly before: readonly SceneBody[]; readonly turn: Turn } {
  const motion = step.motions.find((candidate) => candidate.kind === 'turn');
  if (motion?.kind !== 'turn') throw new RangeError(`step ${step.number} (${step.key}) turns nothing`);
  const hand = stageHand(model, step, solids, foldingOf(step.folded));
  const before = step.present.map((id) => hand.body(id, 'present'));
  return { before, turn: turnOf(edge, motion.angle, before) };
}

interface Turn {
  /** The pose after a share 0…1 of the turn. */
  readonly pose: (share: number) => Pose;
  readonly arrow: Mark;
}

/** Share of the work's depth that is left between before and after. */
const GAP = 0.28;

function turnOf(edge: Edge, angle: number, before: readonly SceneBody[]): Turn {
  const { least, most } = extent(before);
  const standsUp = edge === 'foot';
  const gap = GAP * (most[1] - least[1]);
  const axis: Vec3 = standsUp ? [0, -1, 0] : [1, 0, 0];
  const pivot: Vec3 = standsUp ? [least[0], 0, least[2]] : [0, least[1] - gap, (least[2] + most[2]) / 2];
  const aside = standsUp ? -gap : 0;
  const pose = (share: number): Pose =>
    chained(moved([pivot[0] + aside * share, pivot[1], pivot[2]]), turned(axis, angle * share), moved([-pivot[0], -pivot[1], -pivot[2]]));
  const start: Vec3 = [standsUp ? most[0] : (least[0] + most[0]) / 2, (least[1] + most[1]) / 2, most[2]];
  const path = Array.from({ length: ARROW_STEPS + 1 }, (_, index) => placed(pose(0.08 + (0.84 * index) / ARROW_STEPS), start));
  return { pose, arrow: { mark: 'arrow', path } };
}

/** The box round all bodies, from their meshes. */
function extent(bodies: readonly SceneBody[]): { least: Vec3; most: Vec3 } {
  const least = [Infinity, Infinity, Infinity];
  const most = [-Infinity, -Infinity, -Infinity];
  for (const { mesh, pose } of bodies) {
    for (let index = 0; index < mesh.positions.length; index += 3) {
      const point = placed(pose, [mesh.positions[index] ?? 0, mesh.positions[index + 1] ?? 0, mesh.positions[index + 2] ?? 0]);
      point.forEach((value, axis) => {
        least[axis] = Math.min(least[axis] ?? value, value);
        most[axis] = Math.max(most[axis] ?? value, value);
      });
    }
  }
  return { least: least as unknown as Vec3, most: most as unknown as Vec3 };
}

