import type { TubeCutPlan } from '../cut/index.ts';
import type { Model, Solids } from '../model/index.ts';
import type { Plan, Step } from '../plan/index.ts';
import { blocksFromAbove, closeUpScene, doBlocksComeToWork, enteredJoints, newJoints, plumbOf, proppedScenes, freedScenes, homeScene, onFeetOf, isHalfRound, rolledNumbers, rolledScenes, rolledSteps, sleeveWayScenes, standOf, stepScene, untapedScenes, roomUnder, seriesScenes, setDownScene, squareOf, unproppedScene, wayUpScenes, withEnds, type Rolled, type Scene, type Walk } from '../scene/index.ts';
import { PICTURES } from '../work/pictures.ts';
import { FORMATS, THUMB, type PageFormat } from './formats.ts';
import { withLetterOf, withLetters } from './letters-at-bars.ts';
import { composeAfter, composeAside, composeBeside, composeDone, composeJointGuide, composeOnFeet, composePlumb, composeRightWrong, composePicture, composeRow, composeRows, squarePicture, type Aside, type LineDrawer } from './picture/index.ts';
import { drilledOver } from './flat/index.ts';
import { pictureAs } from './picture-of.ts';
import type { DrawnPicture, Picture } from './types.ts';
import type { FlatGivens } from './work-kit/index.ts';

export interface StepGivens {
  readonly model: Model;
  readonly plan: Plan;
  readonly cuts: TubeCutPlan;
  readonly solids: Solids;
  readonly draw: LineDrawer;
  /** For which pages; `page` unless given. */
  readonly format?: PageFormat;
}

/** The picture of a step, and the further ones it needs: sections of the first wrap, close-ups of hidden fasteners. */
export function stepPictures(givens: StepGivens, step: Step): readonly Picture[] {
  const look = PICTURES[step.action];
  const drawn = 'flat' in look ? look.flat(flatGivens(givens), step) : scenePictures(givens, step, look.paper);
  if (drawn.length === 0) throw new RangeError(`step ${step.number} (${step.key}) has neither a scene nor a flat drawing`);
  return drawn.map((each, piece) => pictureAs({ what: 'step', step: step.number, piece }, each));
}

const flatGivens = ({ model, plan, cuts, format = 'page' }: StepGivens): FlatGivens => ({ model, plan, cuts, papers: FORMATS[format] });

/** The step's own scene, beside it what is done before or what is enlarged, and the further pictures. */
function scenePictures(givens: StepGivens, step: Step, paper: 'frame' | 'deck' | 'whole'): readonly DrawnPicture[] {
  const { model, plan, solids, draw, format = 'page' } = givens;
  const scene = stepScene(model, step, solids);
  if (scene === null) throw new RangeError(`step ${step.number} (${step.key}) has neither a scene nor a flat drawing`);
  const capped = (shown: Scene): Scene => withEnds(model, solids, shown);
  const { rolled, walk } = seenAnew(model, plan, step);
  const told = capped(withLetters(model, step, { ...scene, marks: [...scene.marks, ...rolledNumbers(scene, rolled)], ...(walk === null ? {} : { walk }) }));
  // Work that blocks come to is turned before; bars are laid on theirs first.
  const turns = withUntaped(rolledScenes(model, step, rolled, solids), untapedScenes(model, step, rolled, solids));
  const isTurnedFirst = doBlocksComeToWork(model, plan, step, solids);
  const onBlocks = [...[unproppedScene(model, plan, step, solids) ?? []].flat(), ...(isTurnedFirst ? turns : []), ...proppedScenes(model, plan, step, solids)].map(capped);
  const before = (isTurnedFirst ? [] : turns).map(capped);
  const freed = freedScenes(model, step, solids).map((scene, index) => capped(numberedAfter(turns, index, scene)));
  const closeUp = closeUpOf(givens, step);
  const square = squareOf(model, step, solids);
  const papers = FORMATS[format];
  const own = { ...papers[paper], height: onBlocks.length === 0 ? papers[paper].height : Math.min(papers[paper].height, papers.underBlocks), most: papers.most };
  if (closeUp !== null && before.length === 0 && freed.length === 0) {
    // Before it is drilled it is square, and before that it stands: in this order, the first on paper of its own.
    if (square !== null) return [...inRowsAlone(onBlocks, own, draw), squarePicture(square, own.width, draw), composeBeside([], told, closeUp, own, papers.closeUp, draw), ...furtherPictures(givens, step, null)];
    const whole = composeBeside(onBlocks, told, closeUp, own, papers.closeUp, draw);
    // Too high for one picture, how blocks come is one of its own.
    return [...(whole.height > papers.most && onBlocks.length > 0 ? [...inRowsAlone(onBlocks, own, draw), composeBeside([], told, closeUp, own, papers.closeUp, draw)] : [whole]), ...furtherPictures(givens, step, null)];
  }
  const afterWhatComesBefore = (): readonly DrawnPicture[] => {
    if (freed.length > 0) return [composeRows(onBlocks, [before, freed], own, draw), composePicture(told, papers[paper], draw)];
    if (onBlocks.length <= BESIDE_EACH_OTHER) return [composeAfter(onBlocks, before, told, own, draw)];
    return [...inRowsAlone(onBlocks, own, draw), composeAfter([], before, told, { ...papers[paper], most: papers.most }, draw)];
  };
  const entered = enteredJoints(model, step, rolled, solids);
  const look = PICTURES[step.action];
  return [
    ...('flat' in look ? [] : look.before?.(flatGivens(givens), step) ?? []),
    ...afterWhatComesBefore(),
    ...(entered.length === 0 ? [] : [composeRow(entered.map((each) => withLetterOf(model, each)), { width: papers.bench.width, height: ROW_HEIGHT }, draw)]),
    ...furtherPictures(givens, step, closeUp),
  ];
}

