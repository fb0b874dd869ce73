import type { Vec2 } from '../../model/index.ts';
import { tell } from '../../scene/index.ts';
import { cutFace } from '../kit/cut-face.ts';
import { linearDimension } from '../kit/dimension.ts';
import { cornersOf } from '../kit/geometry.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import type { Box, DrawnPicture } from '../types.ts';
import { knifeFromAbove, PADDED, paddedKnife } from './padded-knife.ts';
import { wasteMarks } from './waste.ts';

/** How a knife is led: on its line, what is beyond that cut off as waste; or between pads so thick, mm, so that the straight-edge lies beside the line. */
export type Led = { readonly pads: null } | { readonly pads: number };

/** Height of the picture, mm of paper. */
const HIGH = 42;
/** Over the bench, the panel's thickness in section, the straight-edge's, and the bench's, mm of paper. */
const BENCH = HIGH - 6;
const PANEL = 7;
const EDGE = { wide: 15, high: 2.6 } as const;
/** Half of the panel's section, and how deep the blade is in it. */
const HALF = 27;
const DEEP = 5.6;
const cap = capHeights.step;

/** The straight-edge clamped to the panel and bench at both ends, the knife along it: across the line, and from above. */
export const guidePicture = (led: Led, { width }: Pick<Paper, 'width'>): DrawnPicture => toPicture({ width, height: HIGH }, guideMarks(led, width));

/** The marks of the picture, for the tests. */
export const guideMarks = (led: Led, width: number): readonly Mark[] =>
  [...across(led, width * 0.26), ...fromAbove(led, { x: width * 0.54, y: 7, width: width * 0.37, height: 29 })];

/** In section: the clamp's jaws over the straight-edge and under the bench, the knife pressed against the straight-edge. */
function across({ pads }: Led, x: number): readonly Mark[] {
  const face = BENCH - PANEL;
  const from = pads === null ? x - PADDED.half : x - PADDED.half - PADDED.wide;
  const edge = cornersOf({ x: from - EDGE.wide, y: face - EDGE.high, width: EDGE.wide, height: EDGE.high });
  const right = pads === null ? x + PADDED.half : x + PADDED.half + PADDED.wide;
  const [left, end] = [x - HALF, pads === null ? x : x + HALF];
  const bench = cornersOf({ x: left + 4, y: BENCH, width: 2 * HALF + 4, height: 2.6 });
  const level = face - 8;
  return [
    area('white', bench), outline(pens.cut, bench),
    ...cutFace(cornersOf({ x: left, y: face, width: end - left, height: PANEL })),
    ...(pads === null ? wasteMarks(cornersOf({ x, y: face, width: HALF, height: PANEL })) : []),
    area('white', edge), outline(pens.cut, edge),
    ...clampMarks([from - EDGE.wide + 5, face - EDGE.high], [left - 5, BENCH + 2.6]),
    ...(pads === null ? bareKnife([x, face], DEEP + 1.4) : paddedKnife([x, face], DEEP, 24)),
    line(pens.motion, [right + 12, level], [right + 6, level]), arrowhead([right + 2.4, level], [-1, 0], 4),
  ];
}

function bareKnife([x, face]: Vec2, deep: number): readonly Mark[] {
  const { half } = PADDED;
  const ring: readonly Vec2[] = [[x, face + deep], [x - half, face + deep - 3.4], [x - half, face - 20], [x + half, face - 20], [x + half, face + deep - 3.4]];
  return [area('white', ring), outline(pens.cut, ring)];
}

/** A clamp: its bar stands beside the bench, its screw presses from above, its lower jaw reaches under; mm of paper. */
function clampMarks([x, top]: Vec2, [bar, under]: Vec2): readonly Mark[] {
  const pen = { ...pens.motion, width: 1.6 };
  const up = top - 11;
  return [
    line(pen, [x, up], [bar, up], [bar, under + 1.4], [x, under + 1.4]),
    line({ ...pens.motion, width: 1 }, [x, up - 4], [x, top - 1.2]), line(pen, [x - 2.6, top - 0.8], [x + 2.6, top - 0.8]), line(pen, [x - 2.6, up - 4], [x + 2.6, up - 4]),
  ];
}

/** From above: a clamp on either end of the straight-edge, the knife on its way along it. */
function fromAbove({ pads }: Led, box: Box): readonly Mark[] {
  const y = box.y + box.height * 0.64;
  const pad = 5;
  const low = pads === null ? y : y - 0.6 - pad;
  const edge = cornersOf({ x: box.x - 4, y: low - 6, width: box.width + 8, height: 6 });
  const right = box.x + box.width;
  const kept = pads === null ? y - box.y : box.height;
  const knife = box.x + box.width * 0.42;
  return [
    area('panel', cornersOf({ ...box, height: kept })), outline(pens.cut, cornersOf({ ...box, height: kept })),
    ...(pads === null ? wasteMarks(cornersOf({ ...box, y, height: box.y + box.height - y })) : [line(pens.halfCut, [box.x, y], [right, y])]),
    area('white', edge), outline(pens.cut, edge),
    ...[box.x + 3, right - 3].flatMap((x) => jawMarks([x, low - 3], box.y - 5)),
    ...knifeFromAbove([knife, y], pads === null ? null : pad),
    line({ ...pens.motion, width: 0.9 }, [knife + 10, y + 3.4], [knife + 17, y + 3.4]), arrowhead([knife + 22, y + 3.4], [1, 0], 5),
    ...(pads === null ? [] : linearDimension({ axis: 'y', told: tell.mm(pads), ends: [y, low], line: right + 9, feature: right + 4, cap, upright: true })),
  ];
}

/** A clamp's upper jaw from above, its arm over the edge of the panel. */
const jawMarks = ([x, y]: Vec2, back: number): readonly Mark[] => [
  area('ink', cornersOf({ x: x - 1.2, y: back, width: 2.4, height: y - back })), area('ink', cornersOf({ x: x - 2.4, y: y - 2, width: 4.8, height: 4 })),
];
