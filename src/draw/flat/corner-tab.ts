import type { Vec2 } from '../../model/index.ts';
import { tell } from '../../scene/index.ts';
import type { Box } from '../types.ts';
import { linearDimension, runningDimension } from '../kit/dimension.ts';
import { cornersOf } from '../kit/geometry.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, circle, figure, line, outline, toldWidth, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';

/** The holes of a tab in a corner of a box: how high each is over the box's floor, mm, from the lowest on, and how many corners are so. */
export interface CornerRow {
  readonly stands: true;
  /** Behind the wall of a box a block is held. */
  readonly isBlockHeld: true;
  readonly at: readonly number[];
  /** Where the tab begins over the floor and ends. */
  readonly tab: Vec2;
  readonly corners: number;
}

const cap = capHeights.step;
/** The wall and its tab as they are drawn, mm of paper: from the corner to the tab's edge and on, from a hole to that edge, the floor, and white over the wall. */
const drawn = { left: 26, tab: 15, wall: 40, edge: 6.5, floor: 3, over: 10, under: 5 } as const;

/** A corner of a box from within: the floor, the wall, the tab that lies on it with its holes, each measured from the floor's inner face, as is the tab's upper edge, and how many corners. */
export function cornerMarks(fromEdge: number, { at, tab: [from, to], corners }: CornerRow, box: Box): readonly Mark[] {
  const floor = box.y + box.height - drawn.under - drawn.floor;
  const top = box.y + drawn.over;
  const corner = box.x + drawn.left;
  const edge = corner + drawn.tab;
  const x = edge - drawn.edge;
  const y = (high: number): number => floor - ((floor - top) * high) / to;
  const [wall, tab] = [cornersOf({ x: corner, y: top, width: drawn.wall, height: floor - top }), cornersOf({ x: corner, y: top, width: drawn.tab, height: y(from) - top })];
  const below: readonly Vec2[] = cornersOf({ x: corner, y: floor, width: drawn.wall, height: drawn.floor });
  const told = tell.times(corners);
  return [
    area('panel', wall), line(pens.edge, [corner, top], [corner + drawn.wall, top]),
    area('fresh', tab), outline(pens.cut, tab), area('core', below), outline(pens.cut, below), line({ ...pens.cut, width: 2 * pens.cut.width }, [corner, top], [corner, floor + drawn.floor]),
    ...at.map((high) => circle([x, y(high)], 1.3, pens.cut, 'white')),
    ...runningDimension({
      axis: 'y', datum: floor, line: corner - 5, feature: corner, cap, bounds: [box.y + 0.5, box.y + box.height - 0.5],
      stations: [...at.map((high) => ({ at: y(high), told: tell.mm(high), feature: x })), { at: top, told: tell.mm(to), feature: corner }],
    }),
    ...linearDimension({ axis: 'x', told: tell.mm(fromEdge), ends: [x, edge], line: top - 4, feature: top, cap }),
    figure(told, [corner + drawn.wall + 4 + toldWidth(told, capHeights.count, 700) / 2, (top + floor) / 2], capHeights.count, 700),
  ];
}
