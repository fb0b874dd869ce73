import { MechanismError } from './errors.ts';
import { solveFrame } from './solve-frame.ts';
import { heightsOf, nodeName, pushedFrame, topLevel, type Push } from './sway-frame.ts';
import type { SwayInput } from './sway-input.ts';
import type { FrameResult } from './types.ts';

export type { SwayInput } from './sway-input.ts';

/** Furthest any corner of the top level moves along the push, mm. */
export interface Drift {
  readonly x: number;
  readonly y: number;
}

export interface SwayResult {
  readonly withCables: Drift | 'mechanism';
  readonly withoutCables: Drift | 'mechanism';
  /** Greatest pull in each cable under any of the pushes, N, in the order given; empty for a mechanism. */
  readonly cablePulls: readonly number[];
}

const DIRECTIONS = ['x', 'y'] as const;

/**
 * How far posts, decks, frames and cables sway under a push on the middle of the top level, either way along x and
 * along y; the worse way counts. On the safe side: every tube is pinned to the posts; only the posts run on stiffly
 * from foot to top; feet turn freely and do not slide (nor lift: that is the tip-over check's matter); cables only
 * pull and are not stretched beforehand; upright panels and the grip of the joints are left out. Not in it: slack in
 * the joints, and the further lean that weight on top adds. A frame that gives way in any push is a 'mechanism'.
 * Errors: FrameError for input that makes no sense.
 */
export function swayOf(input: SwayInput): SwayResult {
  const braced = pushEachWay(input);
  const bare = pushEachWay({ ...input, cables: [] });
  return {
    withCables: driftOf(input, braced),
    withoutCables: driftOf(input, bare),
    cablePulls: input.cables.flatMap((_, index) => (braced ? [greatestPull(braced, index)] : [])),
  };
}

interface Pushed {
  readonly push: Push;
  readonly result: FrameResult;
}

/** Null where any push finds the frame a mechanism. */
function pushEachWay(input: SwayInput): readonly Pushed[] | null {
  const pushes = DIRECTIONS.flatMap((along) => ([1, -1] as const).map((way): Push => ({ along, way })));
  try {
    return pushes.map((push) => ({ push, result: solveFrame(pushedFrame(input, push)) }));
  } catch (error) {
    if (error instanceof MechanismError) return null;
    throw error;
  }
}

function driftOf(input: SwayInput, pushed: readonly Pushed[] | null): Drift | 'mechanism' {
  if (!pushed) return 'mechanism';
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
