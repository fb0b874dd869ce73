import type { Vec2 } from '../../model/index.ts';
import { cornersOf } from '../kit/geometry.ts';
import { area, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { STRIP } from './padded-knife.ts';

/** How far the blade leans from upright towards where it is pulled, rad; its width, and that of its bevel and of the handle, mm of paper. */
const LEAN = 0.45;
const BLADE = { wide: 4.6, bevel: 1.5, handle: 6.4 } as const;
/** How far the handle reaches over the strip, mm of paper. */
const HANDLE = 8;
/** Width of the tape round both strips, and how far the one behind is seen beside the other, mm of paper. */
const TAPED = 6;
const BEHIND = 1.5;

/** A knife at a strip seen from the side: the middle of the strip's lower edge on paper, how far the tip stands out under that, mm, and mm of paper for one mm. */
export interface AtStrip {
  readonly foot: Vec2;
  readonly depth: number;
  readonly scale: number;
}

/** Where the tip of the blade is. */
export const tipOf = ({ foot: [middle, face], depth, scale }: AtStrip): Vec2 => [middle - (STRIP.high / 2 + depth) * scale * Math.tan(LEAN), face + depth * scale];

/** The strip's box on paper, on its own or raised. */
export const stripRing = ({ foot: [middle, face], scale }: Pick<AtStrip, 'foot' | 'scale'>): readonly Vec2[] =>
  cornersOf({ x: middle - (STRIP.long * scale) / 2, y: face - STRIP.high * scale, width: STRIP.long * scale, height: STRIP.high * scale });

/** A point so far up a blade from its tip, and so far from its back towards its sharp edge, mm of paper. */
const alongBlade = (tip: Vec2) => (far: number, across: number): Vec2 => [tip[0] + far * Math.sin(LEAN) - across * Math.cos(LEAN), tip[1] - far * Math.cos(LEAN) - across * Math.sin(LEAN)];

/** The blade's outline, and its bevel's line. */
function bladeOf(at: AtStrip): { readonly ring: readonly Vec2[]; readonly bevel: readonly Vec2[]; readonly over: number } {
  const along = alongBlade(tipOf(at));
  const over = ((STRIP.high + at.depth) * at.scale) / Math.cos(LEAN);
  return {
    ring: [along(0, 0), along(BLADE.wide * 0.45, BLADE.wide), along(over, BLADE.wide), along(over, 0)],
    bevel: [along(BLADE.bevel * 0.45, BLADE.bevel), along(over, BLADE.bevel)],
    over,
  };
}

function handleOf(at: AtStrip, over: number): readonly Mark[] {
  const along = alongBlade(tipOf(at));
  return [area('ink', [along(over + 1.5, -1), along(over + 1.5, BLADE.handle - 1), along(over + HANDLE, BLADE.handle - 1), along(over + HANDLE, -1)])];
}

const strip = (ring: readonly Vec2[]): readonly Mark[] => [area('panel', ring), outline(pens.cut, ring)];

/** The knife laid on one strip: it leans the way it is pulled, its sharp edge ahead. */
export function knifeOnStrip(at: AtStrip): readonly Mark[] {
  const { ring, bevel, over } = bladeOf(at);
  return [...handleOf(at, over), ...strip(stripRing(at)), area('white', ring), outline(pens.cut, ring), line(pens.edge, ...bevel)];
}

/** The knife between its two strips, tape round both: in the strip in front of it its edges are dashed. */
export function boundKnife(at: AtStrip): readonly Mark[] {
  const { ring, over } = bladeOf(at);
  const [middle, face] = at.foot;
  const [tip, heel, edge, back] = ring as [Vec2, Vec2, Vec2, Vec2];
  const inStrip = (low: Vec2, high: Vec2): readonly [Vec2, Vec2] => [[low[0] + ((high[0] - low[0]) * (low[1] - face)) / (low[1] - high[1]), face], high];
  const top = face - STRIP.high * at.scale;
  return [
    ...strip(stripRing({ ...at, foot: [middle + BEHIND, face - BEHIND] })), ...handleOf(at, over), area('white', ring), outline(pens.cut, ring), ...strip(stripRing(at)),
    line(pens.hidden, ...inStrip(tip, back)), line(pens.hidden, ...inStrip(heel, edge)),
    area('ink', cornersOf({ x: middle - TAPED / 2, y: top - BEHIND, width: TAPED, height: face - top + BEHIND + 0.6 })),
  ];
}
