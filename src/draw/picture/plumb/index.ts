import { tell, type Plumb, type PlumbSide, type Told } from '../../../scene/index.ts';
import type { Vec2 } from '../../../model/index.ts';
import type { Box, DrawnPicture } from '../../types.ts';
import { FRAMES } from '../../flat/cable/frames.ts';
import { eye } from '../../flat/eye.ts';
import { capHeights } from '../../kit/lettering.ts';
import { arrowhead, figure, line, ringedNumeral, toldWidth, type Mark } from '../../kit/marks.ts';
import { band, pens } from '../../kit/pens.ts';
import { crossed, ticked } from '../../kit/right-wrong.ts';
import { toPicture, type Paper } from '../../kit/svg.ts';
import { paperGround } from '../compose.ts';
import type { LineDrawer } from '../line-drawer.ts';
import { besideLeg } from './beside-leg.ts';
import { aspectFrom, hasCords, heightOn, leaning, type Shown } from './leaning.ts';
import { whichLeg } from './which-leg.ts';

/** Heights of the pictures, mm of paper: the leg looked at, what is done where it leans, where it leans the other way, and looked at again. */
const HIGH = { first: 92, cure: 66, other: 50, again: 84 } as const;
/** White between what stands side by side, mm of paper. */
const WHITE = 3;
/** The whole item's share of the width. */
const WHOLE = 0.33;

/**
 * How work that stands is looked at with a plumb line: which leg, and on which sides; how far the string is from it above and
 * below. Then what is done where it leans: it is pushed, and held by its cords. When the cords are tied it is looked at again.
 */
export function composePlumb(plumb: Plumb, { width }: Pick<Paper, 'width'>, draw: LineDrawer): readonly DrawnPicture[] {
  if (plumb.is === 'again') return [drawn(width, HIGH.again, againMarks(plumb, width, draw))];
  return [drawn(width, HIGH.first, firstMarks(plumb, width, draw)), ...cureRows(plumb, width, draw)];
}

const drawn = (width: number, height: number, marks: readonly Mark[]): DrawnPicture => toPicture({ width, height }, [paperGround({ width, height }), ...marks]);

/** Which leg, and from each side how it is measured. */
function firstMarks(plumb: Plumb, width: number, draw: LineDrawer): readonly Mark[] {
  const first = width * WHOLE;
  return [...whichLeg(plumb, { x: 0, y: 0, width: first, height: HIGH.first }, draw), ...eachSide(plumb, { x: first + WHITE, y: 0, width: width - first - WHITE, height: HIGH.first }, draw)];
}

function eachSide({ sides, ...plumb }: Plumb, { x, y, width, height }: Box, draw: LineDrawer): readonly Mark[] {
  const each = (width - WHITE * (sides.length - 1)) / sides.length;
  return sides.flatMap((side, index) => {
    const from = x + index * (each + WHITE);
    return [
      ...besideLeg({ ...plumb, sides }, side, index + 1, { x: from, y, width: each, height }, draw),
      ...(index === 0 ? [] : [line(pens.edge, [from - WHITE / 2, y], [from - WHITE / 2, y + height])]),
    ];
  });
}

/** The middle of a sign or number under a frame, from its lower edge; a frame's room over that, mm of paper. */
const SIGN = { up: 5.5, room: 12 } as const;
/** The number of a frame is so far from its lower left corner, mm of paper. */
const NUMBER = 4.6;
/** Between frames there is an arrow onwards, mm of paper. */
const ONWARDS = 6;

const UPRIGHT: Shown = { leans: 'upright', hand: null, cords: false };
const LEANS: Shown = { ...UPRIGHT, leans: 'away' };
const TOWARDS: Shown = { ...UPRIGHT, leans: 'towards' };

/** One frame of a series. */
type Frame = (box: Box) => readonly Mark[];

const EMPTY: Frame = () => [];
/** Frames of work that is wider than this for its height stand two in a row. */
const WIDE = 1.5;

/** Frames that follow one another. */
type Series = readonly Frame[];

/** By the side that is looked at: it leans; it is pushed upright, and held so while the cords are tied. A picture for each row of frames. */
function cureRows(plumb: Plumb, width: number, draw: LineDrawer): readonly DrawnPicture[] {
  const { held, sides } = plumb;
  // Numbered on from the sides that are looked at.
  const first = sides.length + 1;
  const main = sideShown(plumb, draw);
  const seen = (side: PlumbSide, shown: Shown, under: (middle: Vec2) => readonly Mark[], number: number): Frame => (box) =>
    [numberOf(number, box), ...leaning(plumb, side, shown, { ...box, height: box.height - SIGN.room }, draw), ...under([box.x + box.width / 2, box.y + box.height - SIGN.up])];
  /** It leans, and is pushed from the side to which it leans. */
  const cured = (side: PlumbSide, leans: Shown): Series => [seen(side, leans, (middle) => crossed(middle), sides.indexOf(side) + 1), seen(side, { ...leans, hand: 'pushes' }, () => [], first)];
  const tied = seen(main, { ...UPRIGHT, hand: 'holds', cords: true }, (middle) => tiedAt(held.steps, middle), first + 1);
  const row = (side: PlumbSide, series: Series, high: number): DrawnPicture => {
    const height = SIGN.room + Math.min(high - SIGN.room, heightOn(unitOf(series, width), aspectFrom(plumb, side, draw)));
    return drawn(width, height, inRow(series, width, height));
  };
  const isWide = (side: PlumbSide): boolean => aspectFrom(plumb, side, draw) > WIDE;
  const goesOn = (side: PlumbSide, leans: Shown): Series => [...cured(side, leans), ...(isWide(side) ? [] : [ringed(first + 1)])];
  return [
    row(main, [...cured(main, LEANS), ...(isWide(main) ? [] : [tied])], HIGH.cure), row(main, goesOn(main, TOWARDS), HIGH.other),
    ...(isWide(main) ? [row(main, [tied, EMPTY], HIGH.cure)] : []),
    ...sides.filter((side) => side !== main).flatMap((side) => [LEANS, TOWARDS].map((leans) => row(side, goesOn(side, leans), HIGH.other))),
  ];
}

