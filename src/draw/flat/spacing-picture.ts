import type { Vec2 } from '../../model/index.ts';
import type { DrawnPicture } from '../types.ts';
import { runningDimension } from '../kit/dimension.ts';
import { capHeights } from '../kit/lettering.ts';
import type { Mark } from '../kit/marks.ts';
import { area, arrowhead, figure, line, outline } from '../kit/marks.ts';
import { earlier, pens } from '../kit/pens.ts';
import { stepPaper } from './step-paper.ts';
import type { Paper } from '../kit/svg.ts';
import { toPicture } from '../kit/svg.ts';
import type { Fit } from '../kit/fit.ts';
import { allOnPaper, fittingScale } from '../kit/fit.ts';
import { FOOT_RINGS, tell } from '../../scene/index.ts';
import { boxWindow } from '../kit/clip.ts';
import { clipMarks } from '../kit/clip-marks.ts';
import { hatching } from '../kit/hatching.ts';
import { cornersOf } from '../kit/geometry.ts';

/** A post and the marks on it, in mm from the floor end. */
export interface PostMarks {
  readonly length: number;
  readonly diameter: number;
  readonly marks: readonly number[];
  /** Which edge of the joint's sleeve stands on a mark. */
  readonly edge: 'upper' | 'lower';
  readonly sleeve: { readonly length: number; readonly diameter: number };
  /** How many posts are marked so, and what is written on them. */
  readonly count: number;
  readonly letter?: string | null;
}

const cap = capHeights.step;
const margin = 3;
const countRoom = 16;
const dimensionGap = 6;
const floorWidth = 3;

/**
 * A post lying with its floor end on the left: marks counted from that end, the sleeves that will stand on them,
 * the foot enlarged with the rings that tell it, the post as it will stand on that foot, and one mark enlarged to show which edge of the sleeve it is for. Throws a RangeError on a mark off the post.
 */
export function spacingPicture(post: PostMarks, paper: Paper = { width: stepPaper.width, height: 90 }): DrawnPicture {
  return toPicture(paper, spacingMarks(post, paper));
}

/** The marks of the picture, for the tests. */
export function spacingMarks(post: PostMarks, paper: Paper): readonly Mark[] {
  const off = post.marks.find((at) => at < 0 || at > post.length);
  if (off !== undefined) throw new RangeError(`A mark stands ${off} mm from the floor end of a post that is ${post.length} mm long.`);
  const left = margin + floorWidth + 2;
  const scale = fittingScale([post.length, 0], [paper.width - left - margin - countRoom, paper.height]);
  const detail = fittingScale([detailLength(post), post.sleeve.diameter * 1.3], [paper.width * 0.45, paper.height * 0.34], true);
  const axis = paper.height * 0.62;
  const view: Fit = { scale, origin: [left, axis] };
  const bottom = axis + (post.sleeve.diameter / 2) * scale + 1;
  const x = (at: number) => left + at * scale;
  return [
    { mark: 'view', name: 'post', scale, marks: [...floor(left, axis), ...postMarks(post, view)] },
    ...runningDimension({
      axis: 'x', datum: left, line: bottom + dimensionGap, feature: bottom, cap, bounds: [0.5, paper.width - 0.5],
      stations: [...post.marks].sort((a, b) => a - b).map((at) => ({ at: x(at), told: tell.mm(at) })),
    }),
    ...named(post, [paper.width - margin - countRoom / 2 + 1, axis]),
    ...foot(post, view, paper),
    ...standing(paper),
    ...detailMarks(post, view, detail, paper),
  ];
}

/** What is written on the posts, over how many there are. */
const named = ({ letter = null, count }: PostMarks, [x, y]: Vec2): readonly Mark[] =>
  (letter === null ? [figure(tell.times(count), [x, y], capHeights.count, 700)]
    : [figure(tell.letters(letter), [x, y - capHeights.count], capHeights.count, 700), figure(tell.times(count), [x, y + capHeights.count], capHeights.count, 700)]);

/** The floor as a thick line with hatching behind it. */
function floor(x: number, axis: number, half = 6): readonly Mark[] {
  const ring: readonly Vec2[] = [[x - floorWidth, axis - half], [x, axis - half], [x, axis + half], [x - floorWidth, axis + half]];
  return [...hatching(ring, 1.8).map(([from, to]) => line(pens.edge, from, to)), line(pens.motion, [x, axis - half], [x, axis + half])];
}

function postMarks(post: PostMarks, view: Fit): readonly Mark[] {
  return [...tube(post, view, 0, post.length), ...post.marks.flatMap((at) => [...sleeve(post, view, at, false), ...markLine(post, view, at)]), ...footRings(post, view)];
}

function tube({ diameter }: PostMarks, view: Fit, from: number, to: number): readonly Mark[] {
  const ring = allOnPaper(view, [[from, -diameter / 2], [to, -diameter / 2], [to, diameter / 2], [from, diameter / 2]]);
  return [area('panel', ring), outline(pens.edge, ring)];
}

/** The sleeve that will stand on a mark: thin and grey, it is not there yet. */
function sleeve({ edge, sleeve: { length, diameter } }: PostMarks, view: Fit, at: number, tinted: boolean): readonly Mark[] {
  const [from, to] = edge === 'lower' ? [at, at + length] : [at - length, at];
  const ring = allOnPaper(view, [[from, -diameter / 2], [to, -diameter / 2], [to, diameter / 2], [from, diameter / 2]]);
  return [...(tinted ? [area('core', ring)] : []), outline(tinted ? pens.edge : earlier(pens.edge), ring)];
}

