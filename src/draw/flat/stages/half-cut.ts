import { halfCutDepth, type FlatPattern, type Vec2 } from '../../../model/index.ts';
import type { Box } from '../../types.ts';
import { linearDimension } from '../../kit/dimension.ts';
import { halfCutSection, sectionMarks } from '../glyphs.ts';
import { glyphView } from '../legend.ts';
import { capHeights } from '../../kit/lettering.ts';
import type { Mark } from '../../kit/marks.ts';
import { arrowhead, line, toldWidth } from '../../kit/marks.ts';
import { acrossFlap, creaseMarks, flapOn, halfCutMarks, holeMarks, insideLineMarks, outlineMarks } from '../panel-lines.ts';
import { earlier, pens } from '../../kit/pens.ts';
import type { Paper } from '../../kit/svg.ts';
import type { Fit } from '../../kit/fit.ts';
import { fitToScale, onPaper } from '../../kit/fit.ts';
import { placeWhole, wholeMarks } from '../whole.ts';
import { columnBox, countMark, mainBox, noRoom } from './layout.ts';
import type { Skinned } from '../hole-marks.ts';
import { edgeBesideCut } from '../edge-beside-cut.ts';
import { markedFace, signRoom } from '../marked-face.ts';
import { PADDED, paddedKnife } from '../padded-knife.ts';
import { sideOrder } from './crease.ts';
import { tell } from '../../../scene/index.ts';

const column = 60;
const cap = capHeights.step;

/** The half-cuts, and how deep the knife goes: through one skin and the core; the other skin stays as the hinge. */
export function halfCutStage(pattern: FlatPattern, paper: Paper): readonly Mark[] {
  const whole = placeWhole(pattern, mainBox(paper, column, noRoom));
  const box = columnBox(paper, column);
  const half = box.height / 2;
  return [
    wholeMarks(pattern, whole, true, [
      ...outlineMarks(pattern, whole.view, earlier(pens.cut)),
      ...insideLineMarks(pattern, whole.view, earlier(pens.inside)),
      ...creaseMarks(pattern, whole.view, earlier(pens.crease), acrossFlap),
      ...holeMarks(pattern, whole.view, earlier(pens.hole)),
      ...halfCutMarks(pattern, whole.view, pens.halfCut, acrossFlap),
      ...guided(pattern, whole.view),
    ]),
    ...sideOrder(pattern, whole.view),
    ...knifeInPanel(pattern, { ...box, height: half }),
    ...opened(pattern, { ...box, y: box.y + half, height: half - capHeights.count - 5 }),
    countMark(pattern.flaps.length, box.x + box.width / 2, box.y + box.height - capHeights.count / 2 - 1),
  ];
}

/** The straight-edge beside each half-cut. */
const guided = (pattern: FlatPattern, view: Fit): readonly Mark[] =>
  pattern.flaps.flatMap((flap) => edgeBesideCut(view, acrossFlap(pattern, flap, flap.halfCut), [0, 0], pattern.thickness));

/** Room for an upright figure between a feature and its dimension line. */
function upright(length: number): number {
  return toldWidth(tell.mm(length), cap, 400) + 2;
}

/** The knife in the panel with the depth of the cut and what is left below it; the sign on the face that bears the marks. */
export function knifeInPanel(pattern: Skinned, box: Box, marked: 'upper' | 'lower' = 'upper'): readonly Mark[] {
  const { thickness } = pattern;
  const dimensions = 12;
  const knifeRoom = KNIFE.up + 1;
  const reach = thickness * 0.65;
  const view = fitToScale({ min: [-reach, -thickness], max: [reach, 0] }, {
    x: box.x + dimensions, y: box.y + knifeRoom, width: box.width - 2 * dimensions, height: box.height - knifeRoom - (marked === 'lower' ? signRoom : 2),
  }, true);
  const deep = halfCutDepth(pattern);
  const [left, top] = onPaper(view, [-reach, 0]);
  const [right, bottom] = onPaper(view, [reach, -thickness]);
  const slit = onPaper(view, [0, -deep]);
  return [
    { mark: 'view', name: 'half-cut', scale: view.scale, marks: [...sectionMarks(view, [[-reach, -thickness], [reach, -thickness], [reach, 0], [-reach, 0]]), ...skins(view, reach, pattern)] },
    ...knife(slit, top), ...markedFace([right - 5, marked === 'upper' ? top : bottom], marked === 'upper' ? 'up' : 'down'),
    ...linearDimension({ axis: 'y', told: tell.mm(deep), ends: [slit[1], top], line: left - 4, feature: left, cap, upright: true }),
    line(pens.dimension, [left - 5, slit[1]], slit),
    ...linearDimension({ axis: 'y', told: tell.mm(thickness), ends: [bottom, top], line: right + 3 + upright(thickness), feature: right, cap, upright: true }),
  ];
}

function skins(view: Fit, reach: number, { thickness, skin }: Skinned): readonly Mark[] {
  return [-skin, skin - thickness].map((y) => line(pens.edge, onPaper(view, [-reach, y]), onPaper(view, [reach, y])));
}

/** How far the knife reaches over the face, and how wide the strips at its blade are, mm of paper. */
const KNIFE = { up: 20, wide: 5.5 } as const;

/** The knife between its strips, which stand on the face, its tip at the bottom of the cut; and the way it goes. */
function knife([x, y]: Vec2, top: number): readonly Mark[] {
  const beside = x - PADDED.half - KNIFE.wide - 4;
  return [...paddedKnife([x, top], y - top, KNIFE), line(pens.motion, [beside, top - 14], [beside, top - 4]), arrowhead([beside, top - 1.5], [0, 1], 3.5)];
}

/** The same place with the tab turned back: the cut opens, the outer skin holds. */
function opened(pattern: FlatPattern, box: Box): readonly Mark[] {
  const ring = halfCutSection(pattern, pattern.thickness * 2.2, flapOn(pattern, 'left').turnBack);
  const view = glyphView(ring, { x: box.x + 4, y: box.y + 3, width: box.width - 8, height: box.height - 6 });
  return [{ mark: 'view', name: 'half-cut-open', scale: view.scale, marks: sectionMarks(view, ring) }];
}
