import { MechanismError } from './errors.ts';
import { solveFrame } from './solve-frame.ts';
import { frameUnder, heightsOf, nodeName, postStretches, topLevel, type SwayLoad } from './sway-frame.ts';
import type { SwayInput } from './sway-input.ts';
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
 * and the further lean that weight on top adds, which `sway` reckons. Null for a frame that gives way in any push: a mechanism.
 * Errors: FrameError for input that makes no sense.
 */
export function standOf(input: SwayInput): Stand | null {
  const pushed = pushEachWay(input);
  if (!pushed) return null;
  return {
    drift: driftOf(input, pushed),
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
function pushEachWay(input: SwayInput): readonly Pushed[] | null {
  const pushes = DIRECTIONS.flatMap((along) => ([1, -1] as const).map((way): Push => ({ along, way })));
  return orMechanism(() => pushes.map((push) => ({ push, result: solveFrame(frameUnder(input, sharedByTop(input, push))) })));
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

const greatestPull = (pushed: readonly Pushed[], index: number): number =>
  Math.max(...pushed.map(({ result }) => result.cableForces[`cable ${index}`] ?? 0));

const postMomentIn = (input: SwayInput, { memberForces }: FrameResult): number =>
  Math.max(...postStretches(input).flatMap((name) => memberForces[name] ?? [])
    .flatMap(({ from, to }) => [from, to].map((end) => Math.hypot(end[4], end[5]))));
