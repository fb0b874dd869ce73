import { chained, FLAT, moved, type Folding, type Model, type Part, type Pose, type Shape, type Side, type Solids, type Vec3 } from '../model/index.ts';
import type { Step } from '../plan/index.ts';
import type { Look, SceneBody } from './types.ts';

/** Makes bodies of the model's parts as they are at a step. */
export interface StageHand {
  body(id: string, look: Look, offset?: Vec3): SceneBody;
  /** Any shape, placed in the step's standing. */
  prop(id: string, shape: Shape, pose: Pose, look: Look): SceneBody;
  part(id: string): Part;
  /** The pose of a part as the step shows it. */
  pose(id: string): Pose;
}

/** Parts as the step finds them: undrilled before drilling, the panel folded as far as told. */
export function stageHand(model: Model, step: Step, solids: Solids, folding: Folding): StageHand {
  const parts = new Map(model.parts.map((part) => [part.id, part]));
  const part = (id: string): Part => {
    const found = parts.get(id);
    if (found === undefined) throw new RangeError(`step ${step.number} (${step.key}) shows a part that is not there: ${id}`);
    return found;
  };
  const pose = (id: string): Pose => chained(step.standing.pose, part(id).pose);
  const drilled = drilledSides(step);
  const prop = (id: string, shape: Shape, at: Pose, look: Look): SceneBody =>
    ({ id, kind: parts.get(id)?.kind ?? 'tool', mesh: solids.mesh(shape), pose: at, look });
  return {
    part,
    pose,
    prop,
    body: (id, look, offset = [0, 0, 0]) =>
      prop(id, shapeNow(part(id), folding, drilled), chained(moved(offset), pose(id)), look),
  };
}

/** Sides of the item whose posts have been drilled before or in this step. */
function drilledSides(step: Step): ReadonlySet<string> {
  const front = step.action === 'turn-item' || step.side === 'back' || ['stand-up', 'brace'].includes(step.action)
    || (step.side === 'front' && step.action === 'pin-posts');
  const back = ['stand-up', 'brace'].includes(step.action) || (step.side === 'back' && step.action === 'pin-posts');
  return new Set(step.run === null ? [...(front ? ['front'] : []), ...(back ? ['back'] : [])] : []);
}

function shapeNow(part: Part, folding: Folding, drilled: ReadonlySet<string>): Shape {
  const { shape } = part;
  switch (shape.form) {
    case 'panel': return { ...shape, folding };
    case 'tube': return part.kind === 'post' && !drilled.has(sideOf(part.id)) ? { ...shape, holes: [] } : shape;
    // A joint's name tells its corner while the deck is built; in use front and back have changed places.
    case 'joint': return drilled.has(sideOf(part.id) === 'front' ? 'back' : 'front') ? shape : { ...shape, drilled: null };
    default: return shape;
  }
}

const sideOf = (id: string): string => (id.endsWith('front') ? 'front' : 'back');

/** The fold of each side when these sides are done. */
export const foldingOf = (sides: readonly Side[]): Folding =>
  sides.reduce<Folding>((folding, side) => ({ ...folding, [side]: 1 }), FLAT);
