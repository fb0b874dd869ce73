import type { Vec2 } from '../../model/index.ts';
import type { DrawnPicture } from '../types.ts';
import { linearDimension } from '../kit/dimension.ts';
import { cornersOf } from '../kit/geometry.ts';
import { cutFace } from '../kit/cut-face.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, line, outline, ringedNumeral, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import { tell } from '../../scene/index.ts';
import { pencil } from './pencil.ts';

/** A tube and the socket that takes it, mm. */
export interface SocketFit {
  readonly tube: number;
  /** How far the tube goes in until it meets the bottom. */
  readonly depth: number;
}

const height = 44;
const cap = capHeights.step;
/** Tube shown beyond its mark, and the socket's wall and bottom, mm. */
const beyond = 46;
const wall = 4;
const bottom = 8;
/** Room over the drawing for numerals and the dimension, mm of paper. */
const over = 14;

/** How deep a tube is home: a mark on it as far from its end as the socket is deep; pushed in until the mark meets the mouth. */
export function socketPicture(fit: SocketFit, width: number): DrawnPicture {
  const paper: Paper = { width, height };
  return toPicture(paper, socketMarks(fit, paper));
}

/** The marks of the picture, for the tests. */
export function socketMarks(fit: SocketFit, paper: Paper): readonly Mark[] {
  const half = paper.width / 2;
  const scale = Math.min((half - 20) / (fit.depth + beyond + bottom), (paper.height - over - 2) / (fit.tube + 2 * wall));
  const axis = over + (fit.tube / 2 + wall) * scale;
  const [first, second] = [14 + bottom * scale, half + 14 + bottom * scale];
  const mouth = second + fit.depth * scale;
  return [
    ...[0, half].map((x, index) => ringedNumeral(tell.number(index + 1), [x + 5, 6], capHeights.order, pens.edge)),
    ...tube(fit, [first, axis], scale), ...mark(fit, [first, axis], scale),
    ...linearDimension({ axis: 'x', told: tell.mm(fit.depth), ends: [first, first + fit.depth * scale], line: over - 4, feature: axis - (fit.tube * scale) / 2, cap }),
    ...pencil([first + fit.depth * scale, axis - (fit.tube * scale) / 2]),
    ...socket(fit, [second, axis], scale), ...tube(fit, [second, axis], scale), ...mark(fit, [second, axis], scale),
    line(pens.motion, [mouth + 24, over - 5], [mouth + 6, over - 5]), arrowhead([mouth + 3, over - 5], [-1, 0], 4),
  ];
}

/** A tube from its end to the right, in outline. */
function tube({ tube: wide, depth }: SocketFit, [x, y]: Vec2, scale: number): readonly Mark[] {
  const ring = cornersOf({ x, y: y - (wide * scale) / 2, width: (depth + beyond) * scale, height: wide * scale });
  return [area('white', ring), outline(pens.cut, ring)];
}

/** The pencil mark round it. */
const mark = ({ tube: wide, depth }: SocketFit, [x, y]: Vec2, scale: number): readonly Mark[] =>
  [line(pens.motion, [x + depth * scale, y - (wide * scale) / 2], [x + depth * scale, y + (wide * scale) / 2])];

/** The socket cut lengthwise: both walls, and the bottom that the tube meets. */
function socket({ tube: wide, depth }: SocketFit, [x, y]: Vec2, scale: number): readonly Mark[] {
  const outer = (wide / 2 + wall) * scale;
  return cutFace([[x - bottom * scale, y - outer], [x + depth * scale, y - outer], [x + depth * scale, y + outer], [x - bottom * scale, y + outer]]);
}
