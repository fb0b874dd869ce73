import type { TubeCutPlan } from '../cut/index.ts';
import { jointPorts, placed, threadedLength, type Model, type PartKind, type Solids, type Vec3 } from '../model/index.ts';
import { PART_KINDS, PARTS, type PartFacts } from '../parts/facts.ts';
import { varietiesOf } from '../parts/varieties.ts';
import type { Plan, Step } from '../plan/index.ts';
import { blocksPicture, coilPicture, fetchedBlocksPicture, STUD_FIXED, studFixed } from './flat/index.ts';
import { allBlocks, blindEnds, blocksFetched, blocksThere, finishedScene, isAsUsed, letteredScene, partBody, poseAfter, runScene, STANDARD_VIEW, withEnds, type Mark, type Scene, type SceneBody } from '../scene/index.ts';
import { foldedPanels, foldingOf, patternSheet } from './folded-panels.ts';
import { FORMATS, THUMB, type Format, type PageFormat } from './formats.ts';
import { lineDrawing, newLineCaches } from './lines/index.ts';
import { composeAlone, composePicture, trimmed, type LineDrawer, type Paper, type Told } from './picture/index.ts';
import { remembered } from './remembered.ts';
import { arrowsOnly, stepPictures, stepThumb } from './step-pictures.ts';
import { supplyPictures } from './supply-pictures.ts';
import { pictureAs, type PictureOf } from './picture-of.ts';
import type { DrawnPicture, Picture } from './types.ts';
import { cutBarsInPieces, plateSheet, stockSheet } from './work-kit/index.ts';

const scales = (of: (facts: PartFacts) => number): Readonly<Record<PartKind, number>> =>
  Object.fromEntries(PART_KINDS.map((kind) => [kind, of(PARTS[kind])])) as Record<PartKind, number>;

/** mm of paper for one mm of part on the page of parts: large ones at 1:10, small ones at 1:2 (scales of ISO 5455, from memory). */
export const PART_SCALE: Readonly<Record<PartKind, number>> = scales(({ scale }) => scale.page);

/** The same for a format: a whole panel at 1:10 is wider than a small page. */
export const partScale = (format: PageFormat): typeof PART_SCALE => (format === 'small' ? scales(({ scale }) => scale.small) : PART_SCALE);

/** A long part is shown with a break beyond this width of paper, mm. */
const WIDEST_PART = 72;
const SMALL_WIDTH = 23.5;

/** How much larger than at the head of a step a coil is drawn on the page of parts. */
const COIL_ON_PAGE = 1.2;

/** Tells which picture has been drawn, for a progress bar. */
export type Drawn = (id: string) => void;

/** What the pictures of one size variant are made from. */
export interface Drawable {
  readonly model: Model;
  readonly plan: Plan;
  readonly cuts: TubeCutPlan;
  readonly solids: Solids;
}

/** Every picture of one size variant's booklets on A4 and Letter, in the order they are printed in. */
export function itemPictures(model: Model, plan: Plan, cuts: TubeCutPlan, solids: Solids, drawn: Drawn = () => undefined): readonly Picture[] {
  return picturesFor({ model, plan, cuts, solids }, ['page'], drawn).page;
}

/** The same pictures for several formats of pages. Each scene is drawn once and set on each paper, so a further format costs little. */
export function picturesFor<Asked extends Format>(givens: Drawable, formats: readonly Asked[], drawn: Drawn = () => undefined, draw = cachedDrawer()): Readonly<Record<Asked, readonly Picture[]>> {
  const groups = pictureGroups(givens, formats, draw);
  return inOnePiece(formats, Array.from({ length: groups.count }, (_, group) => {
    const made = groups.draw(group);
    for (const { id } of formats.slice(0, 1).flatMap((format) => made[format])) drawn(id);
    return made;
  }));
}

/** A size's pictures group by group, in the order they are printed in: no group hangs on another having been drawn. */
export interface PictureGroups<Asked extends Format> {
  readonly count: number;
  readonly draw: (group: number) => Readonly<Record<Asked, readonly Picture[]>>;
}

export function pictureGroups<Asked extends Format>(givens: Drawable, formats: readonly Asked[], draw = cachedDrawer()): PictureGroups<Asked> {
  const makers = pictureMakers(givens, draw);
  const expected = pictureGroupCount(givens.model, givens.plan);
  if (makers.length !== expected) throw new RangeError(`${makers.length} groups of pictures, but ${expected} were expected`);
  return {
    count: makers.length,
    draw: (group) => Object.fromEntries(formats.map((format) => [format, makers[group]?.(format) ?? []])) as Record<Asked, readonly Picture[]>,
  };
}

