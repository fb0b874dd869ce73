import { MechanismError } from './errors.ts';
import { solveFrame } from './solve-frame.ts';
import { cornersOf, frameUnder, heightsOf, nodeName, postStretches, topLevel, type SwayLoad } from './sway-frame.ts';
import type { SwayInput, SwayLevel } from './sway-input.ts';
import type { FrameResult } from './types.ts';

export type { SwayInput } from './sway-input.ts';

/** Furthest any corner of the top level moves along the push, mm. */
export interface Drift {
  readonly x: number;
  readonly y: number;
}

/** What a push does to a frame that stands. */
export interface Stand {
  readonly drift: Drift;
  /** How much further than that for each N on every deck, and on the top one alone, most of it on the half that the push goes towards, mm. */
  readonly lean: { readonly all: Drift; readonly top: Drift };
  /** Greatest pull in each cable under any of the pushes, N, in the order given. */
  readonly cablePulls: readonly number[];
  /** Greatest bending moment in any post under any of the pushes, N·mm. */
  readonly postMoment: number;
}

const DIRECTIONS = ['x', 'y'] as const;

/**
 * How far posts, decks, frames, cables and upright plates sway under a push on the middle of the top level, either way
 * along x and along y; the worse way counts. On the safe side: every tube is pinned to the posts;
 * only the posts run on stiffly from foot to top; feet turn freely and do not slide (nor lift: that is the
 * tip-over check's matter); cables only pull and are not stretched beforehand. Not in it: slack in the joints and pins,
 * and the further lean of weight once it leans, which `sway` reckons. Null for a frame that gives way in any push: a mechanism.
 * Errors: FrameError for input that makes no sense.
 */
export function standOf(input: SwayInput): Stand | null {
  const pushed = pushEachWay(input);
  if (!pushed) return null;
  const drift = driftOf(input, pushed);
  const decks = input.levels.filter(({ stiffened }) => stiffened).toSorted((a, b) => b.height - a.height);
  return {
    drift,
    lean: { all: leanUnder(input, decks, drift), top: leanUnder(input, decks.slice(0, 1), drift) },
    cablePulls: input.cables.map((_, index) => greatestPull(pushed, index)),
    postMoment: Math.max(...pushed.map(({ result }) => postMomentIn(input, result))),
  };
}

/** Greatest bending moment in any post under given forces, N·mm, or null for a mechanism. Errors: FrameError. */
export function postMomentUnder(input: SwayInput, loads: readonly SwayLoad[]): number | null {
  return orMechanism(() => postMomentIn(input, solveFrame(frameUnder(input, loads))));
}

interface Push {
  readonly along: 'x' | 'y';
  readonly way: 1 | -1;
}

interface Pushed {
  readonly push: Push;
  readonly result: FrameResult;
}

/** Null where any push finds the frame a mechanism. */
function pushEachWay(input: SwayInput, more: (push: Push) => readonly SwayLoad[] = () => []): readonly Pushed[] | null {
  const pushes = DIRECTIONS.flatMap((along) => ([1, -1] as const).map((way): Push => ({ along, way })));
  return orMechanism(() => pushes.map((push) => ({ push, result: solveFrame(frameUnder(input, [...sharedByTop(input, push), ...more(push)])) })));
}

function orMechanism<Answer>(solve: () => Answer): Answer | null {
  try {
    return solve();
  } catch (error) {
    if (error instanceof MechanismError) return null;
    throw error;
  }
}

/** The push, shared evenly by the corners of the top level. */
function sharedByTop(input: SwayInput, { along, way }: Push): readonly SwayLoad[] {
  const { height, corners } = topLevel(input);
  const share = (way * input.force) / corners.length;
  return corners.map((post) => ({ post, height, force: along === 'x' ? [share, 0] : [0, share] }));
}

function driftOf(input: SwayInput, pushed: readonly Pushed[]): Drift {
  const along = (wanted: 'x' | 'y'): number =>
    Math.max(...pushed.filter(({ push }) => push.along === wanted).map((one) => furthest(input, one)));
  return { x: along('x'), y: along('y') };
}

function furthest(input: SwayInput, { push, result }: Pushed): number {
  const { height, corners } = topLevel(input);
  const heights = heightsOf(input);
  return Math.max(...corners.map((post) => {
    const shift = result.displacements[nodeName(heights, post, height)]?.[push.along === 'x' ? 0 : 1] ?? 0;
    return Math.abs(shift);
  }));
}

/** N on each deck for each N of the push: about what laden shelves bear. All grows in proportion, as long as the same cables are taut. */
const LADEN = 4;

function leanUnder(input: SwayInput, decks: readonly SwayLevel[], drift: Drift): Drift {
  const laden = pushEachWay(input, (push) => decks.flatMap((deck) => onOneHalf(input, deck, push)));
  if (laden === null) return { x: 0, y: 0 };
  const { x, y } = driftOf(input, laden);
  const perNewton = (with_: number, without: number): number => Math.max(0, with_ - without) / (LADEN * input.force);
  return { x: perNewton(x, drift.x), y: perNewton(y, drift.y) };
}

/** Three quarters of a deck's load on the corners that the push goes towards (statics of a load on one half). */
function onOneHalf({ posts, force }: SwayInput, deck: SwayLevel, { along, way }: Push): readonly SwayLoad[] {
  const corners = cornersOf(deck);
  const place = (post: number): number => way * (posts[post]?.[along] ?? 0);
  const middle = corners.reduce((sum, post) => sum + place(post), 0) / corners.length;
  const near = corners.filter((post) => place(post) > middle);
  return corners.map((post): SwayLoad => ({
    post, height: deck.height, force: [0, 0],
    down: LADEN * force * (near.includes(post) ? 0.75 / near.length : 0.25 / (corners.length - near.length)),
  }));
}

const greatestPull = (pushed: readonly Pushed[], index: number): number =>
  Math.max(...pushed.map(({ result }) => result.cableForces[`cable ${index}`] ?? 0));

const postMomentIn = (input: SwayInput, { memberForces }: FrameResult): number =>
  Math.max(...postStretches(input).flatMap((name) => memberForces[name] ?? [])
    .flatMap(({ from, to }) => [from, to].map((end) => Math.hypot(end[4], end[5]))));