/** What was shown with a number is done here too. */
const ringed = (number: number): Frame => ({ x, y, height }) => [ringedNumeral(tell.number(number), [x + 2 * NUMBER, y + (height - SIGN.room) / 2], capHeights.order)];

const numberOf = (number: number, { x, y, height }: Box): Mark => ringedNumeral(tell.number(number), [x + NUMBER, y + height - SIGN.up], capHeights.order);

/** The side that its cords cross, or else the narrower one. */
function sideShown(plumb: Plumb, draw: LineDrawer): PlumbSide {
  const crossedOnes = plumb.sides.filter((side) => hasCords(plumb, side));
  const [narrowest] = (crossedOnes.length > 0 ? crossedOnes : plumb.sides).map((side) => ({ side, aspect: aspectFrom(plumb, side, draw) })).toSorted((a, b) => a.aspect - b.aspect);
  return narrowest?.side ?? plumb.sides[0];
}

/** Width of each frame of a row. */
const unitOf = (frames: Series, width: number): number => (width - ONWARDS * (frames.length - 1)) / frames.length;

/** Frames side by side with arrows between them. */
function inRow(frames: Series, width: number, height: number): readonly Mark[] {
  const unit = unitOf(frames, width);
  return frames.flatMap((frame, place): readonly Mark[] => {
    const x = (unit + ONWARDS) * place;
    return [...(place === 0 || frame === EMPTY ? [] : onwards([x - ONWARDS / 2, (height - SIGN.room) / 2])), ...frame({ x, y: 0, width: unit, height })];
  });
}

const onwards = ([x, y]: Vec2): readonly Mark[] => [line(band(0.9), [x - 2.6, y], [x, y]), arrowhead([x + 2.8, y], [1, 0], 3.4, 3)];

/** An eye and the figures beside it, mm of paper. */
const EYES = { small: { wide: 9, cap: capHeights.step }, large: { wide: 11, cap: capHeights.count } } as const;

/** Ticked, for steps that come: from the middle of a frame's foot, beside its number. */
const tiedAt = (steps: readonly number[], [x, y]: Vec2): readonly Mark[] => [...ticked([x - 10, y]), ...lookAt(steps, [x - 0.5, y], EYES.small)];

/** Look at a step, or from one to another. */
function lookAt(steps: readonly number[], [x, y]: Vec2, { wide, cap }: { readonly wide: number; readonly cap: number } = EYES.large): readonly Mark[] {
  const [from, to] = [Math.min(...steps), Math.max(...steps)].map((step) => tell.number(step)) as [Told, Told];
  const left = x + wide / 2 + 1.6;
  const first = toldWidth(from, cap, 700);
  const dash = left + first + 1.2;
  const rest: readonly Mark[] = steps.length < 2 ? [] : [line(pens.motion, [dash, y], [dash + 2.6, y]), figure(to, [dash + 3.8 + toldWidth(to, cap, 700) / 2, y], cap, 700)];
  return [...eye([x, y], wide), figure(from, [left + first / 2, y], cap, 700), ...rest];
}

/** Over the leg's sides there is the step where it was shown, mm of paper; beside them the work that leans. */
const AGAIN = { shown: 14, leans: 44 } as const;

/** Where it was shown; the leg from its sides again; and where it leans, one way or the other, the cord that has grown longer is drawn tighter: at which number. */
function againMarks(plumb: Plumb, width: number, draw: LineDrawer): readonly Mark[] {
  const { held, step } = plumb;
  const left = width - AGAIN.leans;
  const foot = HIGH.again - SIGN.up;
  const half = (HIGH.again - SIGN.room - WHITE) / 2;
  return [
    ...lookAt([step], [7, AGAIN.shown / 2]),
    ...eachSide(plumb, { x: 0, y: AGAIN.shown, width: left - WHITE, height: HIGH.again - AGAIN.shown }, draw),
    ...[LEANS, TOWARDS].flatMap((leans, index) => leaning(plumb, sideShown(plumb, draw), { ...leans, cords: true }, { x: left, y: index * (half + WHITE), width: AGAIN.leans, height: half }, draw)),
    ...crossed([left + 3.5, foot]), ...onwards([left + 11, foot]), ...lookAt(held.steps.slice(0, 1), [left + 20, foot], EYES.small), ringedNumeral(tell.number(FRAMES.drawn), [left + AGAIN.leans - 5, foot], capHeights.order, pens.edge),
  ];
}