/** How many groups there will be. */
export const pictureGroupCount = (model: Model, plan: Plan): number =>
  GROUPS_OF_ITEM + (isAsUsed(poseAfter(plan, null)) ? 0 : 1) + foldedPanels(model).length + plan.batches.length + plan.steps.length;

/** Groups put together again. */
export const inOnePiece = <Asked extends Format>(formats: readonly Asked[], groups: readonly Readonly<Record<Asked, readonly Picture[]>>[]): Readonly<Record<Asked, readonly Picture[]>> =>
  Object.fromEntries(formats.map((format): [Asked, readonly Picture[]] => [format, groups.flatMap((group) => group[format])])) as Record<Asked, readonly Picture[]>;

/** One for each picture, or for a few that belong together, in the order they are printed in. */
type Maker = (format: Format) => readonly Picture[];

function pictureMakers({ model, plan, cuts, solids }: Drawable, draw: LineDrawer): readonly Maker[] {
  const composed = (of: PictureOf, scene: Scene, paper: Paper): readonly Picture[] => [pictureAs(of, composePicture(withEnds(model, solids, scene), paper, draw))];
  const ready = poseAfter(plan, null);
  return [
    withThumb((format) => composed({ what: 'finished' }, finishedScene(model, solids), FORMATS[format].full), () => composed({ what: 'finished-thumb' }, arrowsOnly(finishedScene(model, solids)), THUMB)),
    ...(isAsUsed(ready) ? [] : [withThumb((format) => composed({ what: 'ready' }, finishedScene(model, solids, ready), FORMATS[format].full))]),
    withThumb((format) => composed({ what: 'lettered' }, letteredScene(model, solids), trimmed(withEnds(model, solids, letteredScene(model, solids)), FORMATS[format].lettered, draw))),
    withThumb((format) => [...partPictures(model, solids, draw, partScale(format), plan.steps), ...supplyPictures(plan, solids, draw), ...fetchedBlocks(model, plan, solids)]),
    withThumb((format) => [pictureAs({ what: 'stock' }, stockSheet({ model, plan, cuts }, FORMATS[format].bench.width))]),
    withThumb((format) => cutBarsInPieces(cuts, FORMATS[format]).map((drawn, piece) => pictureAs({ what: 'cut-bars', piece }, drawn))),
    ...foldedPanels(model).map(({ index: pattern }) => withThumb((format) => [
      pictureAs({ what: 'pattern', pattern }, patternSheet(model, pattern, FORMATS[format].pattern)),
      pictureAs({ what: 'crease-section', pattern }, foldingOf(model, pattern, FORMATS[format].sections)),
    ])),
    withThumb((format) => model.plates.map((_, plate) => pictureAs({ what: 'plate', plate }, plateSheet(model, plate, FORMATS[format].bench, true, plan)))),
    ...plan.batches.map((batch) => withThumb((format) => composed({ what: 'run', run: batch.name }, runScene(model, batch, solids, poseAfter(plan, batch.name)), FORMATS[format].run))),
    ...plan.steps.map((step) => withThumb(
      (format) => [...stepPictures({ model, plan, cuts, solids, draw, format }, step), ...stepParts(model, step, solids, draw), ...stepBlocks(model, plan, step, solids)],
      () => [stepThumb({ model, plan, cuts, solids, draw }, step) ?? []].flat(),
    )),
  ];
}

/** Those that every item has: finished, lettered, its parts, its stock, its cuts, its plates. */
const GROUPS_OF_ITEM = 6;

/** Most pictures come on no thumbnail. */
const withThumb = (ofPage: (format: PageFormat) => readonly Picture[], thumb: () => readonly Picture[] = () => []): Maker =>
  (format) => (format === 'thumb' ? thumb() : ofPage(format));

/** Number of pictures that `itemPictures` will make is not known before; this many is close, for a progress bar. */
export const picturesExpected = (plan: Plan): number => plan.steps.length + 26;

/** The line drawing with what it may keep from picture to picture, and the last few drawings themselves. */
export function cachedDrawer(): LineDrawer {
  const caches = newLineCaches();
  return remembered((bodies, view, apart) => lineDrawing(bodies, view, { caches, ...(apart ? { apart } : {}) }));
}

