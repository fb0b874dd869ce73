import { chained, facing, placed, plus, times, undone, type Box3, type Model, type Part, type PartKind, type Pose, type Solids, type Vec2, type Vec3 } from '../../model/index.ts';
import { turnedBy } from '../found/vectors.ts';
import { isTurn } from '../is-turn.ts';
import type { Footing, Motion, Step } from '../types.ts';
import { type Carrier, lowBars, lowSleeves } from './carriers.ts';
import { DRILL_CLEAR, lowestPeg, PEGS_CLEAR, pegTips, PINS_CLEAR } from './pegs.ts';
import { areInLine, BLOCK_WIDE, cornerPlaces, isBetween, isSteadyOn, type Centre, type InTheWay, type Place } from './places.ts';

type Slide = Extract<Motion, { kind: 'slide' }>;

/** What no work rests on. */
export const FASTENERS: ReadonlySet<PartKind> = new Set<PartKind>(['joint-pin', 'wing-nut', 'panel-pin', 'cable']);
/** What is no higher over the floor than this stands on it, mm. */
export const STANDS = 4;

/**
 * The steps with the blocks that lying work rests on where it would rest on the pegs of its joints, or the pins that are driven through it would reach the floor: from the first step in which it
 * lies steadily on them until it is turned over, which sets it down on the next ones, or stood up.
 */
export function onFooting(model: Model, steps: readonly Step[], solids: Solids): readonly Step[] {
  const parts = new Map(model.parts.map((part) => [part.id, part]));
  const own = seriesOf(steps).flatMap((series) => footed({ connections: model.connections, parts, solids }, series));
  return own.map((step, index) => {
    const [before, next] = [own[index - 1], own[index + 1]];
    if (!isTurn(step)) return isLifted(parts, before, step) ? { ...step, people: 2 } : step;
    const after = next !== undefined && !isTurn(next) && next.run === step.run ? next.footing.before : [];
    return { ...step, footing: { before: step.footing.before, after }, tools: after.length === 0 ? step.tools : withBlocks(step.tools) };
  });
}

/** Lighter work one lifts with one hand, kg: common practice, no source. */
const LIGHT = 1.5;

/** Whether work is lifted onto its blocks or off them before a step: one lifts, one moves the blocks. */
function isLifted(parts: ReadonlyMap<string, Part>, before: Step | undefined, { footing, present }: Step): boolean {
  const were = before === undefined || isTurn(before) ? footing.before : before.footing.before;
  const changed = [...were, ...footing.before].some((one) => !were.includes(one) || !footing.before.includes(one));
  return changed && present.reduce((sum, id) => sum + (parts.get(id)?.mass ?? 0), 0) > LIGHT;
}

interface Given {
  readonly connections: Model['connections'];
  readonly parts: ReadonlyMap<string, Part>;
  readonly solids: Solids;
}

const slidesOf = ({ motions }: Step): readonly Slide[] => motions.filter((motion): motion is Slide => motion.kind === 'slide');
const withBlocks = (tools: Step['tools']): Step['tools'] => (tools.includes('block') ? tools : [...tools, 'block']);

/** Steps one after the other in which the work stays as it lies; one that turns it is the last. */
function seriesOf(steps: readonly Step[]): readonly (readonly Step[])[] {
  const series: Step[][] = [];
  for (const step of steps) {
    const before = series.at(-1)?.at(-1);
    const stays = before !== undefined && !isTurn(before) && before.run === step.run && before.standing.name === step.standing.name && isSame(before.standing.pose, step.standing.pose);
    if (stays) series.at(-1)?.push(step);
    else series.push([step]);
  }
  return series;
}

const isSame = (one: Pose, other: Pose): boolean => one.every((value, index) => Math.abs(value - (other[index] ?? 0)) < 1e-6);

/** A series with its blocks, from the first step on in which they hold the work until its end; and before that from the first in which they hold it until then. */
function footed(given: Given, series: readonly Step[]): readonly Step[] {
  if (series.some(({ run }) => run !== null)) return series;
  if (series.some(({ standing }) => standing.name === 'upright')) return lifted(given, series);
  if (series.some(({ standing }) => standing.name !== 'lying')) return series;
  for (const lies of [isSteady, isInHand]) {
    for (const [first, step] of series.entries()) {
      const rest = series.slice(first);
      const blocks = isTurn(step) || (lies === isInHand ? rest : [step]).some((each) => standsBesideBlocks(given, each)) ? [] : blocksFrom(given, rest, lies);
      if (blocks.length > 0) return [...footed(given, series.slice(0, first)), ...rest.map((each) => ({ ...each, footing: { before: blocks, after: blocks }, tools: isTurn(each) ? each.tools : withBlocks(each.tools) }))];
    }
  }
  // Work that is knocked on stands on no peg, even if other blocks come beside it afterwards.
  const beside = series.findIndex((step) => standsBesideBlocks(given, step));
  return beside > 0 && series.slice(0, beside).some(({ tools }) => tools.includes('mallet')) ? [...footed(given, series.slice(0, beside)), ...series.slice(beside)] : series;
}