/** A thick line round the post, a little longer than its diameter so that it is seen. */
function markLine({ diameter }: PostMarks, view: Fit, at: number): readonly Mark[] {
  const [from, to] = allOnPaper(view, [[at, -diameter / 2], [at, diameter / 2]]);
  if (!from || !to) return [];
  return [line(pens.cut, [from[0], from[1] + 1], [to[0], to[1] - 1])];
}

/** Two rings near the foot tell it from the other end. */
const footRings = (post: PostMarks, view: Fit): readonly Mark[] =>
  FOOT_RINGS.flatMap((at) => {
    const [from, to] = allOnPaper(view, [[at, -post.diameter / 2], [at, post.diameter / 2]]);
    return from && to ? [line(pens.cut, from, to)] : [];
  });

/** Tube shown of the enlarged foot, mm, and the room for its figures, mm of paper. */
const footShown = 26;
const footBelow = 9;
/** How far the figures of its rings reach below it, mm of paper. */
const FIGURES = 13.8;

/** The foot enlarged: it stands on the floor, its rings are measured from there. */
function foot(post: PostMarks, whole: Fit, paper: Paper): readonly Mark[] {
  const box = { x: margin, y: margin, width: paper.width * 0.24, height: paper.height * 0.48 };
  const scale = Math.min((box.width - floorWidth - 2) / footShown, (box.height - footBelow - 2) / (post.diameter * 1.1));
  const origin: Vec2 = [box.x + floorWidth + 1, box.y + (post.diameter * 1.1 * scale) / 2 + 1];
  const view: Fit = { scale, origin };
  const bottom = origin[1] + (post.diameter * scale) / 2;
  // The leader goes round the figures.
  const beside = origin[0] + FOOT_RINGS[1] * scale + 5.5;
  return [
    line(pens.ring, [whole.origin[0] + FOOT_RINGS[1] * whole.scale, whole.origin[1] - (post.diameter / 2) * whole.scale - 1], [beside, bottom + FIGURES], [beside, bottom + 1]),
    { mark: 'view', name: 'foot', scale, marks: [...floor(origin[0], origin[1], (post.diameter * scale) / 2 + 2), ...clipMarks(tube(post, view, 0, footShown * 2), boxWindow(box)), ...footRings(post, view)] },
    ...runningDimension({
      axis: 'x', datum: origin[0], line: bottom + 3.5, feature: bottom, cap,
      stations: FOOT_RINGS.map((at) => ({ at: origin[0] + at * scale, told: tell.mm(at) })),
    }),
  ];
}

/** Size of the post as it will stand, mm of paper, and its rings over the floor: a sign, to no scale. */
const STANDING = { wide: 4.4, high: 22, rings: [2, 4] } as const;

/** The post as it will stand: the end with the two rings is down. */
function standing(paper: Paper): readonly Mark[] {
  const [x, low] = [paper.width - margin - countRoom / 2 + 1, margin + STANDING.high];
  const [left, right] = [x - STANDING.wide / 2, x + STANDING.wide / 2];
  const ring: readonly Vec2[] = [[left, margin], [right, margin], [right, low], [left, low]];
  const ground: readonly Vec2[] = [[left - 4, low], [right + 4, low], [right + 4, low + floorWidth], [left - 4, low + floorWidth]];
  return [
    area('panel', ring), outline(pens.edge, ring),
    ...STANDING.rings.map((over) => line(pens.cut, [left - 0.6, low - over], [right + 0.6, low - over])),
    ...hatching(ground, 1.8).map(([from, to]) => line(pens.edge, from, to)), line(pens.motion, [left - 4, low], [right + 4, low]),
  ];
}

const detailLength = ({ sleeve: { length } }: PostMarks): number => length * 1.9;

/** The first mark enlarged in a frame: the sleeve pushed against it, an arrow on the edge that counts. */
function detailMarks(post: PostMarks, whole: Fit, scale: number, paper: Paper): readonly Mark[] {
  const at = post.marks[0];
  if (at === undefined) return [];
  const width = detailLength(post) * scale;
  const height = post.sleeve.diameter * 1.3 * scale;
  const frame = { x: paper.width * 0.3, y: margin + 6, width, height };
  const towards = post.edge === 'lower' ? 1 : -1;
  const middle = at + (towards * post.sleeve.length) / 2;
  const view: Fit = { scale, origin: [frame.x + width / 2 - middle * scale, frame.y + height / 2] };
  const mark = view.origin[0] + at * scale;
  const source: Vec2 = [whole.origin[0] + at * whole.scale, whole.origin[1] - (post.sleeve.diameter / 2) * whole.scale - 1];
  const drawn = [
    ...tube(post, view, middle - post.sleeve.length * 2, middle + post.sleeve.length * 2),
    ...sleeve(post, view, at, true),
  ];
  return [
    line(pens.ring, source, [frame.x + width / 2, frame.y + height]),
    area('white', cornersOf(frame)),
    { mark: 'view', name: 'sleeve-edge', scale, marks: clipMarks(drawn, boxWindow(frame)) },
    ...markLine(post, { ...view, scale }, at),
    outline(pens.ring, cornersOf(frame)),
    line(pens.motion, [mark, frame.y - 6], [mark, frame.y - 2]),
    arrowhead([mark, frame.y + (height - post.diameter * scale) / 2 - 1.2], [0, 1], 4),
    line(pens.motion, [mark, frame.y - 2], [mark, frame.y + (height - post.diameter * scale) / 2 - 4]),
  ];
}
