import type { Bend, Lug, Pattern, PatternFlap, Side, Vec2 } from '../../../model/index.ts';
import { runsAlongX, type PanelLine } from '../panel-lines.ts';
import { acrossLug, acrossPatternFlap, wallMiddle } from './bend-lines.ts';

/** Flaps or lugs whose lines are alike, told by one strip. Distances from a line that is there when they are measured. */
export interface FlapKind {
  /** In the order in which they are marked; `at` from the datum, outwards. */
  readonly bends: readonly Bend[];
  /** Places in `bends` in the order in which they are bent. */
  readonly order: readonly number[];
  /** Free edge. */
  readonly edge: number;
  /** Flaps are measured from the line that is marked first, on the face that bears it; else, and lugs, from the blank's edge: both are there when they are marked. */
  readonly measuredFrom: 'line' | 'edge';
  /** Where that is, from the root line or a lug's middle, outwards. */
  readonly datum: number;
  readonly of: 'flap' | 'lug';
  /** Where the middle of the free edge of each of them is on the panel, and which way is out there. */
  readonly places: readonly { readonly at: Vec2; readonly outwards: Vec2 }[];
}

const middleOf = ([one, other]: PanelLine): Vec2 => [(one[0] + other[0]) / 2, (one[1] + other[1]) / 2];

/** The free edge's middle, and the way there from a line further in. */
function placeOf(edge: PanelLine, inside: PanelLine): FlapKind['places'][number] {
  const [at, from] = [middleOf(edge), middleOf(inside)];
  const far = Math.hypot(at[0] - from[0], at[1] - from[1]);
  return { at, outwards: [(at[0] - from[0]) / far, (at[1] - from[1]) / far] };
}

/** The kinds of flaps of a pattern in the order they first come, those with a whole flap first; whether the lines that are marked first are on the face that is seen. */
export function flapKinds(pattern: Pattern, areLinesSeen = true): readonly FlapKind[] {
  const { flaps } = pattern;
  const whole = flaps.map((flap): FlapKind =>
    ({ of: 'flap', bends: flap.bends, order: flap.order, edge: flap.edge, ...(areLinesSeen ? { measuredFrom: 'line', datum: flap.line } : { measuredFrom: 'edge', datum: blankReach(pattern, flap.side) - flap.root }), places: [placeOf(acrossPatternFlap(flap, flap.edge), acrossPatternFlap(flap, 0))] }));
  const lugs = flaps.flatMap((flap) => flap.lugs.map((lug): FlapKind =>
    ({ of: 'lug', bends: lug.bends, order: lug.bends.map((_, place) => place), edge: lug.edge, measuredFrom: 'edge', datum: blankBesideLug(pattern, flap, lug), places: [placeOf(acrossLug(flap, lug, lug.edge), acrossLug(flap, lug, 0))] })));
  return [...whole, ...lugs].filter(({ bends }) => bends.length > 0).reduce<readonly FlapKind[]>((kinds, each) => {
    const same = kinds.find((kind) => isAlike(kind, each));
    return same === undefined ? [...kinds, each] : kinds.map((kind) => (kind === same ? { ...kind, places: [...kind.places, ...each.places] } : kind));
  }, []);
}

/** From the middle of a pattern to the edge of its blank on a side, mm. */
function blankReach({ min, max }: Pattern, side: Side): number {
  switch (side) {
    case 'left': return -min[0];
    case 'right': return max[0];
    case 'front': return -min[1];
    case 'back': return max[1];
  }
}

/** From the middle of a lug's wall to the edge of the blank that the lug looks at, mm. */
function blankBesideLug({ min, max }: Pattern, flap: PatternFlap, lug: Lug): number {
  const along = runsAlongX(flap.side) ? 0 : 1;
  const middle = wallMiddle(flap, lug);
  return lug.end > 0 ? max[along] - middle : middle - min[along];
}

/** Lengths closer than this are marked alike, mm. */
const ALIKE = 0.005;

const isAlike = (one: FlapKind, other: FlapKind): boolean =>
  one.of === other.of
  && one.measuredFrom === other.measuredFrom
  && one.bends.length === other.bends.length
  && Math.abs((one.edge - one.datum) - (other.edge - other.datum)) < ALIKE
  && one.bends.every(({ at, is, turn }, place) => {
    const pair = other.bends[place];
    return pair !== undefined && pair.is === is && Math.abs(pair.turn - turn) < 1e-6 && Math.abs((at - one.datum) - (pair.at - other.datum)) < ALIKE;
  });

/** Where a strip of a kind begins, mm: a little inside the line it is measured from or, where that is not seen, its first bend. */
export const stripStart = ({ bends, measuredFrom, datum }: FlapKind): number => Math.min(measuredFrom === 'line' ? datum : Infinity, ...bends.map(({ at }) => at)) - SHOWN;
const SHOWN = 20;
