import type { Vec2 } from '../../model/index.ts';
import type { DrawnPicture } from '../types.ts';
import { runningDimension } from '../kit/dimension.ts';
import { plainShare } from './fractions.ts';
import { capHeights } from '../kit/lettering.ts';
import type { Mark } from '../kit/marks.ts';
import { area, arrowhead, figure, fractionSize, line, outline, toldWidth, upwards } from '../kit/marks.ts';
import { earlier, pens } from '../kit/pens.ts';
import { stepPaper } from './step-paper.ts';
import type { Paper } from '../kit/svg.ts';
import { toPicture } from '../kit/svg.ts';
import { fittingScale } from '../kit/fit.ts';
import { tell } from '../../scene/index.ts';
import { sawHeight, sawMarks, type SawnPieces } from './saw-detail.ts';
import { hatching } from '../kit/hatching.ts';

/** One way of cutting a stock tube and how many tubes are cut so; lengths in mm, from one end. */
export interface CutPattern {
  readonly count: number;
  readonly pieces: readonly { readonly kind: string; readonly length: number; /** Written on the piece. */ readonly letter?: string }[];
}

export interface TubeCuts {
  readonly stock: number;
  readonly kerf: number;
  readonly patterns: readonly CutPattern[];
  /** The saw's blade enlarged on its mark, and what these pieces then measure. */
  readonly saw?: SawnPieces;
}

const cap = capHeights.step;
const margin = 2;
const barHeight = 8;
const fractionRoom = fractionSize(1, 2, cap)[1] + 6;
const dimensionGap = 4;
/** As wide a length as a tube has. */
const longest = tell.mm(1000.5);
/** Bar, fractions over it, dimension line, jogs and turned figures under it. */
const figureRoom = dimensionGap + 5.5 + toldWidth(longest, cap, 400);
const rowHeight = fractionRoom + barHeight + figureRoom + 3;
const countRoom = 24;
const hatchPitch = 2.2;
/** Between a piece's letter and its length. */
const letterGap = 2;
/** A cut closer to the tube's end than a pencil line is wide is not made: rounded thirds may end a hair past it, mm. */
const pencilLine = 0.25;

/** Paper as high as the cutting patterns need. */
export function cutBarsPaper(cuts: TubeCuts): Paper {
  return { width: stepPaper.width, height: 2 * margin + cuts.patterns.length * rowHeight + (cuts.saw === undefined ? 0 : sawHeight(cuts.saw)) };
}

/**
 * Stock tubes to cut: a bar for each cutting pattern with its cut marks, the places to saw counted from the left
 * end, lengths in the pieces, plain fractions over them, what is left over hatched, and ×count at the side.
 * Throws a RangeError when pieces and kerfs are longer than the stock, or when the paper is too small.
 */
export function cutBarsPicture(cuts: TubeCuts, paper: Paper = cutBarsPaper(cuts)): DrawnPicture {
  return toPicture(paper, cutBarsMarks(cuts, paper));
}

/** The marks of the picture, for the tests. */
export function cutBarsMarks(cuts: TubeCuts, paper: Paper): readonly Mark[] {
  if (cutBarsPaper(cuts).height > paper.height + 1e-9) {
    throw new RangeError(`${cuts.patterns.length} cutting patterns need ${cutBarsPaper(cuts).height.toFixed(1)} mm of paper, found ${paper.height} mm.`);
  }
  const scale = fittingScale([cuts.stock, 0], [paper.width - 2 * margin - countRoom - 4, paper.height]);
  const bars = cuts.patterns.flatMap((pattern, index) => {
    const top = margin + index * rowHeight + fractionRoom;
    return barMarks(cuts, pattern, [margin + 4, top], scale);
  });
  return cuts.saw === undefined ? bars : [...bars, ...sawMarks(cuts.saw, [margin + 4, margin + cuts.patterns.length * rowHeight], paper.width - 2 * margin - 4)];
}

/** Into how many parts a tube is divided where a plain share of it is told, the fewest first. */
export function partsTold({ patterns, stock, kerf }: TubeCuts): readonly number[] {
  const shares = patterns.flatMap(({ pieces }) => pieces.flatMap(({ length }) => plainShare(length, stock, kerf)?.denominator ?? []));
  return [...new Set(shares.filter((parts) => parts > 1))].sort((one, other) => one - other);
}

