import { bendTurnsAt, columnOf, lugPinPose, onSection, placed, reachedAt, type Pattern, type PatternFlap, type Vec3 } from '../../model/index.ts';
import type { Motion } from '../../plan/index.ts';
import { foldsOf, panelLines, sceneName, STANDARD_VIEW, stageHand, type Scene, type StepGivens, type WorkScene } from '../../scene/kit/index.ts';

type Fold = Extract<Motion, { kind: 'fold' }>;

/** How far they are drawn turned up. */
const DRAWN_SHARE = 0.6;
/** Where the arrows touch their way. */
const ARROW_SHARES = [0.06, 0.2, 0.4, 0.6, 0.8, 1];

/** Walls or corner tabs on their way up; on a screen they turn as their creases allow. */
export const scene: WorkScene = { scene: (givens) => turnedUp(givens, DRAWN_SHARE), moment: turnedUp };

function turnedUp({ model, step, solids }: StepGivens, share: number): Scene {
  const folds = step.motions.filter((motion): motion is Fold => motion.kind === 'fold');
  const panel = folds[0]?.panel ?? '';
  const hand = stageHand(model, step, solids);
  const shape = hand.panel(panel);
  if (shape.form !== 'folded') throw new RangeError(`step ${step.number} (${step.key}) turns up a part that has no walls: ${panel}`);
  const pose = hand.pose(panel);
  const done = foldsOf(panel, step.folded);
  const at = (part: number): Readonly<Record<string, number>> => ({ ...done, ...Object.fromEntries(folds.map(({ flap, from, to }) => [flap, from + part * (to - from)])) });
  const flaps = folds.map(({ flap }) => flap);
  // What stays is the same at every stage: built once.
  const piece = (name: 'flap' | 'rest') => hand.prop({ partId: panel, id: name },
    { ...shape, folding: at(name === 'flap' ? share : 0), split: { flaps, piece: name } }, pose, name === 'flap' ? 'new' : 'present');
  return {
    id: sceneName(step),
    bodies: [...step.present.filter((id) => id !== panel).map((id) => hand.body(id, 'present')), piece('rest'), piece('flap'), ...panelLines(hand, panel, step.folded)],
    marks: folds.map((fold) => ({ mark: 'arrow', path: ARROW_SHARES.map((part) => placed(pose, edgeOf(shape.pattern, fold.flap, at(part)))) })),
    view: STANDARD_VIEW,
  };
}

/** The middle of a wall's free edge, or of a corner tab at its pins, in panel coordinates. */
function edgeOf(pattern: Pattern, name: string, folded: Readonly<Record<string, number>>): Vec3 {
  const stage = (flap: string): number => folded[flap] ?? 0;
  const wall = pattern.flaps.find((flap) => flap.name === name || flap.lugs.some((lug) => lug.name === name));
  if (wall === undefined) return [0, 0, 0];
  const lug = wall.lugs.find((each) => each.name === name);
  return lug === undefined ? wallEdge(pattern, wall, stage(wall.name)) : columnOf(lugPinPose(pattern, wall, lug, 0, stage(wall.name), stage(lug.name)), 3);
}

function wallEdge(pattern: Pattern, wall: PatternFlap, stage: number): Vec3 {
  const [first] = wall.strips;
  const { at } = reachedAt(pattern, wall.bends, bendTurnsAt(wall.bends, wall.order, stage), wall.strips.at(-1)?.to ?? 0);
  return onSection(wall, ((first?.start ?? 0) + (first?.end ?? 0)) / 2, at);
}
