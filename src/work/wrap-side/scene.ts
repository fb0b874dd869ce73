import { bendTurnsAt, chained, foldSection, onSection, patternWrap, placed, reachedAt, turned, type Flap, type FlatPattern, type Pattern, type PatternFlap, type Vec3 } from '../../model/index.ts';
import {
  foldedShape, foldsOf, panelLines, pieceOfPanel, sceneName, stageHand, viewOf, type FoldedPanel, type Scene, type StepGivens, type WorkScene,
} from '../../scene/kit/index.ts';

/** How far the flap is drawn folded: over the tube, the tab still up. */
const DRAWN_STAGE = 0.6;
/**
 * Stages of the fold that the arrow touches: up and over the tube, then home. Between them the tab turns back and
 * forth; an arrow that followed it there would have a knot before its head.
 */
const ARROW_STAGES = [0.04, 0.1, 0.16, 0.22, 0.28, 0.34, 0.4, 0.46, 0.52, 0.57, 0.62, 0.94, 1];

/** The flap over its tube; on a screen it folds as its facets allow. */
export const scene: WorkScene = { scene: (givens) => foldScene(givens, DRAWN_STAGE), moment: foldScene };

/** A flap on its way round the tube, 0 flat to 1 done; the arrow is the true way of the tab's edge. */
function foldScene({ model, step, solids }: StepGivens, stage: number): Scene {
  const motion = step.motions.find((candidate) => candidate.kind === 'fold');
  if (motion?.kind !== 'fold') throw new RangeError(`step ${step.number} (${step.key}) folds nothing`);
  const { side, panel, flap, from } = motion;
  const onWay = (share: number): number => from + share * (motion.to - from);
  const hand = stageHand(model, step, solids);
  const shape = hand.panel(panel);
  const pose = hand.pose(panel);
  const before = { ...foldsOf(panel, step.folded), [flap]: from };
  // The rest of the panel is the same at every stage of its flap: built once.
  const piece = (name: 'flap' | 'rest') => hand.prop({ partId: panel, id: name },
    pieceOfPanel(foldedShape(shape, { ...before, [flap]: name === 'flap' ? onWay(stage) : from }), { name: flap, side }, name), pose, name === 'flap' ? 'new' : 'present');
  return {
    id: sceneName(step),
    bodies: [...step.present.filter((id) => id !== panel).map((id) => hand.body(id, 'present')), piece('rest'), piece('flap'), ...panelLines(hand, panel, step.folded)],
    marks: [{ mark: 'arrow', path: edgeWay(shape, flap, ARROW_STAGES.map(onWay)).map((point) => placed(pose, point)) }],
    view: viewOf(model, step),
  };
}

/** The way of the middle of the flap's free edge, in panel coordinates, without its turn back. */
function edgeWay(shape: FoldedPanel, name: string, stages: readonly number[]): readonly Vec3[] {
  if (shape.form === 'panel') {
    const flap = shape.pattern.flaps.find(({ side }) => side === name);
    return flap === undefined ? [] : stages.map((stage) => edgePlace(shape.pattern, flap, stage));
  }
  const flap = shape.pattern.flaps.find((candidate) => candidate.name === name);
  return flap === undefined ? [] : stages.map((stage) => edgeReached(shape.pattern, flap, stage));
}

const QUARTERS = { right: 0, back: 1, left: 2, front: 3 } as const;

function edgePlace(pattern: FlatPattern, flap: Flap, stage: number): Vec3 {
  const { tab } = foldSection(patternWrap(pattern, flap), stage, 0);
  const width = flap.edge - flap.halfCut;
  const a = tab.hinge[0] + width * Math.cos(tab.heading);
  const b = tab.hinge[1] + width * Math.sin(tab.heading);
  const out = flap.side === 'left' || flap.side === 'right' ? pattern.axes[0] : pattern.axes[1];
  return placed(chained(turned([0, 0, 1], (QUARTERS[flap.side] * Math.PI) / 2)), [out + a, 0, b]);
}

/** The same of any chain of bends, in the middle of its last strip. */
function edgeReached(pattern: Pattern, flap: PatternFlap, stage: number): Vec3 {
  const { at } = reachedAt(pattern, flap.bends, bendTurnsAt(flap.bends, flap.order, stage), flap.edge);
  const strip = flap.strips.at(-1);
  return onSection(flap, ((strip?.start ?? 0) + (strip?.end ?? 0)) / 2, at);
}
