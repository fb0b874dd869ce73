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
import { knifeFromAbove, PADDED, paddedKnife, STRIP } from './padded-knife.ts';
import { woodMarks } from './punched-section.ts';
import { ringMarks } from './ring.ts';
import { numbered } from './trial.ts';
import { wasteMarks } from './waste.ts';

/** How a knife is led: on its line, right through on a board, what is beyond that cut off as waste; or between pads so thick, mm, so that the straight-edge lies beside the line, tried on waste, with its number in the order. */
export type Led = { readonly pads: null } | { readonly pads: number; readonly number: number };

/** Height of the picture, mm of paper. */
const HIGH = 42;
/** Over the bench, the panel's thickness in section, the straight-edge's, the board's and the bench's, mm of paper. */
const BENCH = HIGH - 4;
const PANEL = 7;
const EDGE = { wide: 15, high: 2.6 } as const;
const BOARD = 4.4;
const TABLE = 2;
/** Half of the panel's section, and how deep the blade is in it. */
const HALF = 27;
const DEEP = 5.6;
/** What is enlarged, mm of paper: its ring, from the right edge of the picture; and mm of paper for one mm in it. */
const RING = { radius: 12.5, right: 13.5 } as const;
const LARGE = 1;
const cap = capHeights.step;

/** The straight-edge clamped to the panel and bench at both ends, the knife along it: across the line, and from above; how far beside the line it lies, enlarged. */
export const guidePicture = (led: Led, { width }: Pick<Paper, 'width'>): DrawnPicture => toPicture({ width, height: HIGH }, guideMarks(led, width));

/** The marks of the picture, for the tests. */
export const guideMarks = (led: Led, width: number): readonly Mark[] => (led.pads === null
  ? [...across(led, width * 0.26), ...fromAbove({ x: width * 0.54, y: 7, width: width * 0.37, height: 29 })]
  : [...numbered([[4.5, 4.6]], led.number), ...across(led, width * 0.25), ...paddedFromAbove(led.pads, { x: width * 0.5, y: 7, width: width * 0.29, height: 29 }, [width - RING.right, HIGH / 2])]);

/** In section: the clamp's jaws over the straight-edge and under the bench, the knife pressed against the straight-edge. */
function across({ pads }: Led, x: number): readonly Mark[] {
  const board = pads === null ? BOARD : 0;
  const face = BENCH - PANEL - board;
  const from = pads === null ? x - PADDED.half : x - PADDED.half - PADDED.wide;
  const edge = cornersOf({ x: from - EDGE.wide, y: face - EDGE.high, width: EDGE.wide, height: EDGE.high });
  const right = pads === null ? x + PADDED.half : x + PADDED.half + PADDED.wide;
  const [left, end] = [x - HALF, pads === null ? x : x + HALF];
  const bench = cornersOf({ x: left + 4, y: BENCH, width: 2 * HALF + 4, height: TABLE });
  const level = face - 8;
  return [
    area('white', bench), outline(pens.cut, bench), ...(pads === null ? woodMarks({ x: left + 14, y: BENCH - BOARD, width: 2 * HALF - 18, height: BOARD }) : []),
    ...cutFace(cornersOf({ x: left, y: face, width: end - left, height: PANEL })),
    ...(pads === null ? wasteMarks(cornersOf({ x, y: face, width: HALF, height: PANEL })) : []),
    area('white', edge), outline(pens.cut, edge),
    ...clampMarks([from - EDGE.wide + 5, face - EDGE.high], [left - 5, BENCH + TABLE - 0.6]),
    ...(pads === null ? bareKnife([x, face], PANEL + 1.2) : paddedKnife([x, face], DEEP, { up: 22 })),
    line(pens.motion, [right + 12, level], [right + 6, level]), arrowhead([right + 2.4, level], [-1, 0], 4),
  ];
}

/** A blade alone in section, so deep under a face and so high over it, mm of paper. */
export function bareKnife([x, face]: Vec2, deep: number, up = 20): readonly Mark[] {
  const { half } = PADDED;
  const ring: readonly Vec2[] = [[x, face + deep], [x - half, face + deep - 3.4], [x - half, face - up], [x + half, face - up], [x + half, face + deep - 3.4]];
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

/** From above: a clamp on either end of the straight-edge, the knife on its way along it, right through what lies on a board. */
function fromAbove(box: Box): readonly Mark[] {
  const y = box.y + box.height * 0.64;
  const kept = cornersOf({ ...box, height: y - box.y });
  const knife = box.x + box.width * 0.42;
  return [
    ...woodMarks({ x: box.x - 7, y: y - 4, width: box.width + 14, height: 8 }),
    area('panel', kept), outline(pens.cut, kept), ...wasteMarks(cornersOf({ ...box, y, height: box.y + box.height - y })),
    ...straightEdge(box, y), ...knifeFromAbove([knife, y], null), ...ahead([knife + 10, y + 3.4]),
  ];
}

/** From above on waste, the strips as long as they are thick: the straight-edge beside the line by a strip's thickness, that enlarged. */
function paddedFromAbove(pads: number, box: Box, ring: Vec2): readonly Mark[] {
  const y = box.y + box.height * 0.66;
  const right = box.x + box.width;
  const scale = (box.width * 0.6) / STRIP.long;
  const thick = pads * scale;
  const low = y - thick;
  const knife = box.x + box.width * 0.42;
  return [
    ...wasteMarks(cornersOf(box)), line(pens.halfCut, [box.x, y], [right, y]),
    ...straightEdge(box, low), ...knifeFromAbove([knife, y], { scale, pads }), ...ahead([knife - 5, y + thick + 4]),
    ...ringMarks({ name: 'beside', at: [0, 0], centre: ring, radius: RING.radius, scale: LARGE }, { scale, origin: [right - 3, y - thick / 2] }, ({ scale: by, origin: [x, middle] }) => {
      const [at, edge] = [middle + (pads * by) / 2, middle - (pads * by) / 2];
      const strip = cornersOf({ x: x - 20, y: edge, width: 14, height: pads * by });
      return [
        area('panel', cornersOf({ x: x - 20, y: edge, width: 40, height: 40 })), area('core', strip), outline(pens.cut, strip),
        line(pens.cut, [x - 20, edge], [x + 20, edge]), line(pens.halfCut, [x - 6, at], [x + 20, at]),
      ];
    }),
    ...linearDimension({ axis: 'y', told: tell.mm(pads), ends: [ring[1] + (pads * LARGE) / 2, ring[1] - (pads * LARGE) / 2], line: ring[0] + 5, feature: ring[0] + 7, cap, upright: true }),
  ];
}

/** The straight-edge from above, its lower edge on a level, a clamp on either end. */
function straightEdge(box: Box, low: number): readonly Mark[] {
  const ring = cornersOf({ x: box.x - 4, y: low - 6, width: box.width + 8, height: 6 });
  return [area('white', ring), outline(pens.cut, ring), ...[box.x + 3, box.x + box.width - 3].flatMap((x) => jawMarks([x, low - 3], box.y - 5))];
}

/** The way that the knife goes. */
const ahead = ([x, y]: Vec2): readonly Mark[] => [line({ ...pens.motion, width: 0.9 }, [x, y], [x + 7, y]), arrowhead([x + 12, y], [1, 0], 5)];

/** A clamp's upper jaw from above, its arm over the edge of the panel. */
const jawMarks = ([x, y]: Vec2, back: number): readonly Mark[] => [
  area('ink', cornersOf({ x: x - 1.2, y: back, width: 2.4, height: y - back })), area('ink', cornersOf({ x: x - 2.4, y: y - 2, width: 4.8, height: 4 })),
];
