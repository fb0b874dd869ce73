import type { Vec2 } from '../../model/index.ts';
import { cutFace } from '../kit/cut-face.ts';
import { cornersOf } from '../kit/geometry.ts';
import { area, arrowhead, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { crossed, ticked } from '../kit/right-wrong.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import type { DrawnPicture } from '../types.ts';
import { pinch } from './cable/pinch.ts';
import { punchTool } from './punch-tool.ts';
import { tapeRoll } from './tape-roll.ts';
import { onwards } from './trial.ts';
import { wasteMarks } from './waste.ts';

/** Height of the picture, mm of paper; the faces of the sections that are tried, and of those under them that tell what is done then. */
const HIGH = 56;
const FACE = { tried: 23, outcome: 13, next: 42 } as const;
/** Two layers of waste in section: half their width, how thick each is; half of a hole and how deep it is, mm of paper. */
const LAYERS = { half: 8.5, thick: 5, hole: 1.9, deep: 8.6 } as const;
/** A pin's head: half its width, and how high it is, mm of paper. */
const HEAD = { half: 3.8, high: 1.6 } as const;
/** How far a loose pin has come out, mm of paper. */
const OUT = 4.6;
/** A turn of tape round a shank: from the head to it, how wide it is, how far it stands out, mm of paper. */
const TAPE = { from: 1.6, wide: 5, out: 0.5 } as const;
/** A pin with tape stands so far beside the middle of its column, its roll so far on the other side and so far over its lower end, mm of paper. */
const TAPED = { aside: 5, roll: 7, up: 2 } as const;
/** The middles of the sections, and where the columns begin, mm of paper. */
const PLACES = { waste: 5.5, pushed: 29.5, pulled: 55.5, columns: [76, 99, 133], firm: 87.5, loose: 114, plug: 148 } as const;
const WIDE = 165;
const VERDICT = 1.3;

/**
 * The first hole is punched in two layers of waste, and a pin is pushed into it and pulled by the fingers. Where it stays, the panel comes next;
 * where it is loose, one turn of tape is wound round its shank; where the core stayed in the hole, the punch is driven in again and turned (common practice, no source).
 */
export const pinTrial = ({ width }: Pick<Paper, 'width'>): DrawnPicture => toPicture({ width, height: HIGH }, pinTrialMarks(width));

/** The marks of the picture, for the tests. */
export function pinTrialMarks(width: number): readonly Mark[] {
  const at = (x: number): number => (x * width) / WIDE;
  const middle = FACE.tried + LAYERS.thick;
  const [firm, loose, plug] = [at(PLACES.firm), at(PLACES.loose), at(PLACES.plug)];
  return [
    ...wasteMarks(cornersOf({ x: at(PLACES.waste) - 5, y: middle - 6, width: 10, height: 12 })), ...onwards([at(PLACES.waste) + 6, middle]),
    ...layers([at(PLACES.pushed), FACE.tried]), ...hole([at(PLACES.pushed), FACE.tried]), ...pin([at(PLACES.pushed), FACE.tried], 13), ...down([at(PLACES.pushed) - 7, FACE.tried - 13]),
    ...onwards([(at(PLACES.pushed) + at(PLACES.pulled)) / 2 - 3.5, middle]), ...pulled([at(PLACES.pulled), FACE.tried]),
    ...PLACES.columns.map((x) => line(pens.edge, [at(x), 1], [at(x), HIGH - 1])),
    ...layers([firm, FACE.outcome]), ...hole([firm, FACE.outcome]), ...pin([firm, FACE.outcome], 0), ...ticked([firm, FACE.outcome + 2 * LAYERS.thick + 8], VERDICT),
    ...layers([loose, FACE.outcome]), ...hole([loose, FACE.outcome]), ...pin([loose, FACE.outcome], OUT), ...crossed([loose + 12, FACE.outcome - 6], VERDICT),
    ...taped([loose, FACE.next]),
    ...layers([plug, FACE.outcome]), ...hole([plug, FACE.outcome]), ...core([plug, FACE.outcome]), ...crossed([plug + 11, FACE.outcome - 6], VERDICT),
    ...layers([plug, FACE.next]), ...punchTool([plug, FACE.next + LAYERS.deep], LAYERS.hole, FACE.next), ...turned([plug, FACE.next - 7.5]),
    ...[loose, plug].flatMap((x) => down([x - 11, FACE.outcome + 2 * LAYERS.thick + 1])),
  ];
}

/** Two layers cut through, the middle of their upper face. */
const layers = ([x, face]: Vec2): readonly Mark[] => [0, 1].flatMap((layer) => cutFace(cornersOf({ x: x - LAYERS.half, y: face + layer * LAYERS.thick, width: 2 * LAYERS.half, height: LAYERS.thick })));

/** A hole in them, not right through. */
const hole = ([x, face]: Vec2): readonly Mark[] => [
  area('white', cornersOf({ x: x - LAYERS.hole, y: face - 0.1, width: 2 * LAYERS.hole, height: LAYERS.deep })),
  line(pens.cut, [x - LAYERS.hole, face], [x - LAYERS.hole, face + LAYERS.deep], [x + LAYERS.hole, face + LAYERS.deep], [x + LAYERS.hole, face]),
];

/** What is punched out, still in the hole. */
const core = ([x, face]: Vec2): readonly Mark[] => cutFace(cornersOf({ x: x - LAYERS.hole, y: face + 2.4, width: 2 * LAYERS.hole, height: LAYERS.deep - 2.4 }));

/** A pin, its head so far over the face. */
function pin([x, face]: Vec2, out: number): readonly Mark[] {
  const shank = cornersOf({ x: x - LAYERS.hole, y: face - out, width: 2 * LAYERS.hole, height: LAYERS.deep - 0.4 });
  const head = cornersOf({ x: x - HEAD.half, y: face - out - HEAD.high, width: 2 * HEAD.half, height: HEAD.high });
  return [shank, head].flatMap((ring) => [area('fresh', ring), outline(pens.cut, ring)]);
}

/** The pin in its hole, pulled up by thumb and forefinger at its head. */
function pulled([x, face]: Vec2): readonly Mark[] {
  const hand = pinch([x, face - 2.2], 0.6);
  return [
    ...layers([x, face]), ...hole([x, face]), ...hand.behind, ...pin([x, face], 1), ...hand.before,
    line({ ...pens.motion, width: 0.9 }, [x - 7, face - 2], [x - 7, face - 9]), arrowhead([x - 7, face - 14], [0, -1], 5),
  ];
}

/** The loose pin out of its hole, with one turn of tape on its way round the shank. */
function taped([x, face]: Vec2): readonly Mark[] {
  const at: Vec2 = [x - TAPED.aside, face];
  const tape = cornersOf({ x: at[0] - LAYERS.hole - TAPE.out, y: face + TAPE.from, width: 2 * (LAYERS.hole + TAPE.out), height: TAPE.wide });
  return [...pin(at, 0), area('ink', tape), ...tapeRoll([at[0] + LAYERS.hole, face + TAPE.from + TAPE.wide / 2], [x + TAPED.roll, face + LAYERS.deep - TAPED.up - TAPE.wide / 2])];
}

/** Pressed down. */
const down = ([x, y]: Vec2): readonly Mark[] => [line(pens.motion, [x, y], [x, y + 6]), arrowhead([x, y + 9.5], [0, 1], 4)];

/** Turned round its axis. */
function turned([x, y]: Vec2): readonly Mark[] {
  const round = Array.from({ length: 13 }, (_, index): Vec2 => {
    const angle = Math.PI * (0.08 + (0.84 * index) / 12);
    return [x + 8.4 * Math.cos(angle), y + 2.4 * Math.sin(angle)];
  });
  const [before, tip] = [10, 12].map((index): Vec2 => round[index] ?? [x, y]) as [Vec2, Vec2];
  return [line({ ...pens.motion, width: 2, colour: 'white' }, ...round), line({ ...pens.motion, width: 0.8 }, ...round), arrowhead(tip, [tip[0] - before[0], tip[1] - before[1]], 3.6, 2.6)];
}
