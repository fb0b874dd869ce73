import type { Vec2 } from '../../model/index.ts';
import { tell } from '../../scene/index.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, figure, line, outline, type Mark } from '../kit/marks.ts';
import { band, pens } from '../kit/pens.ts';
import { crossed, ticked } from '../kit/right-wrong.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import type { DrawnPicture } from '../types.ts';
import { fittingMarks, leverEnd, lying, standing, tubeCut, type AtEnd, type BrakeSet, type Castor } from './fitted-end.ts';
import { handOnto, handPushing } from './hands.ts';
import { onwards } from './trial.ts';

/** How the tube is when its castor's brake is set: it lies, the wheel free of the floor, or it stands on it. */
export type Held = 'lying' | 'standing';

/** Height of the picture, mm of paper, its columns, and how much of the tube is shown, mm of paper. */
const HIGH: Readonly<Record<Held, number>> = { lying: 45, standing: 56 };
const COLUMNS = 3;
const LONG: Readonly<Record<Held, number>> = { lying: 14, standing: 17 };
const TUBE = { half: 5.2, wall: 1.5 } as const;
const PLUG = { long: 10, half: 3.7 } as const;
/** Most that the castor takes beyond the tube's end, and its lever to one side of the axis, mm of paper. */
const ROOM = { on: 30, aside: 25 } as const;
/** The axis of a lying tube, the end of it in its column; the floor under a standing one, its axis in its column, mm of paper. */
const LYING = { axis: 36, end: 17 } as const;
const STANDING = { floor: 53, axis: 18 } as const;
/** An arrow round the wheel: so far off its rim, mm of paper, and from where to where it goes, rad, from the way on past the tube's end to the lever's side. */
const ROUND = { off: 2.6, lying: [-0.7, 0.9], standing: [-2.2, -0.9] } as const;
/** Where it is told how many brakes are set, in the column of that, mm of paper. */
const TOLD: Readonly<Record<Held, Vec2>> = { lying: [30, 7], standing: [46, 40.6] };
const VERDICT = 1.3;

/** Castors with a brake, and how many of them. */
export interface Braked {
  readonly castor: Castor;
  readonly count: number;
}

/**
 * How a castor's brake is set: the lever up, the wheel turns, and what stands on it rolls; the lever is pressed down, by hand where it lies and with the foot where it stands;
 * then the wheel does not turn, and it stands. Common practice, no source.
 */
export const brakePicture = (braked: Braked, held: Held, { width }: Pick<Paper, 'width'>): DrawnPicture => toPicture({ width, height: HIGH[held] }, brakeMarks(braked, held, width));

/** The marks of the picture, for the tests. */
export function brakeMarks({ castor, count }: Braked, held: Held, width: number): readonly Mark[] {
  const scale = Math.min(ROOM.on / castor.height, ROOM.aside / Math.abs(leverEnd(castor, (on, aside) => [on, aside], 1, 'locked')[1]));
  const column = (index: number): number => (index * width) / COLUMNS;
  const at = [0, 1, 2].map((index) => placeIn(held, column(index), castor.height * scale)) as [AtEnd, AtEnd, AtEnd];
  const fit = (place: AtEnd, brake: BrakeSet): readonly Mark[] => [...tubeCut(place, LONG[held], TUBE), ...fittingMarks(castor, place, scale, PLUG, brake)];
  const [verdict, next] = held === 'lying' ? [[6, 9], 41.5] : [[44, 9], 46];
  return [
    ...(held === 'standing' ? [0, 1, 2].map((index) => line(band(0.5), [column(index) + 2, STANDING.floor], [column(index + 1) - 6, STANDING.floor])) : []),
    ...fit(at[0], 'loose'), ...turning(castor, at[0], scale, ROUND[held]), ...(held === 'standing' ? rolling(castor, at[0], scale) : []), ...crossed([column(0) + (verdict[0] ?? 0), verdict[1] ?? 0], VERDICT),
    ...onwards([column(1) - 7.5, next ?? 0]), ...fit(at[1], 'loose'), ...pressed(castor, at[1], scale, held), figure(tell.times(count), [column(1) + TOLD[held][0], TOLD[held][1]], capHeights.count, 700),
    ...onwards([column(2) - 7.5, next ?? 0]), ...fit(at[2], 'locked'), ...(held === 'standing' ? pushed(at[2]) : []), ...ticked([column(2) + (verdict[0] ?? 0), verdict[1] ?? 0], VERDICT),
  ];
}