function barMarks(cuts: TubeCuts, pattern: CutPattern, [left, top]: Vec2, scale: number): readonly Mark[] {
  const ends = pieceEnds(cuts, pattern);
  const x = (at: number) => left + at * scale;
  const right = x(cuts.stock);
  const bottom = top + barHeight;
  const last = ends.at(-1) ?? 0;
  const box = (from: number, to: number): readonly Vec2[] => [[x(from), top], [x(to), top], [x(to), bottom], [x(from), bottom]];
  const sawn = ends.filter((end) => end < cuts.stock - pencilLine);
  return [
    { mark: 'view', name: 'bar', scale, marks: [
      ...(last > 0 ? [area('panel', box(0, last))] : []),
      ...hatching(box(last, cuts.stock), hatchPitch).map(([from, to]) => line(earlier(pens.edge), from, to)),
      outline(pens.cut, box(0, cuts.stock)),
      ...sawn.map((end) => line(pens.cut, [x(end), top - 2], [x(end), bottom + 2])),
    ] },
    ...pattern.pieces.flatMap(({ length, letter }, index) => pieceMarks(cuts, { length, letter }, x((ends[index] ?? length) - length / 2), top, length * scale)),
    ...runningDimension({
      axis: 'x', datum: left, line: bottom + dimensionGap, feature: bottom, cap, bounds: [0.5, right + countRoom],
      stations: ends.map((end) => ({ at: x(end), told: tell.mm(end) })),
    }),
    figure(tell.times(pattern.count), [right + countRoom / 2 + 2, top + barHeight / 2], capHeights.count, 700),
  ];
}

/** Where each piece ends, a kerf lost after every piece before it. */
function pieceEnds({ stock, kerf }: TubeCuts, { pieces }: CutPattern): readonly number[] {
  const ends = pieces.map((_, index) => pieces.slice(0, index + 1).reduce((sum, { length }) => sum + length, 0) + index * kerf);
  const last = ends.at(-1) ?? 0;
  if (last > stock + pencilLine) {
    throw new RangeError(`Pieces and kerfs of a cutting pattern are ${last.toFixed(1)} mm long, the stock tube only ${stock} mm.`);
  }
  return ends.map((end) => Math.min(end, stock));
}

/** The letter and the length in the piece, the length upright over a piece too short for both; a plain fraction over the piece. */
function pieceMarks({ stock, kerf }: TubeCuts, { length, letter }: { readonly length: number; readonly letter: string | undefined }, middle: number, top: number, room: number): readonly Mark[] {
  const told = tell.mm(length);
  const width = toldWidth(told, cap, 400);
  const sign = letter === undefined ? 0 : toldWidth(tell.letters(letter), cap, 700) + letterGap;
  const turned = width + sign + 1.5 > room;
  const share = plainShare(length, stock, kerf);
  const size = share && share.denominator > 1 ? fractionSize(share.numerator, share.denominator, cap) : null;
  const level = top + barHeight / 2;
  return [
    ...(letter === undefined ? [] : [figure(tell.letters(letter), [turned ? middle : middle - width / 2 - letterGap / 2, level], cap, 700)]),
    turned
      ? figure(told, [middle, top - 3 - width / 2], cap, 400, upwards)
      : figure(told, [middle + sign / 2, level], cap),
    ...(share && size && !turned ? [
      ...bracket(middle - room / 2, middle + room / 2, top - 2.4),
      { mark: 'fraction' as const, numerator: share.numerator, denominator: share.denominator, centre: [middle, top - 4.2 - size[1] / 2] as const, cap, pen: pens.edge },
    ] : []),
  ];
}

/** Over a piece from end to end: the share is of the whole piece, no mark in it. */
const bracket = (from: number, to: number, y: number): readonly Mark[] => [line(pens.dimension, [from + 0.6, y], [to - 0.6, y]), arrowhead([from + 0.6, y], [-1, 0], 2), arrowhead([to - 0.6, y], [1, 0], 2)];