/** A series of work that stands, on blocks while it is drilled close to the floor: from the first such step to the last. */
function lifted(given: Given, series: readonly Step[]): readonly Step[] {
  const isLow = (step: Step): boolean => lowestDriven(given, [step]) < lowOf(given, step, thereIn(given, step));
  const [from, to] = [series.findIndex(isLow), series.findLastIndex(isLow)];
  const drilled = series.slice(Math.max(0, from), to + 1);
  if (drilled.length === 0 || drilled.some((step) => standsBesideBlocks(given, step))) return series;
  const blocks = blocksFrom(given, drilled, isSteady);
  return series.map((step) => (blocks.length > 0 && drilled.includes(step) ? { ...step, footing: { before: blocks, after: blocks }, tools: withBlocks(step.tools), people: 2 } : step));
}

/** Whether blocks beside it hold work of a step that stands on the floor. */
function standsBesideBlocks(given: Given, step: Step): boolean {
  const floor = lowOf(given, step, thereIn(given, step));
  return step.props.some((ids) => lowOf(given, step, partsOf(given, ids)) - floor <= STANDS);
}

/** Whether work whose mass is there lies on some blocks, and the pegs of it that would else stand on the floor. */
type Lies = (places: readonly Place[], centre: Centre, pegs: readonly Vec2[]) => boolean;

const isSteady: Lies = isSteadyOn;
/** What stands on edge on one line of pegs somebody has in hand: it stands as well on one line of blocks under a bar. */
const isInHand: Lies = (places, centre, pegs) => areInLine(pegs) && isBetween(places, centre);

/** The blocks under the work of the first of some steps that hold it in all of them; none where neither its pegs nor its pins reach the floor. */
function blocksFrom(given: Given, steps: readonly Step[], lies: Lies): readonly Footing[] {
  const [first] = steps;
  if (first === undefined) return [];
  const { pose } = first.standing;
  const there = thereIn(given, first);
  const peg = Math.min(lowestPeg(there, pose), lowestDriven(given, steps) + PEGS_CLEAR);
  if (peg > lowOf(given, first, there) + 1e-3) return [];
  const all = steps.flatMap((step) => [...thereIn(given, step), ...slidesOf(step).flatMap(({ parts }) => partsOf(given, parts))]);
  const others = [...new Set(all)].map((part) => inTheWay(given, first, part)).concat(steps.flatMap((step) => [...slidesOf(step).flatMap((slide) => waysOf(given, step, slide)), ...holesOf(given, step)]));
  // What a second person holds does not fall over as long as its mass is over its footing.
  const isHeld = steps.some(({ held }) => held.length > 0);
  const centres = [there, [...new Set(all)]].map((parts) => centreOf(given, first, parts, peg));
  const [bars, sleeves] = [lowBars(there, pose), lowSleeves(there, pose)];
  const wrapped = bars.flatMap((bar) => wrappedOf(given, first, there, bar));
  const pegs = pegTips(there, pose).map(([x, y]): Vec2 => [x, y]);
  const found = [bars, [...bars, ...wrapped], ...(lies === isInHand ? [] : [sleeves, [...bars, ...wrapped, ...sleeves]])]
    .map((carriers) => cornerPlaces(carriers.filter(({ under }) => under - peg < MOST_HIGH), others))
    .find((places) => centres.every((centre) => lies(places, isHeld ? { ...centre, high: 0 } : centre, pegs)));
  return (found ?? []).map((place) => footingOf(place, peg, pose));
}

/** Work that would lie higher over its pegs on blocks is not put on them, mm. */
const MOST_HIGH = 90;

/** A bar as far as a panel is wrapped round it: what lies on a block there is the panel. */
function wrappedOf(given: Given, step: Step, there: readonly Part[], bar: Carrier): readonly Carrier[] {
  const panels = given.connections.flatMap((each) => (each.is === 'wrap' && bar.parts.includes(each.bar) ? [each.panel] : []));
  return there.filter(({ id }) => panels.includes(id)).map((panel) => {
    const { min, max } = boxOf(given, step, panel);
    return { ...bar, parts: [...bar.parts, panel.id], from: Math.max(bar.from, min[bar.axis]), to: Math.min(bar.to, max[bar.axis]), under: Math.min(bar.under, min[2]) };
  });
}