/** Where the tube's end is in a column that begins at a place; a castor so high stands on the floor. */
const placeIn = (held: Held, x: number, high: number): AtEnd => (held === 'lying' ? lying([x + LYING.end, LYING.axis]) : standing([x + STANDING.axis, STANDING.floor - high]));

/** The wheel turns to and fro. */
function turning({ wheel, height, trail }: Castor, at: AtEnd, scale: number, [from, to]: Vec2): readonly Mark[] {
  const radius = (wheel / 2) * scale + ROUND.off;
  const on = (angle: number): Vec2 => at((height - wheel / 2) * scale + radius * Math.cos(angle), trail * scale + radius * Math.sin(angle));
  const arc = Array.from({ length: 13 }, (_, index) => on(from + ((to - from) * index) / 12));
  const head = (tip: Vec2 | undefined, before: Vec2 | undefined): readonly Mark[] => (tip === undefined || before === undefined ? [] : [arrowhead(tip, [tip[0] - before[0], tip[1] - before[1]], 3.6, 2.8)]);
  return [line({ ...pens.motion, width: 0.9 }, ...arc.slice(1, -1)), ...head(arc[0], arc[1]), ...head(arc[12], arc[11])];
}

/** A hand pushes at the tube, and the castor rolls away. */
const rolling = ({ trail, wheel }: Castor, at: AtEnd, scale: number): readonly Mark[] => {
  const [x, y] = at(0, (trail + wheel / 2) * scale);
  return [...pushed(at), line(band(1.6), [x - 6, y - 8], [x + 2, y - 8]), arrowhead([x + 7.4, y - 8], [1, 0], 5.6, 5)];
};

const pushed = (at: AtEnd): readonly Mark[] => handPushing(at(-LONG.standing + 6.4, -TUBE.half), 1);

/** The lever's end is pressed away from the tube. */
function pressed(castor: Castor, at: AtEnd, scale: number, held: Held): readonly Mark[] {
  const [x, y] = leverEnd(castor, at, scale, 'loose');
  return held === 'lying'
    ? [...handOnto([x, y], [1, 0], 0.9), line(band(1.6), [x - 5, y - 8.4], [x, y - 8.4]), arrowhead([x + 5, y - 8.4], [1, 0], 5, 4.6)]
    : [...foot([x - 3, y]), line(band(1.6), [x + 13, y + 3], [x + 13, y + 7]), arrowhead([x + 13, y + 12.4], [0, 1], 5.4, 5)];
}

/** A shoe that comes down on its toe, from the right, and the leg over it: the place under its toe. */
function foot([x, y]: Vec2): readonly Mark[] {
  const sole: readonly Vec2[] = [[x, y], [x + 17, y], [x + 17, y - 1.4], [x - 0.6, y - 1.4]];
  const upper: readonly Vec2[] = [[x - 0.6, y - 1.4], [x - 0.2, y - 3.4], [x + 2, y - 4.6], [x + 6.6, y - 5.6], [x + 9.4, y - 9], [x + 17.4, y - 9], [x + 17, y - 1.4]];
  const leg: readonly Vec2[] = [[x + 9.8, y - 15], [x + 9.4, y - 9], [x + 17.4, y - 9], [x + 17.6, y - 15]];
  const pen = { ...pens.cut, round: true } as const;
  return [area('white', leg), line(pen, ...leg.slice(0, 2)), line(pen, ...leg.slice(2)), area('white', upper), outline(pen, upper), area('ink', sole)];
}