/** What a step's scene hides or shows too small: in space, or in section where it is drilled close over the floor. Null where there is nothing to enlarge. */
function closeUpOf({ model, solids }: StepGivens, step: Step): Aside | null {
  const under = roomUnder({ model, step, solids });
  if (under !== null) return { flat: (paper) => drilledOver(under, paper) };
  const closeUp = closeUpScene(model, step, solids);
  return closeUp === null ? null : withEnds(model, solids, closeUp);
}

/** More scenes than these before a step's picture have rows of their own, two in each. */
const BESIDE_EACH_OTHER = 2;

const inRows = (scenes: readonly Scene[]): readonly (readonly Scene[])[] =>
  Array.from({ length: Math.ceil(scenes.length / 2) }, (_, row) => scenes.slice(2 * row, 2 * row + 2));

/** Scenes that come before a step's own in a picture of theirs, where there are any. */
const inRowsAlone = (scenes: readonly Scene[], paper: { readonly width: number; readonly height: number }, draw: LineDrawer): readonly DrawnPicture[] => (scenes.length === 0 ? [] : [composeRows([], inRows(scenes), paper, draw)]);

/** A scene of a series with its number, counted on from scenes before them where those are numbered. */
const numberedAfter = (scenes: readonly Scene[], index: number, scene: Scene): Scene => ({ ...scene, number: (scenes.at(-1)?.number ?? 0) + index + 1 });

/** How work is turned, and then its tape wound off: numbered as one series, but where pieces have numbers of their own. */
const withUntaped = (turns: readonly Scene[], untaped: readonly Scene[]): readonly Scene[] =>
  [...turns, ...untaped].map((scene, index) => (untaped.length > 0 && untaped.every(({ number }) => number === undefined) ? { ...scene, number: index + 1 } : scene));

/** How work lies another way round than it was shown last, and where the worker goes. Where he has walked half round it and it is turned half round, he stands before it as it is: neither is told. */
function seenAnew(model: Model, plan: Plan, step: Step): { readonly rolled: readonly Rolled[]; readonly walk: Walk | null } {
  const rolled = rolledSteps(model, plan).get(step.number) ?? [];
  const walk = walkTo(model, plan, step);
  const isBoth = walk !== null && [walk.was, walk.is].includes('behind') && walk.was !== walk.is && rolled.length === 1 && rolled.every(({ turn }) => isHalfRound(turn));
  return isBoth ? { rolled: [], walk: null } : { rolled, walk };
}

/** Where the worker walks for a step, from where the one before was done; null where that and this are done before the work. */
function walkTo(model: Model, { steps }: Plan, step: Step): Walk | null {
  const before = steps[steps.indexOf(step) - 1];
  const was = before !== undefined && before.run === step.run ? standOf(model, before) : 'front';
  const is = standOf(model, step);
  return was === 'front' && is === 'front' ? null : { was, is };
}

