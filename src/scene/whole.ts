import { chained, standstill, undone, type Model, type Part, type PartKind, type Pose, type Shape, type Solids, type Vec3 } from '../model/index.ts';
import { PARTS } from '../parts/facts.ts';
import type { Batch, Step } from '../plan/index.ts';
import type { Mark, Scene, SceneBody } from './types.ts';
import { STANDARD_VIEW } from './kit/views.ts';
import { tell } from './told.ts';

/** The finished item, for the cover; where the last step leaves it another way round, as it stands then. */
export const finishedScene = (model: Model, solids: Solids, pose?: Pose): Scene =>
  ({ id: 'finished', bodies: lying(bodiesOf(model, solids, () => true), pose), marks: [], view: STANDARD_VIEW });

const lying = (bodies: readonly SceneBody[], pose: Pose | undefined): readonly SceneBody[] =>
  (pose === undefined ? bodies : bodies.map((body) => ({ ...body, pose: chained(pose, body.pose) })));

/** How far dimension lines stand off the item, as a share of its height. */
const STAND_OFF = 0.09;

/** The finished item with its lettered lengths. */
export function letteredScene(model: Model, solids: Solids): Scene {
  const height = model.dimensions.find((each) => each.name === 'height')?.value ?? 1000;
  const off = height * STAND_OFF;
  const away: Readonly<Record<string, Vec3>> = {
    width: [0, -off, 0], depth: [off, 0, 0], height: [-off, 0, 0], 'lowest-deck': [off * 0.9, 0, 0], 'deck-spacing': [off * 0.9, 0, 0],
  };
  const marks = model.dimensions.map(({ letter, name, from, to }): Mark =>
    ({ mark: 'length', from, to, away: away[name] ?? [off, 0, 0], told: tell.letters(letter) }));
  return { ...finishedScene(model, solids), id: 'lettered', marks };
}

/** One finished sub-assembly of a batch, the way it is used, or as it lies while it is made. */
export const runScene = (model: Model, { name, parts }: Batch, solids: Solids, pose?: Pose): Scene => ({
  id: `run:${name}`,
  bodies: lying(bodiesOf(model, solids, (id) => parts.includes(id), ({ kind, shape }) => PARTS[kind].undrilled(shape)), pose),
  marks: [],
  view: STANDARD_VIEW,
});

/** A part of a kind by itself, the first or the one named, as it lies most plainly: tubes and cables along the paper, what has a way up as the first of these steps has it. */
export function partBody(model: Model, kind: PartKind, solids: Solids, id?: string, steps: readonly Step[] = []): SceneBody | null {
  const part = model.parts.find((candidate) => candidate.kind === kind && (id === undefined || candidate.id === id));
  if (part === undefined) return null;
  const { delivered, isShownAtWork } = PARTS[kind];
  const step = PARTS[kind].hasWayUp === true ? steps.find(({ newParts }) => newParts.some(({ ids }) => ids.includes(part.id))) : undefined;
  const pose = step !== undefined ? chained(step.standing.pose, part.pose) : isShownAtWork ? chained(undone(model.groups[0]?.pose ?? standstill), part.pose) : standstill;
  return { id: kind, partId: part.id, kind, mesh: solids.mesh(delivered(part.shape)), pose, look: 'present' };
}

function bodiesOf(model: Model, solids: Solids, shown: (id: string) => boolean, shaped: (part: Part) => Shape = ({ shape }) => shape): SceneBody[] {
  return model.parts.filter((part) => shown(part.id)).map((part) =>
    ({ id: part.id, partId: part.id, kind: part.kind, mesh: solids.mesh(shaped(part)), pose: part.pose, look: 'present' }));
}
