import { chained, FLAT, moved, placed, type Folding, type Model, type Part, type Pose, type Shape, type Side, type Solids, type Vec3 } from '../model/index.ts';
import type { Step } from '../plan/index.ts';
import type { Look, SceneBody } from './types.ts';

/** Makes bodies of the model's parts as they are at a step. */
export interface StageHand {
  body(id: string, look: Look, offset?: Vec3): SceneBody;
  /** A shape of its own, placed in the step's standing: a tool, or what stands for a part or is drawn on it (`id` names it among the part's own). */
  prop(of: { readonly partId: string; readonly id: string } | { readonly tool: string }, shape: Shape, pose: Pose, look: Look): SceneBody;
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
      id, partId: id, kind: part(id).kind, mesh: solids.mesh(shapeNow(part(id), folding, drilled.has(id))), pose: chained(moved(offset), pose(id)), look,
    }),
  };
}

function shapeNow({ shape }: Part, folding: Folding, drilled: boolean): Shape {
  switch (shape.form) {
    case 'panel': return { ...shape, folding };
    case 'tube': return drilled ? shape : { ...shape, holes: [] };
    case 'joint': return drilled ? shape : { ...shape, drilled: null };
    default: return shape;
  }
}

/** The fold of each side when these sides are done. */
export const foldingOf = (sides: readonly Side[]): Folding =>
  sides.reduce<Folding>((folding, side) => ({ ...folding, [side]: 1 }), FLAT);

/** A pencil mark on a post is a band of this width and thickness, mm. */
const MARK = { width: 4, thickness: 0.4 };

/** Two rings near the foot tell it from the other end, mm over the foot. */
const FOOT_RINGS = [12, 24];

/** The pencil marks of a post: its foot, and the lower ends of the sleeves, moved with the post. */
export function postMarks(model: Model, hand: StageHand, postId: string, offset: Vec3): readonly SceneBody[] {
  const { shape } = hand.part(postId);
  if (shape.form !== 'tube') return [];
  const band: Shape = { form: 'tube', length: MARK.width, outside: shape.outside + 2 * MARK.thickness, inside: shape.outside, holes: [] };
  return [...FOOT_RINGS, ...sleeveEnds(model, postId)].map((height, index) =>
    hand.prop({ partId: postId, id: `mark-${index + 1}` }, band, chained(moved(offset), hand.pose(postId), moved([height - shape.length / 2, 0, 0])), 'present'));
}

/** Heights of the lower ends of the sleeves on a post, over its foot, mm: as far under the pins as the joint has it. */
export function sleeveEnds(model: Model, postId: string): readonly number[] {
  const { joint } = model.kit;
  const pins = model.joinings.flatMap((each) => (each.by === 'post-pin' && each.post === postId ? [each.pin] : []));
  return model.parts.filter((part) => pins.includes(part.id))
    .map((part) => placed(part.pose, [0, 0, 0])[2] + joint.pinHeight - joint.sleeveBelow)
    .sort((a, b) => a - b);
}

/** The foot of a post where it will stand out of the lowest sleeve, as a pale reminder of where to stop. */
export function footStub(model: Model, hand: StageHand, postId: string): SceneBody {
  const { shape } = hand.part(postId);
  const [first = 0] = sleeveEnds(model, postId);
  if (shape.form !== 'tube') throw new RangeError(`${postId} is no tube`);
  return hand.prop({ partId: postId, id: 'foot' }, { ...shape, length: first, holes: [] }, chained(hand.pose(postId), moved([(first - shape.length) / 2, 0, 0])), 'pale');
}

/** A part where it will be, pale. */
export function homePlace(hand: StageHand, id: string): SceneBody {
  return { ...hand.body(id, 'pale'), id: `${id}#home` };
}
