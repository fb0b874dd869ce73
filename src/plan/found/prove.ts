import { chained, dot, lengthOf, minus, moved, times, unit, type Model, type Part, type Placed, type Shape, type Solids, type Vec3 } from '../../model/index.ts';
import { staysOut, type Piece } from './convex.ts';
import { flapForms } from './flap-forms.ts';
import { isFoldFree } from './boxes.ts';
import { foldMeets, foldWay, type FoldWay } from './folding.ts';
import { piecesOf, seenFrom } from './pieces.ts';
import type { Fold, FoldedFlap, FoundPlan, FoundStep, Move } from './types.ts';
import { undone } from '../../model/index.ts';
import { axisOf } from './vectors.ts';

/** A step whose motion is not free, and the parts that are in the way; or that brings or misses parts it should not. */
export interface Fault {
  readonly key: string;
  readonly what: 'in-the-way' | 'lost' | 'twice' | 'unknown';
  readonly parts: readonly string[];
}

/** Shared volume under this is rounding, mm³. */
const TOUCH = 1;
/** Ways that are no straight run of one profile are tried in so many places. */
const TRIES = 12;

/** What the proof keeps while it walks through a plan. */
interface Walk {
  readonly parts: ReadonlyMap<string, Part>;
  readonly solids: Solids;
  readonly bodies: Map<string, readonly Piece[]>;
  readonly folds: Map<string, FoldWay>;
  readonly known: Map<string, boolean>;
  readonly shapes: Map<string, number>;
}

/**
 * Walks through a plan, step by step, and proves each motion free in its place: bodies that a plane parts from the
 * whole swept way need no more; tubes and pins along their own axis are proven by one longer solid; the rest is tried.
 * Folds are proven without gaps. Also counts the parts: each is brought once, none is left.
 */
export function faultsOf(model: Pick<Model, 'parts'>, plan: FoundPlan, solids: Solids): readonly Fault[] {
  const walk: Walk = { parts: new Map(model.parts.map((part) => [part.id, part])), solids, bodies: new Map(), folds: new Map(), known: new Map(), shapes: new Map() };
  return [...plan.steps.flatMap((step) => faultsIn(walk, step)), ...countFaults(model, plan)];
}

function faultsIn(walk: Walk, step: FoundStep): readonly Fault[] {
  const fault = (parts: readonly string[]): readonly Fault[] => (parts.length === 0 ? [] : [{ key: step.key, what: 'in-the-way', parts }]);
  if (step.does === 'turn-up') return fault(turnBlockers(walk, step));
  if (step.folds.length > 0) return fault(step.folds.flatMap((fold) => foldBlockers(walk, step, fold)));
  const moving = new Set(step.moves.flatMap(({ parts }) => parts));
  const standing = [...step.present, ...step.newParts].filter((id) => !moving.has(id));
  return step.moves.flatMap((move, index) => {
    const there = [...standing, ...step.moves.slice(0, index).flatMap(({ parts }) => parts)];
    return fault(slideBlockers(walk, move, there.filter((id) => !snapsOn(move, id)), step.folded));
  });
}

/** A clip gives way as it is pressed onto its tube or drawn off; no rigid solid does. */
const snapsOn = ({ closes, parts }: Move, id: string): boolean => closes.some((connection) => {
  if (connection.is === 'bracket') return connection.bar === id;
  if (connection.is !== 'hinge') return false;
  const [, bar] = connection.leaves;
  return bar === id || (connection.hinge === id && parts.includes(bar));
});

/** Those of the standing parts that a move would run into. */
function slideBlockers(walk: Walk, move: Move, standing: readonly string[], folded: readonly FoldedFlap[]): readonly string[] {
  return standing.filter((id) => move.parts.some((mover) => !isFree(walk, mover, move.by, id, folded)));
}

function isFree(walk: Walk, mover: string, by: Vec3, other: string, folded: readonly FoldedFlap[]): boolean {
  const way = times(by, -1);
  const [own, its] = [bodiesOf(walk, mover, folded), bodiesOf(walk, other, folded)];
  if (own.every((piece) => its.every((standing) => staysOut(piece, way, standing)))) return true;
  const [one, two] = [standingPart(walk, mover, folded), standingPart(walk, other, folded)];
  if (one === null || two === null) return false;
  const key = keyFor(walk, one, two, way);
  const known = walk.known.get(key) ?? isFreeExactly(walk, one, two, way);
  walk.known.set(key, known);
  return known;
}

/** Parts of a shape that stand to each other the same way need one proof. */
function keyFor(walk: Walk, one: Placed, two: Placed, way: Vec3): string {
  const shape = (placed: Placed): number => {
    const text = JSON.stringify(placed.shape);
    const known = walk.shapes.get(text) ?? walk.shapes.size;
    walk.shapes.set(text, known);
    return known;
  };
  const back = undone(two.pose);
  const seen = [...chained(back, one.pose), ...minus(placedAt(back, way), placedAt(back, [0, 0, 0]))];
  return `${shape(one)} ${shape(two)} ${seen.map((value) => Math.round(value * 1e4)).join(' ')}`;
}

const placedAt = (pose: readonly number[], [x, y, z]: Vec3): Vec3 => [0, 1, 2].map((row) =>
  (pose[row] ?? 0) * x + (pose[4 + row] ?? 0) * y + (pose[8 + row] ?? 0) * z + (pose[12 + row] ?? 0)) as unknown as Vec3;

