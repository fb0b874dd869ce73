import { chained, cross, dot, minus, moved, placed, plus, times, unit, type Model, type Solids, type Vec3 } from '../../model/index.ts';
import type { Step } from '../../plan/index.ts';
import { turnedBy } from '../kit/directions.ts';
import { boxRound, middleOf } from '../kit/extent.ts';
import { tell } from '../told.ts';
import type { Mark, Scene, SceneBody, View } from '../types.ts';
import type { Rolled } from './history.ts';
import { lastRolled } from './rolled-scenes.ts';

/** How far from its tube a tape is when it is off, and where its arrow begins and ends, mm; how much round a tape is enlarged. */
const OFF = { tape: 75, arrow: [105, 205], ring: 110 } as const;

/** What was taped before it was rolled over lies as it is worked on, and its tape comes off. One scene for each piece that was taped, none where nothing was. */
export const untapedScenes = (model: Model, step: Step, rolled: readonly Rolled[], solids: Solids): readonly Scene[] => lastRolled(model, step, rolled, solids).flatMap(({ scene: { view }, lies: work, tapes: on }, place, pieces): readonly Scene[] => {
  const middle = middleOf(boxRound(work));
  const tapes = on.map((body) => ({ body, off: awayOnPaper(body, middle, view) }));
  const [first] = tapes;
  if (first === undefined) return [];
  const at = ({ body, off }: TapeOff, far: number): Vec3 => plus(placed(body.pose, [0, 0, 0]), times(off, far));
  const marks: readonly Mark[] = [
    ...tapes.map((tape): Mark => ({ mark: 'arrow', path: OFF.arrow.map((far) => at(tape, far)) })),
    { mark: 'detail', at: at(first, OFF.tape / 2), radius: OFF.ring },
    ...tapes.slice(1).slice(-1).map((tape): Mark => ({ mark: 'label', at: at(tape, OFF.tape), told: tell.times(tapes.length) })),
  ];
  const off = tapes.map(({ body, off: way }): SceneBody => ({ ...body, pose: chained(moved(times(way, OFF.tape)), body.pose) }));
  return [{ id: `untaped:${step.number}:${place}`, ...(pieces.length > 1 ? { number: place + 1 } : {}), bodies: [...work, ...off], marks, view }];
});

interface TapeOff {
  readonly body: SceneBody;
  readonly off: Vec3;
}

/** Square off the tube that a tape is round, along the paper, away from the middle of the work. */
function awayOnPaper({ pose }: SceneBody, middle: Vec3, { towardsEye }: View): Vec3 {
  const way = unit(cross(towardsEye, turnedBy(pose, [1, 0, 0])));
  return dot(way, minus(placed(pose, [0, 0, 0]), middle)) < 0 ? times(way, -1) : way;
}
