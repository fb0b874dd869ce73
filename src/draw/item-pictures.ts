import type { TubeCutPlan } from '../cut/index.ts';
import type { Model, PartKind, Solids } from '../model/index.ts';
import { sidesInOrder, type Plan } from '../plan/index.ts';
import { finishedScene, letteredScene, partBody, runScene, STANDARD_VIEW, type Scene, type View } from '../scene/index.ts';
import { patternPicture, sectionSeries } from './flat/index.ts';
import { hardwareOf } from './hardware.ts';
import { lineDrawing, newLineCaches } from './lines/index.ts';
import { composeAlone, composePicture, type LineDrawer, type Paper } from './picture/index.ts';
import { cutBars, plateSheet, stepPictures } from './step-pictures.ts';
import type { Picture } from './types.ts';

/** mm of paper for one mm of part on the page of parts: large ones at 1:10, small ones at 1:2 (scales of ISO 5455, from memory). */
export const PART_SCALE: Readonly<Record<PartKind, number>> = {
  panel: 0.1, 'flat-panel': 0.1, 'long-tube': 0.1, 'short-tube': 0.1, post: 0.1, cable: 0.1, joint: 0.5, 'panel-pin': 0.5, 'joint-pin': 0.5, 'wing-nut': 0.5,
};

const FULL: Paper = { width: 165, height: 200 };
const LETTERED: Paper = { width: 124, height: 170 };
const RUN: Paper = { width: 70, height: 38 };
/** A long part is shown with a break beyond this width of paper, mm. */
const WIDEST_PART = 72;
const SMALL_WIDTH = 23.5;

/** Tells which picture has been drawn, for a progress bar. */
export type Drawn = (id: string) => void;

/** Every picture of one size variant's booklets, in the order they are printed in. */
export function itemPictures(model: Model, plan: Plan, cuts: TubeCutPlan, solids: Solids, drawn: Drawn = () => undefined): readonly Picture[] {
  const draw = cachedDrawer();
  const composed = (scene: Scene, paper: Paper): Picture => composePicture(scene, paper, draw);
  const told = (picture: Picture): Picture => {
    drawn(picture.id);
    return picture;
  };
  const runs = [...new Set(plan.steps.flatMap((step) => step.run ?? []))];
  return [
    told(composed(finishedScene(model, solids), FULL)),
    told(composed(letteredScene(model, solids), LETTERED)),
    ...partPictures(model, solids, draw).map(told),
    told(cutBars(cuts)),
    told({ ...patternPicture(model.pattern, { width: 165, height: 230 }), id: 'pattern' }),
    told({ ...creaseSection(model), id: 'crease-section' }),
    ...model.plates.map((_, index) => told({ ...plateSheet(model, index), id: `plate:${index + 1}` })),
    ...runs.map((run) => told(composed(runScene(model, run, solids), RUN))),
    ...plan.steps.flatMap((step) => stepPictures({ model, plan, cuts, solids, draw }, step)).map(told),
  ];
}

/** Number of pictures that `itemPictures` will make is not known before; this many is close, for a progress bar. */
export const picturesExpected = (plan: Plan): number => plan.steps.length + 26;

/** The line drawing with what it may keep from picture to picture. */
export function cachedDrawer(): LineDrawer {
  const caches = newLineCaches();
  return (bodies, view, apart) => lineDrawing(bodies, view, { caches, ...(apart ? { apart } : {}) });
}

const creaseSection = (model: Model): Picture =>
  sectionSeries(model.pattern, sidesInOrder(model.pattern)[1] ?? 'right', hardwareOf(model), { width: 165, height: 190 });

/** Each kind of part by itself: at a stated scale for the page of parts, and small for the head of a step. */
export function partPictures(model: Model, solids: Solids, draw: LineDrawer): readonly Picture[] {
  const kinds = [...new Set(model.parts.map((part) => part.kind))];
  return kinds.flatMap((kind) => {
    const body = partBody(model, kind, solids);
    if (body === null) return [];
    // A panel is shown whole: a break would leave out its notches.
    const at = (scale: number, widest: number): Picture => composeAlone(body, viewOf(kind), scale, draw, kind === 'panel' ? Infinity : widest);
    return [
      { ...at(PART_SCALE[kind], WIDEST_PART), id: `part:${kind}` },
      { ...noWider(at, SMALL_SCALE[kind], SMALL_WIDTH), id: `small:${kind}` },
    ];
  });
}

/** Scales that bring each kind to about 10 mm of paper in height. */
const SMALL_SCALE: Readonly<Record<PartKind, number>> = {
  'long-tube': 0.14, 'short-tube': 0.14, post: 0.14, joint: 0.09, panel: 0.017, 'flat-panel': 0.025, 'panel-pin': 0.45, 'joint-pin': 0.16, 'wing-nut': 0.4, cable: 0.12,
};

/** Long parts lie along the paper, the rest stands as in the steps. */
function viewOf(kind: PartKind): View {
  const lying = kind === 'post' || kind === 'long-tube' || kind === 'short-tube';
  if (kind === 'cable') return { towardsEye: [0.05, -0.4, 1], up: [0, 1, 0] };
  return lying ? { towardsEye: [0.35, -1, 0.3], up: [0, 0, 1] } : STANDARD_VIEW;
}

/** A picture at the scale asked for, or at a smaller one so that it is no wider than `widest` mm. */
function noWider(at: (scale: number, widest: number) => Picture, scale: number, widest: number): Picture {
  const asked = at(scale, widest);
  return asked.width <= widest ? asked : at((scale * 0.95 * widest) / asked.width, widest);
}