function footingOf({ carrier, at, long }: Place, peg: number, lying: Pose): Footing {
  const high = Math.floor(carrier.under - peg + 1e-6) + PEGS_CLEAR;
  const foot: Vec3 = [at[0], at[1], peg - PEGS_CLEAR];
  const own = carrier.axis === 0 ? facing(foot, [1, 0, 0], [0, 1, 0], [0, 0, 1]) : facing(foot, [0, 1, 0], [-1, 0, 0], [0, 0, 1]);
  return { pose: chained(undone(lying), own), long, wide: BLOCK_WIDE, high, holds: carrier.parts };
}

const partsOf = ({ parts }: Given, ids: readonly string[]): readonly Part[] =>
  ids.flatMap((id) => parts.get(id) ?? []).filter(({ kind }) => !FASTENERS.has(kind));

/** What lies there in a step and does not move. */
function thereIn(given: Given, step: Step): readonly Part[] {
  const moving = new Set(slidesOf(step).flatMap(({ parts }) => parts));
  return partsOf(given, step.present.filter((id) => !moving.has(id)));
}

const boxOf = ({ solids }: Given, { standing }: Step, { shape, pose }: Part): Box3 => solids.box({ shape, pose: chained(standing.pose, pose) });
const lowOf = (given: Given, step: Step, parts: readonly Part[]): number => Math.min(...parts.map((part) => boxOf(given, step, part).min[2]));
const inTheWay = (given: Given, step: Step, part: Part): InTheWay => ({ part: part.id, box: boxOf(given, step, part) });

/** The boxes that parts take on their way. */
function waysOf(given: Given, step: Step, { parts, by }: Slide): readonly InTheWay[] {
  const back = times(turnedBy(step.standing.pose, by), -1);
  return partsOf(given, parts).map((part) => ({ part: part.id, box: reachingTo(boxOf(given, step, part), back) }));
}

/** A box that reaches from its place to where it is when it is moved so far. */
export const reachingTo = ({ min, max }: Box3, [x, y, z]: Vec3): Box3 => ({
  min: [min[0] + Math.min(0, x), min[1] + Math.min(0, y), min[2] + Math.min(0, z)], max: [max[0] + Math.max(0, x), max[1] + Math.max(0, y), max[2] + Math.max(0, z)],
});

/** Room for a bit that comes out under a bar, and for fingers with a nut, to all sides of a hole's axis, mm. Common practice, no source. */
const ROUND_HOLE = 20;

/** A pin that a step drills for or pushes in, what it holds, and whether it goes straight down. */
interface Driven {
  readonly pin: Part;
  readonly holds: readonly string[];
  readonly isDown: boolean;
}

function drivenIn({ connections, parts }: Given, { standing, drillsFor, newParts }: Step): readonly Driven[] {
  const fresh = new Set([...drillsFor, ...newParts.flatMap(({ ids }) => ids)]);
  return connections.flatMap((each): readonly Driven[] => {
    const pin = each.is === 'pin' && fresh.has(each.pin) ? parts.get(each.pin) : undefined;
    return each.is === 'pin' && pin !== undefined ? [{ pin, holds: each.holds, isDown: Math.abs(turnedBy(chained(standing.pose, pin.pose), [0, 0, 1])[2]) >= UPRIGHT }] : [];
  });
}

/** The height at which the floor would be in the way of the pins that steps drive in: of a tip and its nut, or of the drill beside a level one, mm; Infinity where there are none. */
const lowestDriven = (given: Given, steps: readonly Step[]): number => Math.min(...steps.flatMap((step) => drivenIn(given, step).map(({ pin, isDown }) =>
  (isDown ? boxOf(given, step, pin).min[2] - PINS_CLEAR : placed(chained(step.standing.pose, pin.pose), [0, 0, 0])[2] - DRILL_CLEAR))));

/** Where a step drills or pins through upright, down to the floor. */
const holesOf = (given: Given, step: Step): readonly InTheWay[] => drivenIn(given, step).filter(({ isDown }) => isDown).map(({ pin, holds }) => {
  const [x, y] = placed(chained(step.standing.pose, pin.pose), [0, 0, 0]);
  return { part: pin.id, under: holds, box: { min: [x - ROUND_HOLE, y - ROUND_HOLE, -Infinity], max: [x + ROUND_HOLE, y + ROUND_HOLE, Infinity] } };
});

/** The cosine from which a pin goes straight down. */
const UPRIGHT = 0.9;

/** The centre of mass, taken from the middles of the parts' boxes, over the tips of the pegs. */
function centreOf(given: Given, step: Step, parts: readonly Part[], peg: number): Centre {
  const all = parts.reduce((sum, { mass }) => sum + mass, 0);
  const [x, y, z] = parts.reduce<Vec3>((sum, part) => {
    const { min, max } = boxOf(given, step, part);
    return plus(sum, times(plus(min, max), part.mass / all / 2));
  }, [0, 0, 0]);
  return { at: [x, y], high: z - peg };
}
