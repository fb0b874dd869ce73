import type { FlatPattern, Vec2 } from '../../model/index.ts';
import type { Box, DrawnPicture } from '../types.ts';
import { boxWindow } from '../kit/clip.ts';
import { clipMarks } from '../kit/clip-marks.ts';
import { linearDimension } from '../kit/dimension.ts';
import { cornersOf } from '../kit/geometry.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, circle, line, outline, type Mark } from '../kit/marks.ts';
import { earlier, pens } from '../kit/pens.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import { tell } from '../../scene/index.ts';
import { pencil } from './pencil.ts';
import { flapOn } from './panel-lines.ts';
import type { Hardware } from './section-series.ts';

const height = 66;
const cap = capHeights.step;
/** Room for the dimension over the drawings, mm of paper. */
const over = 12;
/** Panel shown on the inner side of the inside line and beyond the tube, mm. */
const inwards = 14;
const outwards = 12;
const between = 12;

/** Where the tubes of a frame lie on the panel: beside the inside line and how far from it, in a section and from above. */
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

/** How far the tube's side is from the inside line. */
function gapOf({ away, tube, scale }: Shown, { x }: Box, y: number, feature: number | Vec2): readonly Mark[] {
  const from = x + inwards * scale;
  const gap = away - tube.outside / 2;
  return linearDimension({ axis: 'x', told: tell.mm(gap), ends: [from + gap * scale, from], line: y, feature, cap });
}

function section(shown: Shown, box: Box): readonly Mark[] {
  const { pattern, tube, away, scale } = shown;
  const [at, radius, high] = [box.x + inwards * scale, (tube.outside / 2) * scale, pattern.thickness * scale];
  const face = box.y + over + 2 * radius;
  const centre: Vec2 = [at + away * scale, face - radius];
  const plate = cornersOf({ x: box.x, y: face, width: box.width, height: high });
  return [
    area('panel', plate), outline(pens.cut, plate),
    ...[face + pattern.skin * scale, face + high - pattern.skin * scale].map((y) => line(pens.edge, [box.x, y], [box.x + box.width, y])),
    circle(centre, radius, pens.cut, 'ink'), circle(centre, (tube.inside / 2) * scale, pens.cut, 'white'),
    line(pens.newInside, [at, face - radius], [at, face]),
    ...pencil([at, face]),
    ...gapOf(shown, box, box.y + over - 4, [centre[1], face - radius]),
  ];
}

function fromAbove(shown: Shown, box: Box): readonly Mark[] {
  const { pattern, tube, away, scale } = shown;
  const at = box.x + inwards * scale;
  const room: Box = { ...box, y: box.y + over, height: box.height - over };
  const [top, bottom] = [room.y, room.y + room.height];
  const upright = (x: number): readonly [Vec2, Vec2] => [[x, top], [x, bottom]];
  const lies = cornersOf({ x: at + (away - tube.outside / 2) * scale, y: top, width: tube.outside * scale, height: room.height });
  return [
    ...clipMarks([
      area('panel', cornersOf(room)),
      ...flapOn(pattern, 'right').creases.map((each) => line(earlier(pens.crease), ...upright(at + each * scale))),
      area('fresh', lies),
      ...[lies[0], lies[1]].flatMap((corner) => (corner === undefined ? [] : [line(pens.cut, ...upright(corner[0]))])),
      line(pens.newInside, ...upright(at)),
    ], boxWindow(room)),
    outline(pens.ring, cornersOf(room)),
    ...gapOf(shown, box, box.y + over - 4, top),
  ];
}
