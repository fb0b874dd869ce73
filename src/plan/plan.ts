import { dot, lengthOf, looseFits, outwards, type Connection, type Model, type Side, type Solids } from '../model/index.ts';
import type { OrderWish, WallKind } from '../read/index.ts';
import { WORK, type Action, type StepDetail, type WorkFacts } from '../work/facts.ts';
import { byKind } from './by-kind.ts';
import { keptOnBlocks } from './kept-props.ts';
import { NoOrder } from './no-order.ts';
import type { FlapName, Motion, Plan, Standing, Step, Tool } from './types.ts';
import { onFooting } from './footing/footing.ts';
import { isFlatPanel } from './found/pieces.ts';
import { findPlan } from './found/plan.ts';
import { faultsOf } from './found/prove.ts';
import { BENCH, standingsOf, UPRIGHT } from './found/standing.ts';
import type { FoundPlan, FoundStep, Move } from './found/types.ts';
import { isHigh } from './reach.ts';
import { wallStep } from './wall-step.ts';
import { against, turnedBy } from './found/vectors.ts';

/**
 * The plan of an item that taking it apart finds, told as the booklets tell it: what kind of work each step is, on
 * what, how the work lies, each motion proven free; the blocks that keep lying work off its pegs; last how it is fixed to its `wall`, where the checks ask for one. Throws a FaultError when a wish of the designer is refused, a
 * NoOrder that tells the item and its size, and what is in the way of what, when it comes apart in no way or a motion is not free.
 */
export function planItem(model: Model, wishes: readonly OrderWish[], solids: Solids, wall: WallKind | null = null): Plan {
  const found = provenPlan(model, wishes, solids);
  const steps = onFooting(model, toldSteps(model, found), solids);
  return fixedTo(wall, model, { steps, batches: batchesOf(found), reasons: found.reasons });
}

/** A plan with how the item is fixed to its wall as its last step; the plan as it is where there is no wall. */
export const fixedTo = (wall: WallKind | null, model: Model, plan: Plan): Plan =>
  (wall === null ? plan : { ...plan, steps: [...plan.steps, wallStep(model, plan.steps, wall)] });

function provenPlan(model: Model, wishes: readonly OrderWish[], solids: Solids): FoundPlan {
  try {
    const found = findPlan(model, wishes, solids);
    const [fault] = faultsOf(model, found, solids);
    if (fault !== undefined) throw new NoOrder(`no free way for ${fault.key} past ${fault.parts.join(', ')}`, 'more room between these parts');
    return found;
  } catch (error) {
    throw error instanceof NoOrder ? error.toldOf(model.item, model.size) : error;
  }
}

/** What is built once is told with the item; only what is built several times is announced as a batch. */
const batchesOf = ({ batches }: FoundPlan): Plan['batches'] =>
  batches.filter(({ times }) => times > 1).map(({ name, times, copies }) => ({ name, times, parts: copies[0] ?? [], copies }));

function toldSteps(model: Model, found: FoundPlan): readonly Step[] {
  const runs = new Set(batchesOf(found).map(({ name }) => name));
  const steps = keptOnBlocks(found.steps.map((each) => pinsNamed(model, fittingMoves(each))));
  const standings = standingsOf(steps);
  return steps.map((step, index) => toldStep(model, step, step.batch !== null && runs.has(step.batch) ? step.batch : null, standings[index] ?? BENCH, losesBlocks(steps[index - 1], step)));
}

/** What blocks have held is held by the second person when they are taken away. */
const losesBlocks = (before: FoundStep | undefined, { props }: FoundStep): boolean => (before?.props.length ?? 0) > props.length;

/** Small parts are brought to the work, whichever of the two the plan has moved. */
function fittingMoves(step: FoundStep): FoundStep {
  if (step.does !== 'fit') return step;
  const brought = step.moves.map((move) => {
    const fittings = move.closes.flatMap(fittingOf);
    return fittings.length === 0 || fittings.some((id) => move.parts.includes(id)) ? move : { ...move, parts: fittings, by: against(move.by), stays: move.parts };
  });
  const stay = brought.flatMap((move) => ('stays' in move ? move.stays : []));
  return { ...step, moves: brought.map(({ parts, by, closes }): Move => ({ parts, by, closes })), present: [...step.present, ...stay] };
}

