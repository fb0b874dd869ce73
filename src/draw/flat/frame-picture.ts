import type { FlatPattern, Vec2 } from '../../model/index.ts';
import type { Box, DrawnPicture } from '../types.ts';
import { linearDimension } from '../kit/dimension.ts';
import { cornersOf } from '../kit/geometry.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, circle, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import { tell } from '../../scene/index.ts';
import type { Hardware } from './section-series.ts';

const height = 66;
const cap = capHeights.step;
/** Room for the dimension over the drawings, mm of paper. */
const over = 12;
/** Panel shown on the inner side of the inside line and beyond the tube, mm. */
const inwards = 14;
const outwards = 12;
const between = 12;

/** Where the tubes of a frame lie on the panel: round the inside line and how far from it, in a section and from above with the whole line. */
export function framePicture(pattern: FlatPattern, tube: Hardware['tube'], width: number): DrawnPicture {
  const paper: Paper = { width, height };
  return toPicture(paper, frameMarks(pattern, tube, paper));
}

/** The marks of the picture, for the tests. */
export function frameMarks(pattern: FlatPattern, tube: Hardware['tube'], paper: Paper): readonly Mark[] {
  const away = pattern.axes[0] - pattern.inside[0];
  const reach = inwards + away + tube.outside / 2 + outwards;
  const wide = (paper.width - between) / 2;
  const scale = Math.min((wide - 4) / reach, (paper.height - over - 2) / (tube.outside + pattern.thickness));
  const shown: Shown = { pattern, tube, away, scale };
  const [first, second] = [0, wide + between].map((x): Box => ({ x: x + (wide - reach * scale) / 2, y: 1, width: reach * scale, height: paper.height - 2 }));
  return first === undefined || second === undefined ? [] : [...section(shown, first), ...fromAbove(shown, second)];
}

interface Shown {
  readonly pattern: FlatPattern;
  readonly tube: Hardware['tube'];
  /** From the inside line to the tube's axis, mm. */
  readonly away: number;
  readonly scale: number;
}

/** The left side cut across, as the view from above shows it: beyond the tube the flap, on this side of it the inside line. */
function section({ pattern, tube, away, scale }: Shown, box: Box): readonly Mark[] {
  const [at, radius, high] = [box.x + box.width - inwards * scale, (tube.outside / 2) * scale, pattern.thickness * scale];
  const face = box.y + over + 2 * radius;
  const centre: Vec2 = [at - away * scale, face - radius];
  const gap = away - tube.outside / 2;
  const plate = cornersOf({ x: box.x, y: face, width: box.width, height: high });
  return [
    area('panel', plate), outline(pens.cut, plate),
    ...[face + pattern.skin * scale, face + high - pattern.skin * scale].map((y) => line(pens.edge, [box.x, y], [box.x + box.width, y])),
    circle(centre, radius, pens.cut, 'ink'), circle(centre, (tube.inside / 2) * scale, pens.cut, 'white'),
    line(pens.newInside, [at, face - radius], [at, face]),
    ...linearDimension({ axis: 'x', told: tell.mm(gap), ends: [at, at - gap * scale], line: box.y + over - 4, feature: [face - radius, centre[1]], cap }),
  ];
}

/** Least distance between tubes and inside line on paper, so that it is seen that they lie round it, mm. */
const apart = 1.9;

/** The middle of the panel with the whole inside line in the ring of the tubes, their distance drawn larger than to scale. */
function fromAbove({ pattern, tube, away }: Shown, box: Box): readonly Mark[] {
  const room = insetBox({ ...box, y: box.y + over, height: box.height - over }, 1);
  const [long, short] = pattern.inside;
  const wide = away + tube.outside / 2 + outwards;
  const scale = Math.min(room.width / (2 * (long + wide)), room.height / (2 * (short + wide)));
  const [x, y] = [room.x + room.width / 2, room.y + room.height / 2];
  const ring = (by: number): readonly Vec2[] => cornersOf({ x: x - long * scale - by, y: y - short * scale - by, width: 2 * (long * scale + by), height: 2 * (short * scale + by) });
  const gap = Math.max(apart, (away - tube.outside / 2) * scale);
  const thick = tube.outside * scale;
  const [left, top] = [x - long * scale, y - short * scale];
  return [
    area('panel', ring(gap + thick + outwards * scale)), outline(pens.ring, ring(gap + thick + outwards * scale)),
    area('fresh', ring(gap + thick)), outline(pens.cut, ring(gap + thick)),
    area('panel', ring(gap)), outline(pens.cut, ring(gap)),
    outline(pens.newInside, ring(0)),
    ...linearDimension({ axis: 'x', told: tell.mm(away - tube.outside / 2), ends: [left, left - gap], line: box.y + over - 4, feature: top - gap, cap }),
  ];
}

const insetBox = ({ x, y, width, height }: Box, by: number): Box => ({ x: x + by, y: y + by, width: width - 2 * by, height: height - 2 * by });