/** Heights of right and wrong scenes, and of joints side by side, mm of paper. */
const PAIR_HEIGHT = 52;
const ROW_HEIGHT = 48;
/** Height of work on its blocks, seen level and from above: its bars are thin there. */
const ON_BLOCKS_HEIGHT = 64;
const SERIES_HEIGHT = 44;
/** Most height of work that has come home. */
const HOME_HEIGHT = 84;

/** Flat drawings beside the first step of a kind, which way up a part goes, or what the scene hides or shows too small where there is no room beside it. */
function furtherPictures(givens: StepGivens, step: Step, closeUp: Aside | null): readonly DrawnPicture[] {
  const { model, plan, solids, draw, format = 'page' } = givens;
  const [home, setDown] = [homeScene(model, step, solids), setDownScene(model, plan, step, solids)];
  const onBlocks = [setDown ?? [], blocksFromAbove(model, plan, step, solids) ?? []].flat();
  const series = seriesScenes(model, step, solids);
  const wayUp = wayUpScenes(model, step, solids) ?? sleeveWayScenes(model, step, solids);
  return [
    ...(series.length === 0 ? [] : [composeRow(series.map((scene) => withEnds(model, solids, scene)), { width: FORMATS[format].bench.width, height: SERIES_HEIGHT }, draw)]),
    ...jointGuides(givens, step),
    ...flatBeside(givens, step),
    ...stood(givens, step),
    ...(onBlocks.length === 0 ? [] : [composeRow(onBlocks.map((each) => withEnds(model, solids, each)), { width: FORMATS[format].bench.width, height: ON_BLOCKS_HEIGHT }, draw)]),
    ...(home === null ? [] : [composeDone(withEnds(model, solids, home), { width: FORMATS[format].bench.width, height: HOME_HEIGHT }, draw)]),
    ...(wayUp === null ? [] : [composeRightWrong(withEnds(model, solids, wayUp.right), wayUp.wrong.map((scene) => withEnds(model, solids, scene)), { width: FORMATS[format].bench.width, height: PAIR_HEIGHT }, draw)]),
    ...(closeUp === null ? [] : [composeAside(closeUp, FORMATS[format].closeUp, draw)]),
  ];
}

/** The joints that come for the first time: which of their openings let a tube through and in which it ends; where cords come on their studs, how. */
function jointGuides({ model, plan, solids, draw }: StepGivens, step: Step): readonly DrawnPicture[] {
  return newJoints(model, plan, step, solids).map(({ joint, bodies, view, hasCords, places }) => composeJointGuide(bodies, view, places, { joint, hasCords, tube: model.kit.tube.outsideDiameter }, draw));
}

/** How work that stands is looked at: with a plumb line, and what is done where it leans; or whether all its feet stand. */
function stood({ model, plan, solids, draw, format = 'page' }: StepGivens, step: Step): readonly DrawnPicture[] {
  const [plumb, feet] = [plumbOf(model, plan, step, solids), onFeetOf(model, plan, step, solids)];
  return [...(plumb === null ? [] : composePlumb(plumb, FORMATS[format].bench, draw)), ...(feet === null ? [] : [composeOnFeet(feet, FORMATS[format].bench, draw)])];
}

/** What is drawn flat beside a step, or beside the first one of its kind of work. */
function flatBeside(givens: StepGivens, step: Step): readonly DrawnPicture[] {
  const look = PICTURES[step.action];
  if ('flat' in look) return [];
  const isFirst = step === givens.plan.steps.find(({ action }) => action === step.action);
  return [...(isFirst ? look.once?.(flatGivens(givens), step) ?? [] : []), ...(look.each?.(flatGivens(givens), step) ?? [])];
}

/** A step's thumbnail: its scene with the arrows alone; null for work on the bench, which has no scene. */
export function stepThumb({ model, solids, draw }: Omit<StepGivens, 'format'>, step: Step): Picture | null {
  const scene = stepScene(model, step, solids);
  return scene === null ? null : pictureAs({ what: 'step-thumb', step: step.number }, composePicture(withEnds(model, solids, arrowsOnly(scene)), THUMB, draw));
}

/** A scene without what would be too small to read on a thumbnail. */
export const arrowsOnly = (scene: Scene): Scene => ({ ...scene, marks: scene.marks.filter(({ mark }) => mark === 'arrow') });