function isFreeExactly({ solids }: Walk, mover: Placed, standing: Placed, way: Vec3): boolean {
  const swept = sweptAlong(mover, way);
  if (swept !== null) return solids.overlap(swept, standing) <= TOUCH;
  const opposite = sweptAlong(standing, times(way, -1));
  if (opposite !== null) return solids.overlap(mover, opposite) <= TOUCH;
  return Array.from({ length: TRIES + 1 }, (_, index) => index / TRIES).every((share) =>
    solids.overlap({ shape: mover.shape, pose: chained(moved(times(way, share)), mover.pose) }, standing) <= TOUCH);
}

/** The room that a tube or a pin takes as it goes along its own axis, as one solid; null for any other way or shape. */
function sweptAlong({ shape, pose }: Placed, way: Vec3): Placed | null {
  const distance = lengthOf(way);
  const direction = unit(way);
  if (shape.form === 'tube' && Math.abs(dot(direction, axisOf(pose, 0))) > 0.999999) {
    return { shape: { ...shape, length: shape.length + distance, holes: [] }, pose: chained(moved(times(way, 0.5)), pose) };
  }
  if (shape.form === 'pin' && dot(direction, axisOf(pose, 2)) > 0.999999) return { shape: { ...shape, headHeight: shape.headHeight + distance }, pose };
  return null;
}

/** A part as it stands at a step, its flaps as far as they are folded by then. */
function standingPart({ parts }: Walk, id: string, folded: readonly FoldedFlap[]): Placed | null {
  const part = parts.get(id);
  return part === undefined ? null : { shape: foldedShape(part, folded), pose: part.pose };
}

function foldedShape({ id, shape }: Part, folded: readonly FoldedFlap[]): Shape {
  if (shape.form === 'folded') return { ...shape, folding: Object.fromEntries(folded.filter(({ panel }) => panel === id).map(({ flap, stage }) => [flap, stage])) };
  if (shape.form !== 'panel') return shape;
  const stage = (flap: string): number => (folded.some((each) => each.panel === id && each.flap === flap) ? 1 : 0);
  return { ...shape, folding: { left: stage('left'), right: stage('right'), front: stage('front'), back: stage('back') } };
}

/** Convex bodies that hold a part, a panel with its flaps. */
function bodiesOf(walk: Walk, id: string, folded: readonly FoldedFlap[]): readonly Piece[] {
  const part = walk.parts.get(id);
  if (part === undefined) return [];
  const own = folded.filter(({ panel, stage }) => panel === id && stage === 1).map(({ flap }) => flap);
  const key = `${id} ${own.join(' ')}`;
  const known = walk.bodies.get(key) ?? bodiesNow(walk, part, own);
  walk.bodies.set(key, known);
  return known;
}

function bodiesNow({ solids }: Walk, { shape, pose }: Part, folded: readonly string[]): readonly Piece[] {
  const flaps = flapForms(shape).flatMap((flap) => flap.piecesAt(folded.includes(flap.name) ? 1 : flap.raised));
  return [...piecesOf(shape, pose, solids), ...flaps.map((piece) => seenFrom(pose, piece))];
}

/** The box itself, where its walls and corner tabs cannot be turned up together as the step says; nothing else is there. */
const turnBlockers = ({ parts }: Walk, { folds, folded }: FoundStep): readonly string[] => [...new Set(folds.map(({ panel }) => panel))].filter((panel) => {
  const part = parts.get(panel);
  return part === undefined || !isFoldFree(part, folds, folded);
});

/** Parts in the way of a flap on its way home. */
function foldBlockers(walk: Walk, step: FoundStep, { panel, flap }: Fold): readonly string[] {
  const part = walk.parts.get(panel);
  const own = part === undefined ? undefined : flapForms(part.shape).find(({ name }) => name === flap);
  if (part === undefined || own === undefined || !step.present.includes(panel)) return [panel];
  const back = undone(part.pose);
  const key = `${panel} ${flap}`;
  const way = walk.folds.get(key) ?? foldWay(own);
  walk.folds.set(key, way);
  return step.present.filter((id) => id !== panel && foldMeets(way, bodiesOf(walk, id, step.folded).map((piece) => seenFrom(back, piece))));
}

/** Each part comes to hand once: with the first of its batch, or with the item; the other copies are made alike. */
function countFaults(model: Pick<Model, 'parts'>, plan: FoundPlan): readonly Fault[] {
  const brought = plan.steps.flatMap(({ newParts }) => newParts);
  const copied = new Set(plan.batches.flatMap(({ copies }) => copies.slice(1).flat()));
  const last = plan.steps.at(-1);
  const there = new Set([...(last?.present ?? []), ...(last?.newParts ?? [])]);
  const twice = brought.filter((id, index) => brought.indexOf(id) !== index);
  const lost = model.parts.map(({ id }) => id).filter((id) => !there.has(id) || !(brought.includes(id) || copied.has(id)));
  return [
    ...(twice.length === 0 ? [] : [{ key: '', what: 'twice' as const, parts: twice }]),
    ...(lost.length === 0 ? [] : [{ key: last?.key ?? '', what: 'lost' as const, parts: lost }]),
  ];
}