/** The pins of a tab are moved in a row: each is told with what it joins. */
function pinsNamed({ connections }: Model, step: FoundStep): FoundStep {
  if (step.does !== 'pin-side') return step;
  return { ...step, moves: step.moves.map((move) => ({ ...move, closes: connections.filter((each) => each.is === 'panel-pin' && move.parts.includes(each.pin)) })) };
}

function fittingOf(connection: Connection): readonly string[] {
  switch (connection.is) {
    case 'cap': return [connection.cap];
    case 'foot': return [connection.foot];
    case 'hinge': return [connection.hinge];
    case 'bracket': return [connection.bracket];
    default: return [];
  }
}

function toldStep(model: Model, step: FoundStep, run: string | null, standing: Standing, isHeldByHand: boolean): Step {
  const detail = detailOf(model, step);
  const action = actionOf(step, detail);
  const work = WORK[action];
  const held = heldIn(step, work, standing, detail);
  return {
    number: step.number, key: step.key, action, detail, side: sideSeen(model, step, standing) ?? step.side, run, times: step.times,
    newParts: byKind(model, ({ id }) => step.newParts.includes(id)),
    present: step.present,
    motions: motionsOf(model, step),
    drilled: step.drilled, drillsFor: step.drillsFor,
    folded: step.foldedAfter,
    held, props: step.props, footing: NO_FOOTING,
    toHand: work.toHand === undefined ? [] : byKind(model, ({ id }) => step.works.includes(id)),
    supplies: work.supplies?.(model, detail) ?? [],
    standing,
    tools: toolsFor(model, step, standing, work.tools.filter((tool) => work.without?.(detail, model).includes(tool) !== true)),
    sizes: work.sizes?.(model, detail) ?? {},
    people: step.people === 2 || isHeldByHand || held.length > 0 ? 2 : work.people,
    cautions: work.cautions,
    check: work.checkOf?.(detail, model) ?? work.check,
    minutes: work.minutes * (work.shareOf?.(detail, model) ?? 1) * (1 + (step.times - 1) * (work.traced ?? 1)),
    waits: work.waits,
  };
}

/** Work during which nobody holds what is light. */
const BY_ITSELF: readonly FoundStep['does'][] = ['push', 'close', 'set-in'];

/** What the second person holds: all of what sways, or is pushed at from its side: where it stands by the drill, where it lies by a mallet; light work that would fall over where there is one. What is pushed together level lies on the bench, and a box that is set in has whoever brings it before the work. */
function heldIn({ does, present, held, inHand }: FoundStep, { sways, people, tools }: WorkFacts, { name }: Standing, { on }: StepDetail): Step['held'] {
  if (sways === true || (does === 'drill' && name === 'upright' && on !== 'plate') || (does === 'fit' && tools.includes('mallet') && name === 'lying')) return [present];
  return held.length === 0 && people === 2 && !BY_ITSELF.includes(does) ? inHand : held;
}

/** Tape round what would come out of the work while it is turned, blocks for what is propped, and something to stand on where the upright work is higher than one reaches. */
const toolsFor = (model: Model, { props, onBench, turns, present }: FoundStep, { name }: Standing, tools: readonly Tool[]): readonly Tool[] =>
  [...tools, ...(turns !== null && looseFits(model, present).length > 0 ? ['sticky-tape' as const] : []), ...(!onBench && name === 'upright' && isHigh(model) ? ['steps' as const] : []), ...(props.length === 0 || tools.includes('block') ? [] : ['block' as const])];

function actionOf(step: FoundStep, detail: StepDetail): Action {
  switch (step.does) {
    case 'push': return 'push-tubes';
    case 'close': return 'close-frame';
    case 'push-through': return 'push-posts';
    case 'lay-panel': return comesFromAbove(step) ? 'lay-panel' : 'hold-panel';
    case 'wrap': return 'wrap-side';
    case 'hang': return 'brace';
    case 'pin': return detail.on === 'plate' ? 'pin-panel' : 'pin-posts';
    case 'turn': return step.batch === null && (step.turns?.to[2] ?? 0) > UPRIGHT ? 'stand-up' : 'turn-item';
    case 'fit': return fittedBy(step);
    default: return step.does;
  }
}

/** More from above than from the side. */
const comesFromAbove = ({ moves, up }: FoundStep): boolean => moves.every(({ by }) => dot(by, up) < -Math.SQRT1_2 * lengthOf(by));