/** Each kind of part by itself: at a stated scale for the page of parts, and small for the head of a step. */
export function partPictures(model: Model, solids: Solids, draw: LineDrawer, onPage = PART_SCALE, steps: readonly Step[] = []): readonly Picture[] {
  const kinds = [...new Set(model.parts.map((part) => part.kind))];
  const closed = closing(model, solids);
  return [...kinds.flatMap((each) => varietiesOf(model, each)).flatMap(({ kind, variety, parts: [{ id }] }) => {
    const body = partBody(model, kind, solids, id, steps);
    if (body === null) return [];
    const { scale: { head }, view = STANDARD_VIEW, isWhole, isLimp } = PARTS[kind];
    if (isLimp) return [pictureAs({ what: 'part', kind, variety }, coilPicture(COIL_ON_PAGE)), pictureAs({ what: 'small-part', kind, plate: variety }, coilPicture())];
    const at = (scale: number, widest: number, told = false): DrawnPicture => composeAlone(body, view, scale, draw, isWhole ? Infinity : widest, closed(body), told ? toldOf(model, id) : null, threadsOf(model, id, body));
    return [
      pictureAs({ what: 'part', kind, variety }, at(onPage[kind], WIDEST_PART, true)),
      pictureAs({ what: 'small-part', kind, plate: variety }, noWider(at, head, SMALL_WIDTH)),
    ];
  }), ...furtherPlates(model, solids, draw)];
}

/** The thread of a pin that a nut is turned on to, where it is as a body of it is placed. */
function threadsOf({ parts }: Model, id: string, { pose }: SceneBody): readonly Mark[] {
  const part = parts.find((each) => each.id === id);
  if (part?.kind !== 'joint-pin' || part.shape.form !== 'pin') return [];
  const { shape } = part;
  const at = (along: number): Vec3 => placed(pose, [0, 0, along]);
  return [{ mark: 'thread', from: at(threadedLength(shape) - shape.length), to: at(-shape.length), diameter: shape.diameter }];
}

/** That a joint's studs are of one piece with it; nothing of what has none. */
function toldOf({ parts }: Model, id: string): Told | null {
  const part = parts.find((each) => each.id === id);
  const hasStuds = part !== undefined && jointPorts(part.shape)?.ports.some(({ is }) => is === 'stud') === true;
  return hasStuds ? { ...STUD_FIXED, marks: studFixed } : null;
}

/** What makes a part's blind openings dark. */
const closing = ({ parts }: Model, solids: Solids) => (body: SceneBody): readonly SceneBody[] => parts.filter(({ id }) => id === body.partId).flatMap((part) => blindEnds(solids, body, part));

/** Small pictures of the parts that a step brings and that have a way up, as they lie there. */
const stepParts = (model: Model, step: Step, solids: Solids, draw: LineDrawer): readonly Picture[] =>
  step.newParts.filter(({ kind }) => PARTS[kind].hasWayUp === true).flatMap(({ kind, ids: [id] }): readonly Picture[] => {
    const body = partBody(model, kind, solids, id, [step]);
    if (body === null) return [];
    const closed = closing(model, solids)(body);
    const at = (scale: number, widest: number): DrawnPicture => composeAlone(body, STANDARD_VIEW, scale, draw, widest, closed);
    return [pictureAs({ what: 'step-part', step: step.number, kind }, noWider(at, PARTS[kind].scale.head, SMALL_WIDTH))];
  });

/** The blocks that a step puts under, where it does. */
function stepBlocks(model: Model, plan: Plan, step: Step, solids: Solids): readonly Picture[] {
  const blocks = blocksFetched(model, plan, step, solids);
  return blocks.length === 0 ? [] : [pictureAs({ what: 'step-blocks', step: step.number }, blocksPicture(blocks, blocksThere(model, plan, step, solids)))];
}

/** All the blocks to fetch, where any step is propped. */
function fetchedBlocks(model: Model, plan: Plan, solids: Solids): readonly Picture[] {
  const blocks = allBlocks(model, plan, solids);
  return blocks.length === 0 ? [] : [pictureAs({ what: 'blocks' }, fetchedBlocksPicture(blocks))];
}

/** Small pictures of the kinds of flat panels after the first. */
function furtherPlates(model: Model, solids: Solids, draw: LineDrawer): readonly Picture[] {
  const { scale: { head }, view = STANDARD_VIEW } = PARTS['flat-panel'];
  return model.plates.slice(1).flatMap(({ partIds: [id] }, index) => {
    const body = partBody(model, 'flat-panel', solids, id);
    if (body === null) return [];
    const at = (scale: number, widest: number): DrawnPicture => composeAlone(body, view, scale, draw, widest);
    return [pictureAs({ what: 'small-part', kind: 'flat-panel', plate: index + 1 }, noWider(at, head, SMALL_WIDTH))];
  });
}

/** A picture at the scale asked for, or at a smaller one so that it is no wider than `widest` mm. */
function noWider(at: (scale: number, widest: number) => DrawnPicture, scale: number, widest: number): DrawnPicture {
  const asked = at(scale, widest);
  return asked.width <= widest ? asked : at((scale * 0.95 * widest) / asked.width, widest);
}
