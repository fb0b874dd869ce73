import { bracedFace, cableEnds, cableLoop, cableTest, capFor, cappedTubes, hasWallBrackets, jointPorts, screwsOut, wallPlaces, type JointPorts, type Model, type Shape } from '../../model/index.ts';
import { ACROSS_PAPER, sleeveEnds, turnedBy } from '../../scene/index.ts';
import { cableCutPicture, clipKindsPicture, endPicture, holdPicture, loopReminder, loopSeries, massHung, pegsPicture, sleeveMarkPicture, slideTrial, socketPicture, tyingReminder, tyingSeries, wallPictures, wholeCordPicture, type CableCut, type CappedTubes, type ClipSide, type AtWall, type WallFixed, type WallHoles, type WallShown } from '../flat/index.ts';
import { lettersWritten } from '../post-kinds.ts';
import type { Paper } from '../picture/index.ts';
import type { Step } from '../../plan/index.ts';
import type { DrawnPicture } from '../types.ts';
import type { DrawnFlat } from './work-picture.ts';

/** Sawn ends filed and capped: the tube as the kit has it, how many pieces the item has, and which ends of which pieces are capped. */
export function endSheet(model: Model, paper: Paper): DrawnPicture {
  const { kit: { tube }, tubes } = model;
  const filed = tubes.reduce((sum, { count }) => sum + count, 0);
  const end = { outside: tube.outsideDiameter, inside: tube.outsideDiameter - 2 * tube.wall };
  return endPicture(end, capFor(model.kit, end), { filed, capped: cappedKinds(model) }, paper);
}

/** The tubes that get caps: those with the same letter, marks and capped ends are one kind. */
function cappedKinds(model: Model): readonly CappedTubes[] {
  const [capped, written] = [cappedTubes(model), lettersWritten(model)];
  const kinds = new Map<string, CappedTubes>();
  for (const { id, shape } of model.parts) {
    const ends = capped.get(id);
    if (shape.form !== 'tube' || ends === undefined) continue;
    const kind = { letter: written.get(id) ?? '', length: shape.length, marks: sleeveEnds(model, id), first: ends.includes(-1), last: ends.includes(1) };
    const key = JSON.stringify(kind);
    kinds.set(key, { ...kind, count: (kinds.get(key)?.count ?? 0) + 1 });
  }
  return [...kinds.values()];
}

/** What a bracket is tried with: the pull, kg, how far aside new holes are marked where it has come out, and how long the cord is that ties a post in it, mm. */
export interface WallTest {
  readonly mass: number;
  readonly moved: number;
  readonly tie: number;
}

/** A bracket on its wall, pulled at, and what is done where it comes out; the bracket as the kit has it, a plain plate where it has none. */
export function wallSheets(model: Model, wall: WallShown, { mass, moved, tie }: WallTest, paper: Paper): AtWall<DrawnPicture> {
  const bracket = model.kit.catalogue.fittings.find((fitting) => fitting.is === 'wall-bracket') ?? { plate: 80, thickness: 4, reach: 60 };
  return wallPictures({ bracket, wall, pull: mass, tie, holes: { ...holesIn(model, bracket), moved }, item: fromBeside(model) }, paper);
}

/** How deep and how high the item is, and how high it is fixed, mm. */
const fromBeside = (model: Model): WallFixed['item'] => {
  const [deep, high] = ['depth', 'height'].map((name) => model.dimensions.find((length) => length.name === name)?.value ?? NaN) as [number, number];
  return { deep, high, fixed: wallPlaces(model)[0]?.at[2] ?? high };
};

/** Where the screws of the brackets go: all are as high as the first. */
function holesIn(model: Model, bracket: { readonly plate: number }): Omit<WallHoles, 'moved'> {
  const places = wallPlaces(model);
  const high = places[0]?.at[2] ?? 0;
  const xs = places.map(({ at }) => at[0]).toSorted((a, b) => a - b);
  return { heights: [high + screwsOut(bracket), high - screwsOut(bracket)], apart: xs.slice(1).map((x, index) => x - (xs[index] ?? x)), areOnPosts: hasWallBrackets(model) };
}

/** How deep the ends of tubes go into the sockets that a step pushes them into, and whether they hold there, where tubes are pushed first; nothing where a step pushes none. */
export const socketsFitted: DrawnFlat = ({ model, plan, papers: { bench } }, step) => {
  const [depth] = socketsOf(step);
  if (depth === undefined) return [];
  const isFirst = step === plan.steps.find((each) => socketsOf(each).length > 0);
  return [socketPicture({ tube: model.kit.tube.outsideDiameter, depth }, bench.width), ...(isFirst ? [holdPicture({ own: 3, pushed: 2 }, bench)] : [])];
};

/** How a tube goes through a sleeve, where one goes through for the first time. */
export const sleevesTried: DrawnFlat = ({ plan, papers: { bench } }, step) => (step === plan.steps.find(goesThroughSleeves)
  ? [slideTrial(bench, { filedAt: plan.steps.find(({ action }) => action === 'cap-ends')?.number ?? null, passesMore: plan.steps.some(passesMore) })] : []);

