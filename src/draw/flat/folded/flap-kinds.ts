import type { Bend, Pattern, Vec2 } from '../../../model/index.ts';
import type { PanelLine } from '../panel-lines.ts';
import { acrossLug, acrossPatternFlap } from './bend-lines.ts';

/** Flaps or lugs whose lines are alike, told by one strip. Distances from a line that is there when they are measured. */
export interface FlapKind {
  /** In the order in which they are marked; `at` from the datum, outwards. */
  readonly bends: readonly Bend[];
  /** Places in `bends` in the order in which they are bent. */
  readonly order: readonly number[];
  /** Free edge. */
  readonly edge: number;
  /** Flaps are measured from their root line; lugs, which have none, from their free edge. */
  readonly datum: number;
  /** Where the middle of the free edge of each of them is on the panel, and which way is out there. */
  readonly places: readonly { readonly at: Vec2; readonly outwards: Vec2 }[];
}

/** Whether a bend is made on the inner face, which bears the marks: a crease is pressed into the face that it turns to, a half-cut opens on the face that it turns away from. */
export const isMadeInside = ({ is, turn }: Pick<Bend, 'is' | 'turn'>): boolean => (turn > 0) === (is === 'crease');

const middleOf = ([one, other]: PanelLine): Vec2 => [(one[0] + other[0]) / 2, (one[1] + other[1]) / 2];

/** The free edge's middle, and the way there from a line further in. */
function placeOf(edge: PanelLine, inside: PanelLine): FlapKind['places'][number] {
  const [at, from] = [middleOf(edge), middleOf(inside)];
  const far = Math.hypot(at[0] - from[0], at[1] - from[1]);
  return { at, outwards: [(at[0] - from[0]) / far, (at[1] - from[1]) / far] };
}

/** The kinds of flaps of a pattern in the order they first come, those with a whole flap first. */
export function flapKinds({ flaps }: Pattern): readonly FlapKind[] {
  const whole = flaps.map((flap): FlapKind =>
    ({ bends: flap.bends, order: flap.order, edge: flap.edge, datum: 0, places: [placeOf(acrossPatternFlap(flap, flap.edge), acrossPatternFlap(flap, 0))] }));
  const lugs = flaps.flatMap((flap) => flap.lugs.map((lug): FlapKind =>
    ({ bends: lug.bends, order: lug.bends.map((_, place) => place), edge: lug.edge, datum: lug.edge, places: [placeOf(acrossLug(flap, lug, lug.edge), acrossLug(flap, lug, 0))] })));
  return [...whole, ...lugs].filter(({ bends }) => bends.length > 0).reduce<readonly FlapKind[]>((kinds, each) => {
    const same = kinds.find((kind) => isAlike(kind, each));
    return same === undefined ? [...kinds, each] : kinds.map((kind) => (kind === same ? { ...kind, places: [...kind.places, ...each.places] } : kind));
  }, []);
}

/** Lengths closer than this are marked alike, mm. */
const ALIKE = 0.005;

const isAlike = (one: FlapKind, other: FlapKind): boolean =>
  one.bends.length === other.bends.length
  && Math.abs((one.edge - one.datum) - (other.edge - other.datum)) < ALIKE
  && one.bends.every(({ at, is, turn }, place) => {
    const pair = other.bends[place];
    return pair !== undefined && pair.is === is && Math.abs(pair.turn - turn) < 1e-6 && Math.abs((at - one.datum) - (pair.at - other.datum)) < ALIKE;
  });

/** Where a strip of a kind begins, mm: a little inside its root line or, for a lug, its first bend. */
export const stripStart = ({ bends, datum }: FlapKind): number => (datum === 0 ? 0 : Math.min(...bends.map(({ at }) => at))) - SHOWN;
const SHOWN = 20;
