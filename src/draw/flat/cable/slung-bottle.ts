import type { BracedFace, Vec2 } from '../../../model/index.ts';
import type { Mark } from '../../kit/marks.ts';
import { BOTTLE, bottle } from './bottle.ts';
import { crossedCords } from './face.ts';
import { doesLie } from './hung-mass.ts';
import type { Frame } from './knots.ts';
import { cutEnd, drawnHome, drawnStrand, gapUnder, moves, smooth, stands, thick, type Strand } from './rope.ts';

/** How thick the cords of the face and the piece of cord that holds the bottle are drawn, times the usual. */
const CORD = 0.85;
const SLING = 0.55;
/** Half of the stretch of the cords that is seen, and how far the laden one has come down, mm of paper. */
const SEEN = 13;
const SAG = 2.4;
/** The least and the most slope of the cords. */
const SLOPES = [0.4, 0.9] as const;
/** A bottle that stands and one that lies, mm of paper: its length, and from the crossing to its cap's top or to its axis. */
const STANDS = { long: 40, under: 12 } as const;
const LIES = { long: 44, under: 24 } as const;
/** Along a bottle from its cap's top, shares of its length: its neck, and where a cord goes round the end of one that lies. */
const NECK = 0.135;
const ENDS = [0.135, 0.86] as const;

/**
 * How a full bottle hangs on one of two crossed cords, enlarged: a piece of cord left over goes over that cord alone and is tied round the bottle's
 * neck, or, where there is no room under the crossing, round both ends of the bottle, which lies (common practice, no source).
 */
export const slungBottle = (face: BracedFace): Frame => ([x, y]) => {
  const lies = doesLie(face);
  const tip: Vec2 = [x, y - (lies ? 14 : 22) + SAG];
  const [over, under] = crossing(face, tip);
  const { behind, before } = lies ? lying(tip) : standing(tip);
  return [...drawnStrand(under), ...behind, gapUnder(over), ...drawnStrand(over), ...before];
};

/** The laden cord, which comes down to a place, and the straight one behind it. */
function crossing(face: BracedFace, [x, y]: Vec2): readonly [Strand, Strand] {
  const [cord] = crossedCords(face)[0]?.cords ?? [];
  const slope = cord === undefined ? SLOPES[0] : Math.abs((cord.high[1] - cord.low[1]) / (cord.high[0] - cord.low[0]));
  const rise = Math.min(SLOPES[1], Math.max(SLOPES[0], slope)) * (cord !== undefined && cord.high[0] < cord.low[0] ? -1 : 1);
  const at = (side: 1 | -1, way: 1 | -1): Vec2 => [x + side * SEEN, y - SAG - side * way * rise * SEEN];
  return [thick(moves(at(-1, 1), [x, y], at(1, 1)), CORD), thick(stands(at(-1, -1), at(1, -1)), CORD)];
}

/** What is behind the laden cord and what before it. */
interface Slung {
  readonly behind: readonly Mark[];
  readonly before: readonly Mark[];
}

const sling = (...way: readonly Vec2[]): Strand => thick(stands(...way), SLING);

/** How high the piece of cord goes over the laden one, and how far apart its two sides are under that, mm of paper. */
const LOOP = { over: 2.4, aside: 1.9 } as const;

/** The bottle by its neck. */
function standing([x, y]: Vec2): Slung {
  const cap: Vec2 = [x, y + STANDS.under];
  const neck = cap[1] + NECK * STANDS.long;
  const half = (0.36 * STANDS.long * BOTTLE.wide) / BOTTLE.long / 2;
  const side = (way: 1 | -1): Strand => sling(...smooth([x, y - LOOP.over], [x + way * LOOP.aside, y - 0.6], [x + way * 2.6, y + 6], [x + way * 3.6, cap[1] + 2], [x + way * half, neck]));
  const round = [-0.7, 0.7].map((up) => sling([x - half - 0.7, neck + up], [x + half + 0.7, neck + up]));
  const tail: Vec2 = [x + half + 7, neck + 4];
  return {
    behind: drawnStrand(side(1)),
    before: [...bottle(cap, STANDS.long), ...drawnStrand(side(-1)), ...round.flatMap((each) => drawnStrand(each)), ...drawnStrand(sling([x + 1, neck], tail)), ...cutEnd(tail, [1, 0.6], SLING), ...drawnHome([x + 0.2, neck], 2)],
  };
}

/** The bottle in a sling round both of its ends. */
function lying([x, y]: Vec2): Slung {
  const axis = y + LIES.under;
  const cap: Vec2 = [x - LIES.long / 2, axis];
  const half = (LIES.long * BOTTLE.wide) / BOTTLE.long / 2;
  const [neck, foot] = ENDS.map((share, index) => ({ x: cap[0] + share * LIES.long, reach: index === 0 ? 0.36 * half : half })) as [Ring, Ring];
  const side = (way: 1 | -1, ring: Ring): Strand => sling(...smooth([x, y - LOOP.over], [x + way * LOOP.aside, y - 0.6], [x + way * 3, y + 3.4], [ring.x, axis - ring.reach]));
  const round = ({ x: at, reach }: Ring): readonly Mark[] => [-0.7, 0.7].flatMap((aside) => drawnStrand(sling([at + aside, axis - reach - 0.5], [at + aside, axis + reach + 0.5])));
  const tail: Vec2 = [foot.x + 6, axis - half - 3.4];
  return {
    behind: drawnStrand(side(1, foot)),
    before: [
      ...bottle(cap, LIES.long, true), ...drawnStrand(side(-1, neck)), ...[neck, foot].flatMap(round), ...drawnStrand(sling([foot.x + 0.4, axis - half - 0.6], tail)), ...cutEnd(tail, [1, -0.4], SLING),
      ...drawnHome([neck.x, axis - neck.reach - 0.6], 1.7), ...drawnHome([foot.x, axis - half - 0.6], 1.9),
    ],
  };
}

/** Where a cord goes round a bottle that lies, and how far from its axis. */
interface Ring {
  readonly x: number;
  readonly reach: number;
}