function fittedBy({ moves }: FoundStep): Action {
  const kinds = new Set(moves.flatMap(({ closes }) => closes.map(({ is }) => is)));
  if (kinds.has('hinge')) return 'fit-hinge';
  return kinds.has('bracket') ? 'fit-bracket' : 'fit-end';
}

function detailOf(model: Model, step: FoundStep): StepDetail {
  const [first] = step.works;
  switch (step.does) {
    case 'cut-tubes':
    case 'cap-ends':
    case 'mark-posts': return WHOLE;
    case 'cut-panel': return { on: 'plates', index: Math.max(0, model.plates.findIndex(({ partIds }) => partIds.some((id) => id === first))), letter: step.letter };
    case 'push': return { on: 'tubes', tubes: movesTubes(model, step) ? 'into' : 'onto' };
    default: return step.onBench
      ? { on: 'pattern', index: Math.max(0, model.patterns.findIndex(({ partIds }) => partIds.some((id) => id === first))) }
      : putTogether(model, step);
  }
}

const NO_FOOTING: Step['footing'] = { before: [], after: [] };

const WHOLE: StepDetail = { on: 'whole' };

function putTogether(model: Model, step: FoundStep): StepDetail {
  const plate = plateOf(model, step);
  if (plate !== null) return { on: 'plate', plate, side: step.side };
  return step.side === null ? WHOLE : { on: 'side', side: step.side };
}

/** The flat panel that is laid on, drilled or pinned. */
function plateOf({ parts, connections }: Model, { moves, drillsFor, does }: FoundStep): string | null {
  if (does !== 'lay-panel' && does !== 'drill' && does !== 'pin') return null;
  const pins = [...drillsFor, ...moves.flatMap((move) => move.parts)];
  const held = connections.flatMap((each) => (each.is === 'pin' && pins.includes(each.pin) ? each.holds : []));
  return parts.find(({ id, shape }) => isFlatPanel(shape) && (held.includes(id) || pins.includes(id)))?.id ?? null;
}

/** Whether tubes alone move: they go into joints. */
const movesTubes = ({ parts }: Model, { moves }: FoundStep): boolean => {
  const moving = new Set(moves.flatMap((move) => move.parts));
  return parts.every(({ id, shape }) => !moving.has(id) || shape.form === 'tube');
};

function motionsOf(model: Model, { moves, folds, turns }: FoundStep): readonly Motion[] {
  return [
    ...moves.map(({ parts, by, closes }): Motion => ({ kind: 'slide', parts, by, closes })),
    ...folds.map((fold): Motion => ({ kind: 'fold', ...fold, side: sideOfFlap(model, fold) })),
    ...(turns === null ? [] : [{ kind: 'turn' as const, axis: turns.axis, angle: turns.angle }]),
  ];
}

/** The side of its panel that a flap is on. */
function sideOfFlap({ parts }: Model, { panel, flap }: FlapName): Side {
  const shape = parts.find(({ id }) => id === panel)?.shape;
  const walls = shape?.form === 'folded' ? shape.pattern.flaps.flatMap(({ side, lugs }) => lugs.map(({ name }) => ({ name, side }))) : [];
  const flaps = shape?.form === 'panel' ? shape.pattern.flaps.map(({ side }) => ({ name: side, side })) : shape?.form === 'folded' ? shape.pattern.flaps : [];
  const found = [...flaps, ...walls].find(({ name }) => name === flap);
  if (found === undefined) throw new RangeError(`the panel ${panel} has no flap ${flap}`);
  return found.side;
}

/** A panel may lie any way round: a flap is told by the side that the worker sees it on. Null where no flap is worked on. */
function sideSeen(model: Model, { does, folds, moves, drillsFor }: FoundStep, { pose }: Standing): Side | null {
  if (does === 'turn-up' || does === 'pin-corners') return null;
  const closed = moves.flatMap(({ closes }) => closes);
  const pinned = [...closed, ...model.connections.filter((each) => each.is === 'panel-pin' && drillsFor.includes(each.pin))].flatMap((each) => (each.is === 'panel-pin' ? [each] : []));
  const flap = folds[0] ?? pinned[0];
  const panel = model.parts.find(({ id }) => id === flap?.panel);
  if (flap === undefined || panel === undefined) return null;
  const [x, y] = turnedBy(pose, turnedBy(panel.pose, outwards(sideOfFlap(model, flap))));
  if (Math.abs(x) > Math.abs(y)) return x < 0 ? 'left' : 'right';
  return y < 0 ? 'front' : 'back';
}
