import type { Vec2 } from '../../../model/index.ts';
import { tell } from '../../../scene/index.ts';
import { area, figure, line, outline, toldWidth, type Mark } from '../../kit/marks.ts';
import { pens, type Pen } from '../../kit/pens.ts';
import { round, smooth } from './rope.ts';

/** A bottle of a litre, mm: common practice, no source. */
export const BOTTLE = { long: 290, wide: 84 } as const;

/** How large a full bottle of a mass is, kg, of the same shape, mm. */
export const bottleSize = (mass: number): { readonly long: number; readonly wide: number } =>
  ({ long: BOTTLE.long * Math.cbrt(mass), wide: BOTTLE.wide * Math.cbrt(mass) });

/** The outline of a bottle that stands, by its length from the cap's top and its half width. */
const SHOULDERS: readonly Vec2[] = [[0.36, 0.1], [0.36, 0.17], [0.52, 0.22], [0.86, 0.29], [1, 0.36], [1, 0.97], [0.9, 1]];
const CAP = { half: 0.42, deep: 0.09 } as const;
const WATER = 0.3;

const string: Pen = { ...pens.motion, width: 0.6 };

/** A full, closed bottle: from its cap's top down or, lying, from its cap to the left; so long, mm of paper. */
export function bottle([x, y]: Vec2, long: number, lies = false): readonly Mark[] {
  const half = (long * BOTTLE.wide) / BOTTLE.long / 2;
  const at = ([across, along]: Vec2): Vec2 => (lies ? [x + along * long, y + across * half] : [x + across * half, y + along * long]);
  const both = (points: readonly Vec2[]): readonly Vec2[] => [...points, ...points.map(([across, along]): Vec2 => [-across, along]).toReversed()].map(at);
  const ring = both(SHOULDERS);
  const pen: Pen = { ...pens.cut, width: Math.min(0.5, 0.2 + long / 80) };
  return [
    area('white', ring), area('fresh', both(SHOULDERS.filter(([, along]) => along > WATER))), outline(pen, ring),
    area('ink', both([[CAP.half, 0], [CAP.half, CAP.deep]])),
  ];
}

/** How long the string from the knot to the cap is, and from the knot to the flank of a bottle that lies; how far it all reaches under the knot: shares of the bottle's length. */
const STRING = { stands: 0.16, lies: 0.06 } as const;
export const STANDING = 1 + STRING.stands;
export const LYING = BOTTLE.wide / BOTTLE.long + STRING.lies;

/** The string that holds it: once round its neck, or lying round both of its ends; up to a knot, mm of paper. */
export function bottleHung(knot: Vec2, long: number, lies: boolean): readonly Mark[] {
  const [x, y] = knot;
  const half = (long * BOTTLE.wide) / BOTTLE.long / 2;
  if (!lies) {
    const cap: Vec2 = [x, y + STRING.stands * long];
    return [...bottle(cap, long), line(string, knot, [x, cap[1] + 0.12 * long]), line({ ...string, width: 1 }, [x - 0.4 * half, cap[1] + 0.13 * long], [x + 0.4 * half, cap[1] + 0.13 * long])];
  }
  const cap: Vec2 = [x - long / 2, y + half + STRING.lies * long];
  const rounds = [0.14, 0.86].map((share) => cap[0] + share * long);
  return [
    ...bottle(cap, long, true), ...rounds.flatMap((at, index) => {
      const reach = index === 0 ? 0.36 * half : half;
      return [line({ ...string, width: 1 }, [at, cap[1] - reach], [at, cap[1] + reach]), line(string, knot, [at, cap[1] - reach])];
    }),
  ];
}

/** A string tied round a cord: what of its loop goes behind the cord, what before it, and its knot below; as wide as told, mm of paper. */
export function roundCord([x, y]: Vec2, wide: number): { readonly behind: readonly Mark[]; readonly before: readonly Mark[]; readonly knot: Vec2 } {
  const knot: Vec2 = [x, y + 1.35 * wide];
  const side = (way: 1 | -1): readonly Vec2[] => smooth([x, y - 0.75 * wide], [x + way * 0.45 * wide, y - 0.4 * wide], [x + way * 0.5 * wide, y + 0.4 * wide], knot);
  const pen: Pen = { ...pens.motion, width: Math.max(0.45, wide / 6) };
  return {
    behind: [line(pen, ...side(1))],
    before: [line({ ...pen, width: 2.2 * pen.width, colour: 'white' }, ...side(-1)), line(pen, ...side(-1)), area('ink', round(knot, 0.24 * wide, 0, 2 * Math.PI))],
    knot,
  };
}

/** How much it holds and how heavy that is, under each other, in the middle of a place: a litre of water is a kilogram. */
export function bottleTold(kilograms: number, [x, y]: Vec2, cap: number): readonly Mark[] {
  const [volume, mass] = [tell.volume(kilograms), tell.mass(kilograms)];
  const [first, second, sign] = [toldWidth(volume, cap, 700), toldWidth(mass, cap, 700), 1.1 * cap];
  const left = x - (first + second + sign + cap) / 2;
  const dash = (up: number): Mark => line({ ...pens.motion, width: 0.2 * cap }, [left + first + cap / 2, y + up * cap], [left + first + cap / 2 + sign, y + up * cap]);
  return [figure(volume, [left + first / 2, y], cap, 700), dash(-0.2), dash(0.25), figure(mass, [left + first + cap + sign + second / 2, y], cap, 700)];
}
