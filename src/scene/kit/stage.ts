import { chained, FLAT, moved, type Model, type Part, type Pose, type Shape, type Side, type Solids, type Vec3 } from '../../model/index.ts';
import { PARTS } from '../../parts/facts.ts';
import type { FoldedFlap, Step } from '../../plan/index.ts';
import type { Look, SceneBody } from '../types.ts';

/** Makes bodies of the model's parts as they are at a step. */
export interface StageHand {
  body(id: string, look: Look, offset?: Vec3): SceneBody;
  /** A shape of its own, placed in the step's standing: a tool, or what stands for a part or is drawn on it (`id` names it among the part's own). */
  prop(of: { readonly partId: string; readonly id: string } | { readonly tool: string }, shape: Shape, pose: Pose, look: Look): SceneBody;
  part(id: string): Part;
  /** The pose of a part as the step shows it. */
  pose(id: string): Pose;
}

/** Parts as the step finds them: undrilled before drilling, the flaps of panels folded that the step has folded. */
export function stageHand(model: Model, step: Step, solids: Solids): StageHand {
  const parts = new Map(model.parts.map((part) => [part.id, part]));
  const part = (id: string): Part => {
    const found = parts.get(id);
    if (found === undefined) throw new RangeError(`step ${step.number} (${step.key}) shows a part that is not there: ${id}`);
    return found;
  };
  const pose = (id: string): Pose => chained(step.standing.pose, part(id).pose);
  const drilled = new Set(step.drilled);
  const prop: StageHand['prop'] = (of, shape, at, look) => ({
    ...('tool' in of ? { id: of.tool, partId: null } : { id: `${of.partId}#${of.id}`, partId: of.partId }),
    kind: 'tool', mesh: solids.mesh(shape), pose: at, look,
  });
  return {
    part,
    pose,
    prop,
    body: (id, look, offset = [0, 0, 0]) => ({
      id, partId: id, kind: part(id).kind, mesh: solids.mesh(shapeNow(part(id), step.folded, drilled.has(id))), pose: chained(moved(offset), pose(id)), look,
    }),
  };
}

function shapeNow({ id, kind, shape }: Part, folded: readonly FoldedFlap[], drilled: boolean): Shape {
  if (shape.form === 'panel' || shape.form === 'folded') return foldedShape(shape, foldsOf(id, folded));
  return drilled ? shape : PARTS[kind].undrilled(shape);
}

/** How far each flap of a panel is folded, by its name: 0 flat, where it is not told, to 1. */
export type Folds = Readonly<Record<string, number>>;

/** The flaps of a panel among these. */
export const foldsOf = (panelId: string, flaps: readonly FoldedFlap[]): Folds =>
  Object.fromEntries(flaps.filter(({ panel }) => panel === panelId).map(({ flap, stage }) => [flap, stage]));

export type FoldedPanel = Extract<Shape, { readonly form: 'panel' | 'folded' }>;

/** A panel with its flaps so far folded. */
export const foldedShape = (shape: FoldedPanel, folds: Folds): FoldedPanel =>
  (shape.form === 'panel' ? { ...shape, folding: { ...FLAT, ...folds } } : { ...shape, folding: folds });

/** One flap of a panel, or all but that flap. */
export const pieceOfPanel = (shape: FoldedPanel, flap: { readonly name: string; readonly side: Side }, piece: 'flap' | 'rest'): FoldedPanel =>
  (shape.form === 'panel' ? { ...shape, split: { side: flap.side, piece } } : { ...shape, split: { flaps: [flap.name], piece } });
