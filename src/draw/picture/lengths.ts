import type { Vec2 } from '../../model/index.ts';
import type { Mark } from '../../scene/index.ts';
import { apart, minus, plus, unit, type Segment } from '../kit/geometry.ts';
import { onPaper, type Fit } from '../kit/fit.ts';
import type { Place } from './placement.ts';
import { project, type Plane } from './plane.ts';
import { capHeights, groundBox, textRoom } from '../kit/lettering.ts';
import { arrowhead, circle, figureOnGround, line, upwards, type Mark as Drawn } from '../kit/marks.ts';
import { haloOf, pens } from '../kit/pens.ts';
import type { Told } from '../../scene/index.ts';
import { toldText } from '../kit/told-text.ts';
import { leaderDot, lengthLine } from './sizes.ts';

const cap = capHeights.scene;

export type LengthMark = Extract<Mark, { mark: 'length' }>;

/** How much further off, and where along the line the figure may stand; the first of each is the wish. */
const moves = [1, 1.3, 1.7, 2.2, 3, 4];
const spots = [0.5, 0.4, 0.6, 0.3, 0.7];

/** The two measured places and the way to the dimension line, all on paper. */
interface Span {
  readonly from: Vec2;
  readonly to: Vec2;
  readonly away: Vec2;
}

/**
 * Places for a dimension line with its figure, after ISO 129-1 (M): the figure stands above the line,
 * middle on it, level, or upright beside an upright line; where the span is too short for it, it
 * stands over the line's extension. The cheapest first.
 */
export function lengthPlaces(mark: LengthMark, plane: Plane, fit: Fit): Place[] {
  const [from, to] = [onPaper(fit, project(plane, mark.from)), onPaper(fit, project(plane, mark.to))];
  const long = apart(from, to);
  const { told } = mark;
  const wide = textRoom(toldText(told), cap).width;
  const beyond = (wide / 2 + 0.5 + (long < lengthLine.headsOutside ? lengthLine.outsideTail : 0)) / Math.max(long, 1);
  const places = wide <= long ? spots : [1 + beyond, -beyond, 0.5];
  return waysOff(mark, plane, fit, minus(to, from)).flatMap((away) =>
    moves.flatMap((move) => places.map((spot, i) => lengthPlace(mark, { from, to, away }, move, spot, 8 * (move - 1) + 4 * i))),
  ).sort((a, b) => a.cost - b.cost);
}

/** The way to the dimension line at its least distance; where the view shows it along the span or not at all, square to the span to both sides. */
function waysOff(mark: LengthMark, plane: Plane, fit: Fit, along: Vec2): Vec2[] {
  const [x, y] = project(plane, mark.away);
  const away: Vec2 = [x * fit.scale, -y * fit.scale];
  const length = Math.hypot(...away);
  const [way, span] = [unit(away), unit(along) ?? [1, 0]];
  const reach = Math.max(length, lengthLine.leastAway);
  if (way && Math.abs(way[0] * span[1] - way[1] * span[0]) >= lengthLine.leastSine) return [plus([0, 0], way, reach)];
  return [[-span[1] * reach, span[0] * reach], [span[1] * reach, -span[0] * reach]];
}

function lengthPlace({ told, dots }: LengthMark, span: Span, move: number, spot: number, cost: number): Place {
  const [from, to] = [plus(span.from, span.away, move), plus(span.to, span.away, move)];
  const reading = readingDirection(minus(to, from));
  const above: Vec2 = [reading[1], -reading[0]];
  const onLine = plus(from, minus(to, from), spot);
  const turn = Math.abs(reading[0]) < UPRIGHT ? upwards : 0;
  const centre = plus(onLine, above, lengthLine.figureGap + halfAcross(told, above, turn));
  const lines = [dimensionLine(from, to, spot, told), extensionLine(span.from, from), extensionLine(span.to, to)];
  return {
    box: groundBox(toldText(told), centre, cap, turn),
    lines,
    cost,
    draw: () => [...drawLines(lines), ...(dots === true ? [span.from, span.to].map(dotAt) : []), ...heads(from, to), figureOnGround(told, centre, cap, turn)],
  };
}

/** A line that leans less than this from the upright, as a sine, has its figure upright beside it. */
const UPRIGHT = 0.05;

/** Half of how far a figure reaches across its line: it stands level, or upright, so that it is read as it decides. */
function halfAcross(told: Told, across: Vec2, turn: number): number {
  const { width } = textRoom(toldText(told), cap);
  const [wide, high] = turn === 0 ? [width, cap] : [cap, width];
  return (wide * Math.abs(across[0]) + high * Math.abs(across[1])) / 2;
}

/**
 * Along the line, so turned that the figure reads from below or from the right: to the right on paper,
 * or upwards where the line is upright. y counts downwards.
 */
export function readingDirection(along: Vec2): Vec2 {
  const way = unit(along) ?? [1, 0];
  if (Math.abs(way[0]) < 1e-3) return [0, -1];
  return way[0] > 0 ? way : [-way[0], -way[1]];
}

/** The line under the figure: from head to head, or past them when the heads or the figure stand outside. */
function dimensionLine(from: Vec2, to: Vec2, spot: number, told: Told): Segment {
  const long = apart(from, to);
  const way = unit(minus(to, from)) ?? [1, 0];
  const tail = long < lengthLine.headsOutside ? lengthLine.outsideTail : 0;
  const half = textRoom(toldText(told), cap).width / 2;
  const start = Math.min(-tail, spot < 0 ? spot * long - half : 0);
  const end = Math.max(long + tail, spot > 1 ? spot * long + half : 0);
  return { from: plus(from, way, start), to: plus(from, way, end) };
}

function extensionLine(place: Vec2, end: Vec2): Segment {
  const way = unit(minus(end, place)) ?? [0, 1];
  return { from: plus(place, way, lengthLine.gap), to: plus(end, way, lengthLine.past) };
}

const drawLines = (lines: readonly Segment[]): readonly Drawn[] =>
  [haloOf(pens.leader.width), pens.leader].flatMap((pen) => lines.map(({ from, to }) => line(pen, from, to)));

/** A measured place that lies on no edge. */
const dotAt = (place: Vec2): Drawn => circle(place, leaderDot + 0.1, null, 'ink');

/** Filled narrow arrowheads with their tips on the extension lines; turned round when the span is short. */
function heads(from: Vec2, to: Vec2): readonly Drawn[] {
  const way = unit(minus(to, from));
  if (!way) return [];
  const head = (tip: Vec2, side: number): Drawn => arrowhead(tip, plus([0, 0], way, side), lengthLine.headLength, lengthLine.headWidth);
  const outwards = apart(from, to) < lengthLine.headsOutside ? 1 : -1;
  return [head(from, outwards), head(to, -outwards)];
}
