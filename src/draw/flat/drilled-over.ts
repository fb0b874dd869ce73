import type { Vec2 } from '../../model/index.ts';
import { tell, type RoomUnder } from '../../scene/index.ts';
import { cutFace } from '../kit/cut-face.ts';
import { linearDimension } from '../kit/dimension.ts';
import { cornersOf } from '../kit/geometry.ts';
import { hatching } from '../kit/hatching.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, circle, figure, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { crossed, ticked } from '../kit/right-wrong.ts';
import type { Paper } from '../kit/svg.ts';

/** mm of paper for one mm. */
const SCALE = 0.62;
/** Half of the panel's width in a section, and of the floor's under it, mm of paper; the floor's thickness. */
const HALF = 9.5;
const FLOOR = { half: 10.5, thick: 4.5, pitch: 1.5 } as const;
/** The drill over its bit: half of its width and its height, the chuck under it, the bit seen between that and the panel; mm of paper. */
const DRILL = { half: 4.6, high: 11, chuck: { half: 2.2, high: 3.4 }, over: 6 } as const;
/** The arrow over the drill, and the verdict under the floor, mm of paper. */
const ARROW = 9;
const VERDICT = 8;
/** How far the bit comes out under the tube where it is right, as a share of the room; and how far it goes into the floor where it is wrong, mm of paper. */
const OUT = 0.4;
const INTO = 3;
const cap = capHeights.step;

/**
 * Panel and tube in section, drilled from above: how far the floor is under the tube. The bit comes out over the floor, and under a cross in it.
 */
export function drilledOver(drilled: RoomUnder, { width, height }: Paper): readonly Mark[] {
  const { room } = drilled;
  const [right, wrong] = [width - 3 * FLOOR.half - 2.5, width - FLOOR.half - 0.5];
  const top = (height - highOf(drilled)) / 2 + ARROW + DRILL.high + DRILL.chuck.high + DRILL.over;
  const under = top + (drilled.panel + drilled.tube.outside) * SCALE;
  const floor = under + room * SCALE;
  return [
    ...section(drilled, [right, top], OUT * room * SCALE), ...section(drilled, [wrong, top], room * SCALE + INTO),
    ...linearDimension({ axis: 'y', told: tell.mm(Math.round(room)), ends: [floor, under], line: right - FLOOR.half - 1.5, feature: [right - FLOOR.half, right - 1], cap, upright: true }),
    figure(tell.diameter(drilled.bit), [(right + wrong) / 2, top - DRILL.over / 2 - 0.6], cap),
    ...ticked([right, floor + FLOOR.thick + VERDICT / 2 + 1]), ...crossed([wrong, floor + FLOOR.thick + VERDICT / 2 + 1]),
  ];
}

/** Height of the drawing, mm of paper. */
const highOf = ({ panel, tube, room }: RoomUnder): number => ARROW + DRILL.high + DRILL.chuck.high + DRILL.over + (panel + tube.outside + room) * SCALE + FLOOR.thick + VERDICT;

/** The bit through the panel, whose face is at a place, and through the tube, so far out under that, mm of paper. */
function section({ bit, panel, tube, room }: RoomUnder, [x, top]: Vec2, out: number): readonly Mark[] {
  const [thick, radius] = [panel * SCALE, (tube.outside * SCALE) / 2];
  const middle: Vec2 = [x, top + thick + radius];
  const under = top + thick + 2 * radius;
  const slab = cornersOf({ x: x - FLOOR.half, y: under + room * SCALE, width: 2 * FLOOR.half, height: FLOOR.thick });
  const half = (bit * SCALE) / 2;
  const shaft: readonly Vec2[] = [[x - half, top - DRILL.over], [x + half, top - DRILL.over], [x + half, under + out - half], [x, under + out], [x - half, under + out - half]];
  const chuck = cornersOf({ x: x - DRILL.chuck.half, y: top - DRILL.over - DRILL.chuck.high, width: 2 * DRILL.chuck.half, height: DRILL.chuck.high });
  const drill = cornersOf({ x: x - DRILL.half, y: top - DRILL.over - DRILL.chuck.high - DRILL.high, width: 2 * DRILL.half, height: DRILL.high });
  const tip = top - DRILL.over - DRILL.chuck.high - DRILL.high - 0.8;
  return [
    ...cutFace(cornersOf({ x: x - HALF, y: top, width: 2 * HALF, height: thick })),
    circle(middle, radius, pens.cut, 'panel'), circle(middle, (tube.inside * SCALE) / 2, pens.cut, 'white'),
    area('white', slab), ...hatching(slab, FLOOR.pitch).map(([from, to]) => line(pens.edge, from, to)), line(pens.cut, slab[0] ?? middle, slab[1] ?? middle),
    area('fresh', shaft), outline(pens.cut, shaft), area('fresh', chuck), outline(pens.cut, chuck), area('fresh', drill), outline(pens.cut, drill),
    line(pens.motion, [x, tip - ARROW + 1], [x, tip - 3.6]), arrowhead([x, tip], [0, 1], 4),
  ];
}
