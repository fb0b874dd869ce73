import type { Vec2 } from '../../model/index.ts';
import { area, arrowhead, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { crossed, ticked } from '../kit/right-wrong.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import type { DrawnPicture } from '../types.ts';
import { boxAt, fittingMarks, lying, movedOn, plateOf, plateThick, tipped, tubeCut, type AtEnd, type EndFitting } from './fitted-end.ts';
import { handDown, handOnto } from './hands.ts';
import { mallet } from './mallet.ts';
import { tapeRoll } from './tape-roll.ts';
import { numbered, onwards } from './trial.ts';
import { turnedRound } from './turned-round.ts';

/** Height of the picture, the width that its columns are told for, where they begin, and the axes of the tubes, mm of paper. */
const HIGH = 63;
const WIDE = 165;
const COLUMNS = { beside: 60, loose: 108 } as const;
const ROWS = { upper: 18, rule: 34, lower: 53 } as const;
/** A tube and the plug that goes into it, mm of paper, to no scale. */
const TUBE = { half: 4.2, wall: 1.3 } as const;
const PLUG = { long: 8.5, half: 2.9 } as const;
/** Most that a castor takes beyond the tube's end and to one side of its axis, most of a plate to a side, and the tube's width, mm of paper. */
const ROOM = { on: 24, aside: 16, plate: 9.4, tube: 8.4 } as const;
/** How far it is still out when it is struck, and how far a loose one has come out, mm of paper. */
const OUT = { struck: 3, slipped: 5 } as const;
/** How much one tips that is struck at its edge, rad. */
const TIP = 0.1;
/** Wood between mallet and plate: half its width, and how long it is on a plain plate and how far it reaches past a wheel; clear of that, mm of paper. */
const WOOD = { half: 1.5, wide: 5, block: 8, past: 5, clear: 0.8 } as const;
const TAPE = { from: 1.6, wide: 4.6, out: 0.5 } as const;

/**
 * How an end is fitted, and whether it holds: wood is put on its plate, beside a wheel, and struck until the plate is home on the tube; not the wheel's rim, nor a plate's edge.
 * Then it is pulled and twisted by hand. Where it stays, the work goes on; where it comes out, one turn of tape is wound round its plug, and it is fitted and tried again:
 * common practice, no source. `outside` is the tube's, mm.
 */
export const endTrial = (fitting: EndFitting, outside: number, { width }: Pick<Paper, 'width'>): DrawnPicture => toPicture({ width, height: HIGH }, endTrialMarks(fitting, outside, width));

/** The marks of the picture, for the tests. */
export function endTrialMarks(given: EndFitting, outside: number, width: number): readonly Mark[] {
  const fitting = given.is === 'castor' ? { ...given, brake: false } : given;
  const [beside, loose] = [COLUMNS.beside, COLUMNS.loose].map((x) => (x * width) / WIDE) as [number, number];
  const scale = scaleFor(fitting, outside);
  const fit = (x: number, y: number, long: number, out: number): readonly Mark[] => [...tubeCut(lying([x, y]), long, TUBE), ...fittingMarks(fitting, lying([x + out, y]), scale, PLUG)];
  const far = (fitting.is === 'castor' ? fitting.height : fitting.thickness) * scale;
  const taped: Vec2 = [loose + 20, ROWS.lower];
  return [
    ...numbered([[4.5, 4.6]]), ...fit(18, ROWS.upper, 15, OUT.struck), ...struckOnWood(fitting, lying([18 + OUT.struck, ROWS.upper]), scale), ...driven([16, ROWS.upper + TUBE.half + 4.6], -1),
    ...tubeCut(lying([beside + 12, ROWS.upper]), 9, TUBE), ...struckAtEdge(fitting, [beside + 12 + OUT.struck, ROWS.upper], scale), ...crossed([beside + 7, ROWS.upper + 9.4], 1.1),
    ...numbered([[4.5, ROWS.rule + 5.2]], 2), ...fit(22, ROWS.lower, 19, 0), ...handDown([12, ROWS.lower - TUBE.half]), ...pulledAndTwisted([22 + far, gripAt(fitting, scale)]),
    ...fit(beside + 20, ROWS.lower, 15, 0), ...ticked([beside + 9, ROWS.lower - 11], 1.3),
    line(pens.edge, [1, ROWS.rule], [loose, ROWS.rule]), line(pens.edge, [loose, 1], [loose, HIGH - 1]),
    ...fit(loose + 21, ROWS.upper, 17, OUT.slipped), ...driven([loose + 7, ROWS.upper + TUBE.half + 4.6], 1), ...crossed([loose + 9, ROWS.upper - 10.5], 1.3),
    ...onwards([loose + 2, ROWS.lower]), ...fittingMarks(fitting, lying(taped), scale, PLUG), ...tapedPlug(taped), ...numbered([[width - 13, HIGH - 4.2], [width - 4.2, HIGH - 4.2]]),
  ];
}

/** mm of paper for one mm: the tube's width as it is drawn, but no more than there is room for. */
function scaleFor(fitting: EndFitting, outside: number): number {
  const most = fitting.is === 'castor' ? [ROOM.on / fitting.height, ROOM.aside / (fitting.trail + fitting.wheel / 2)] : [ROOM.plate / (fitting.diameter / 2)];
  return Math.min(ROOM.tube / outside, ...most);
}

/** Where the hand grips: the wheel, or the middle of a plate. */
const gripAt = (fitting: EndFitting, scale: number): number => ROWS.lower - (fitting.is === 'castor' ? fitting.trail * scale : 0);

/** Wood on the plate and the mallet on its other end; beside a castor's wheel it leans out as much as it must. */
function struckOnWood(fitting: EndFitting, at: AtEnd, scale: number): readonly Mark[] {
  const face = plateThick(fitting) * scale;
  if (fitting.is !== 'castor') {
    const on = movedOn(at, face);
    return [...wood(on, WOOD.block, WOOD.wide), ...mallet(movedOn(on, WOOD.block), 1)];
  }
  const foot = plateOf(fitting, scale)[0] + WOOD.half + 0.3;
  const [x, y] = [(fitting.height - fitting.wheel / 2) * scale - face, fitting.trail * scale - foot];
  const lean = Math.min(0, Math.atan2(y, x) - Math.asin(Math.min(1, ((fitting.wheel / 2) * scale + WOOD.half + WOOD.clear) / Math.hypot(x, y))));
  const on = tipped((along, aside) => at(face + along, foot + aside), lean);
  const long = fitting.height * scale - face + WOOD.past;
  return [...wood(on, long, WOOD.half), ...mallet(movedOn(on, long), 1)];
}

/** The mallet on the wheel's rim, or on a plate's edge, so that the plug tips. */
function struckAtEdge(fitting: EndFitting, place: Vec2, scale: number): readonly Mark[] {
  const at = tipped(lying(place), TIP);
  const [on, aside] = fitting.is === 'castor' ? [fitting.height, fitting.trail] : [fitting.thickness, (fitting.diameter / 2) * 0.9];
  return [...fittingMarks(fitting, at, scale, PLUG), ...mallet((along, across) => at(on * scale + along, aside * scale + across), -1)];
}

/** A piece of wood along its grain, from its foot on. */
function wood(at: AtEnd, long: number, half: number): readonly Mark[] {
  const ring = boxAt(at, [0, long], [-half, half]);
  return [area('white', ring), outline(pens.cut, ring), ...[-0.34, 0.34].map((share, row) => line(pens.edge, at(long * (0.08 + 0.14 * row), share * half), at(long * (0.72 + 0.2 * row), share * half)))];
}

/** The way that it goes: to the left where it is driven in, to the right where it comes out. */
const driven = ([x, y]: Vec2, way: 1 | -1): readonly Mark[] => [line({ ...pens.motion, width: 0.9 }, [x, y], [x + way * 7, y]), arrowhead([x + way * 11, y], [way, 0], 4.4)];

/** A hand that grips the end from the right, turns it to and fro and pulls it out. */
const pulledAndTwisted = ([x, y]: Vec2): readonly Mark[] => [
  ...handOnto([x - 1.4, y], [-1, 0]), ...turnedRound([x + 4.8, y], 3.4),
  line({ ...pens.motion, width: 0.9 }, [x + 9, y], [x + 12, y]), arrowhead([x + 16.4, y], [1, 0], 4.6),
];

/** One turn of tape round the plug of what was drawn out, on its way from its roll. */
function tapedPlug([x, y]: Vec2): readonly Mark[] {
  const tape = boxAt(lying([x, y]), [-TAPE.from - TAPE.wide, -TAPE.from], [-PLUG.half - TAPE.out, PLUG.half + TAPE.out]);
  return [area('ink', tape), ...tapeRoll([x - TAPE.from - TAPE.wide / 2, y - PLUG.half], [x - TAPE.from - TAPE.wide / 2 - 3, y - PLUG.half - 10])];
}
