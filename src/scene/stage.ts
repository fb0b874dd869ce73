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

/** A pencil mark on a post is a band of this width and thickness, mm. */
const MARK = { width: 4, thickness: 0.4 };

/** The pencil marks of a post for the lower ends of the sleeves, moved with the post. */
export function postMarks(model: Model, hand: StageHand, postId: string, offset: Vec3): readonly SceneBody[] {
  const { shape } = hand.part(postId);
  if (shape.form !== 'tube') return [];
  const band: Shape = { form: 'tube', length: MARK.width, outside: shape.outside + 2 * MARK.thickness, inside: shape.outside, holes: [] };
  return sleeveEnds(model).map((height, index) =>
    hand.prop(`${postId}#mark-${index + 1}`, band, chained(moved(offset), hand.pose(postId), moved([height - shape.length / 2, 0, 0])), 'present'));
}

/** Heights of the sleeves' lower ends over the post's foot, mm. */
export function sleeveEnds(model: Model): readonly number[] {
  const down = model.pattern.wrapRadius + model.pattern.thickness + model.kit.joint.sleeveBelow;
  return model.deckTops.map((top) => top - down);
}
