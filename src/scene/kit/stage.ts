import { chained, dot, FLAT, moved, placed, punchedShape, times, undone, type Model, type Part, type Pose, type Shape, type Side, type Solids, type Vec3 } from '../../model/index.ts';
import { PARTS } from '../../parts/facts.ts';
import type { FoldedFlap, Step } from '../../plan/index.ts';
import type { Look, SceneBody } from '../types.ts';
import { turnedBy } from './directions.ts';

/** Makes bodies of the model's parts as they are at a step. */
export interface StageHand {
  body(id: string, look: Look, offset?: Vec3): SceneBody;
  /** What of a part lies behind a plane; null where nothing does. */
  bodyBehind(id: string, look: Look, plane: CutPlane): SceneBody | null;
  /** A shape of its own, placed in the step's standing: a tool, or what stands for a part or is drawn on it (`id` names it among the part's own). */
  prop(of: { readonly partId: string; readonly id: string } | { readonly tool: string }, shape: Shape, pose: Pose, look: Look): SceneBody;
  part(id: string): Part;
  /** A panel that is folded, all its flaps flat, with the holes that it has at the step. */
  panel(id: string): FoldedPanel;
  /** The pose of a part as the step shows it. */
  pose(id: string): Pose;
}

/** A plane through a place, and the direction from it to the eye: what lies on that side is left out. */
export interface CutPlane {
  readonly at: Vec3;
  readonly towardsEye: Vec3;
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
  const pinsIn = pinsByPart(model, part);
  const there = new Set([...step.drilled, ...step.present, ...step.newParts.flatMap(({ ids }) => ids)]);
  const isPunched = (panelId: string) => (flap: string): boolean =>
    model.connections.some((each) => each.is === 'panel-pin' && each.panel === panelId && each.flap === flap && there.has(each.pin));
  const prop: StageHand['prop'] = (of, shape, at, look) => ({
    ...('tool' in of ? { id: of.tool, partId: null } : { id: `${of.partId}#${of.id}`, partId: of.partId }),
    kind: 'tool', mesh: solids.mesh(shape), pose: at, look,
  });
  const shown = (id: string): Shape => shapeNow({ ...part(id), shape: punchedShape(part(id).shape, isPunched(id)) }, step.folded, pinsIn.get(id) ?? [], drilled);
  return {
    part,
    pose,
    prop,
    panel: (id) => {
      const shape = punchedShape(part(id).shape, isPunched(id));
      if (shape.form !== 'panel' && shape.form !== 'folded') throw new RangeError(`step ${step.number} (${step.key}) folds a part that has no flaps: ${id}`);
      return shape;
    },
    body: (id, look, offset = [0, 0, 0]) => ({ id, partId: id, kind: part(id).kind, mesh: solids.mesh(shown(id)), pose: chained(moved(offset), pose(id)), look }),
    bodyBehind: (id, look, { at, towardsEye }) => {
      const own = undone(pose(id));
      const normal = turnedBy(own, times(towardsEye, -1));
      const mesh = solids.cut(shown(id), normal, dot(normal, placed(own, at)));
      return mesh === null ? null : { id, partId: id, kind: part(id).kind, mesh, pose: pose(id), look };
    },
  };
}

/** The pins that go through each part. */
function pinsByPart(model: Model, part: (id: string) => Part): ReadonlyMap<string, readonly Part[]> {
  const pins = new Map<string, Part[]>();
  for (const each of model.connections) {
    if (each.is !== 'pin') continue;
    for (const id of new Set(each.holds)) pins.set(id, [...(pins.get(id) ?? []), part(each.pin)]);
  }
  return pins;
}

function shapeNow(part: Part, folded: readonly FoldedFlap[], pins: readonly Part[], drilled: ReadonlySet<string>): Shape {
  const { id, kind, shape } = part;
  if (shape.form === 'panel' || shape.form === 'folded') return foldedShape(shape, foldsOf(id, folded));
  const there = pins.filter((pin) => drilled.has(pin.id));
  if (there.length === 0) return PARTS[kind].undrilled(shape);
  return there.length === pins.length || shape.form !== 'tube' ? shape : { ...shape, holes: shape.holes.filter(({ at }) => there.some((pin) => isAt(part, at, pin))) };
}

/** Whether a pin goes through a bar so far from its middle, mm. */
function isAt({ pose }: Part, at: number, pin: Part): boolean {
  const [x] = placed(undone(pose), placed(pin.pose, [0, 0, 0]));
  return Math.abs(x - at) < 1;
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