/** Whether a tube is pushed through more than one sleeve, or several sleeves are pushed over one. */
const passesMore = ({ motions }: Step): boolean => {
  const bars = motions.flatMap((motion) => (motion.kind === 'slide' ? motion.closes : [])).flatMap((each) => (each.is === 'sleeve' ? [each.bar] : []));
  return new Set(bars).size < bars.length;
};

const goesThroughSleeves = ({ motions }: Step): boolean =>
  motions.some((motion) => motion.kind === 'slide' && motion.closes.some(({ is }) => is === 'sleeve'));

/** How deep the sockets are that a step pushes tubes into, mm. */
const socketsOf = ({ motions }: Step): readonly number[] =>
  motions.flatMap((motion) => (motion.kind === 'slide' ? motion.closes : [])).flatMap((each) => (each.is === 'socket' ? [each.depth] : []));

/** Which sort of clips a step takes, where an item has hinges and stays, which are alike but for a knob; nothing where it has one sort. */
export const clipsTold: DrawnFlat = ({ model, papers: { bench } }, { newParts }) => {
  const side = (is: 'hinge' | 'lid-stay', ids: readonly string[] | null): ClipSide | undefined => model.parts.flatMap(({ id, shape }): readonly ClipSide[] =>
    (shape.form === 'fitting' && shape.fitting.is === is && (ids === null || ids.includes(id)) ? [{ bar: shape.outside, thickness: shape.fitting.thickness, leaf: shape.fitting.leaf, reach: shape.fitting.reach }] : []))[0];
  const fresh = newParts.flatMap(({ ids }) => ids);
  const [knobbed, plain, hasKnob] = [side('lid-stay', null), side('hinge', null), side('lid-stay', fresh) !== undefined];
  return knobbed === undefined || plain === undefined || (!hasKnob && side('hinge', fresh) === undefined) ? [] : [clipKindsPicture({ hasKnob, knobbed, plain }, bench)];
};

/** Where a sleeve is drilled, measured from the end that is nearer; nothing where a step drills through none. */
export const sleevesMeasured: DrawnFlat = ({ model, papers: { bench } }, { drillsFor, standing }) => {
  const held = model.connections.flatMap((each) => (each.is === 'pin' && drillsFor.includes(each.pin) ? each.holds : []));
  const [first] = model.parts.flatMap(({ id, shape, pose }) => (held.includes(id) ? sleevesOf(shape).map((sleeve) => ({ ...sleeve, pose })) : []));
  if (first === undefined) return [];
  const { axis, above, below, pin } = first.sleeve;
  const isNearBelow = below - pin <= above + pin;
  const ends = isNearBelow ? { near: below, far: above, hole: pin } : { near: above, far: below, hole: -pin };
  const [x, y] = turnedBy(standing.pose, turnedBy(first.pose, axis));
  const nearEnd = (x * ACROSS_PAPER[0] + y * ACROSS_PAPER[1] > 0) === isNearBelow ? 'left' : 'right';
  return [sleeveMarkPicture({ ...ends, outside: first.outside, tube: model.kit.tube.outsideDiameter, nearEnd }, bench.width)];
};

/** A joint's sleeves; none of what is no joint. */
function sleevesOf(shape: Shape): readonly { readonly sleeve: Extract<JointPorts['ports'][number], { is: 'sleeve' }>; readonly outside: number }[] {
  const joint = jointPorts(shape);
  return joint === null ? [] : joint.ports.flatMap((port) => (port.is === 'sleeve' ? [{ sleeve: port, outside: joint.outside }] : []));
}

/** How the cables of a step are measured, cut, hung up and marked; how they are tied, drawn tight and looked at where cables are tied first, and where that was shown at later steps, with how far these give way. */
export const cableSheets: DrawnFlat = ({ model, plan, papers: { bench } }, step) => {
  const cables = cablesOf(model, step.newParts.flatMap(({ ids }) => ids));
  const first = plan.steps.find(({ action }) => action === step.action) ?? step;
  return cables.flatMap((cable, index) => {
    const isShown = step === first && index === 0;
    return [
      cableCutPicture(cable, bench),
      ...(isShown ? [...loopSeries(cable, bench), pegsPicture(cable, bench)] : [loopReminder(first.number, bench)]),
      wholeCordPicture(cable, bench),
      ...(isShown ? tyingSeries(cable, bench) : [tyingReminder(cable, first.number, bench)]),
    ];
  });
};

/** The cables by length, the longest first. */
function cablesOf(model: Model, ids: readonly string[]): readonly CableCut[] {
  const cables = model.parts.flatMap(({ id, shape }) => (shape.form === 'cable' && ids.includes(id) ? [{ id, length: Math.round(shape.length) }] : []));
  const loop = cableLoop(model);
  return [...new Set(cables.map(({ length }) => length))].sort((a, b) => b - a).map((length): CableCut => {
    const alike = cables.filter((each) => each.length === length).map(({ id }) => id);
    const face = bracedFace(model, alike);
    return { count: alike.length, ...cableEnds(length), loop, test: cableTest(length, massHung(face)), face };
  });
}
