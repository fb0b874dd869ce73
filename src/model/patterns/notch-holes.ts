import type { PanelHole, Vec2 } from '../types.ts';

/** Straights of an outline shorter than this belong to a round corner, mm. */
const SHORT = 3;
/** A rounder corner than this is sharp, mm. */
const SHARP = 0.01;

/** The holes of a panel that are punched while it lies flat. */
export const flatHoles = <Hole extends PanelHole>({ holes }: { readonly holes: readonly Hole[] }): readonly Hole[] => holes.filter(({ punched }) => punched === 'flat');

/** The holes that round the inside corners of an outline: punched right through before the notches are cut to them. */
export function notchHoles({ outline }: { readonly outline: readonly Vec2[] }): readonly PanelHole[] {
  const isShort = (place: number): boolean => {
    const [from, to] = [outline[place % outline.length], outline[(place + 1) % outline.length]];
    return from !== undefined && to !== undefined && Math.hypot(to[0] - from[0], to[1] - from[1]) < SHORT;
  };
  const begins = outline.flatMap((_, place) => (isShort(place) && !isShort(place + outline.length - 1) ? [place] : []));
  return begins.flatMap((begin) => {
    let end = begin + 1;
    while (isShort(end)) end += 1;
    const arc = Array.from({ length: end - begin + 1 }, (_, step): Vec2 => outline[(begin + step) % outline.length] ?? [0, 0]);
    return holeOf(arc);
  });
}

/** The hole of a quarter of a circle between two straights along x and y. */
function holeOf(arc: readonly Vec2[]): readonly PanelHole[] {
  const [first, middle, last] = [arc[0], arc[Math.floor(arc.length / 2)], arc.at(-1)];
  if (first === undefined || middle === undefined || last === undefined || arc.length < 3) return [];
  const radius = Math.abs(first[0] - last[0]);
  const corners: readonly Vec2[] = [[first[0], last[1]], [last[0], first[1]]];
  const far = ([x, y]: Vec2): number => Math.hypot(x - middle[0], y - middle[1]);
  const at = corners.reduce((best, corner) => (far(corner) > far(best) ? corner : best));
  return radius < SHARP ? [] : [{ at, diameter: 2 * radius, depth: null, face: 'drawn', punched: 'flat' }];
}
