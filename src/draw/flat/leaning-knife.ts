import type { Vec2 } from '../../model/index.ts';
import { cornersOf } from '../kit/geometry.ts';
import { area, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { KNIFE, STRIP, TAPED } from './padded-knife.ts';

/** How far the strip behind is seen beside the other, mm of paper. */
const BEHIND = 1.5;
/** The slide in the knife's body that the thumb pushes, mm: from the body's foot, its length and width. */
const SLIDE = { from: 22, long: 22, wide: 9 } as const;

/** A knife at a strip seen from the side: the middle of the strip's lower edge on paper, how far the tip stands out under that, mm, and mm of paper for one mm. */
export interface AtStrip {
  readonly foot: Vec2;
  readonly depth: number;
  readonly scale: number;
}

/** Where the tip of the blade is: the middle of the blade runs through the middle of the strip. */
export const tipOf = ({ foot: [middle, face], depth, scale }: AtStrip): Vec2 =>
  [middle + (KNIFE.blade / 2 / Math.cos(KNIFE.lean) - (STRIP.high / 2 + depth) * Math.tan(KNIFE.lean)) * scale, face + depth * scale];

/** The strip's box on paper. */
const stripRing = ({ foot: [middle, face], scale }: Pick<AtStrip, 'foot' | 'scale'>): readonly Vec2[] =>
  cornersOf({ x: middle - (STRIP.long * scale) / 2, y: face - STRIP.high * scale, width: STRIP.long * scale, height: STRIP.high * scale });

/** Half of what the knife's body is wider than its blade, mm. */
const OVER = (KNIFE.body - KNIFE.blade) / 2;

/** How far the blade is out of the knife's body, mm: the body's corner stands on the strip's upper edge. */
const outOf = (depth: number): number => (STRIP.high + depth + OVER * Math.sin(KNIFE.lean)) / Math.cos(KNIFE.lean);

/** A place so far up the knife from its tip, and so far from its sharp edge towards its back, mm. */
export const alongKnife = (at: AtStrip) => (far: number, across: number): Vec2 => {
  const [x, y] = tipOf(at);
  const [sin, cos] = [Math.sin(KNIFE.lean), Math.cos(KNIFE.lean)];
  return [x + at.scale * (far * sin - across * cos), y - at.scale * (far * cos + across * sin)];
};

/** The blade's outline: its tip, its heel, its back and its sharp edge where they leave the body. */
function bladeRing(at: AtStrip): readonly [Vec2, Vec2, Vec2, Vec2] {
  const [along, out] = [alongKnife(at), outOf(at.depth)];
  return [along(0, 0), along(KNIFE.blade * 0.45, KNIFE.blade), along(out, KNIFE.blade), along(out, 0)];
}

/** The knife's body from the strip's upper edge on, and the places on it for a hand: so far up from its foot, and so far from its edge on the sharp side, mm. */
export const onBody = (at: AtStrip) => (far: number, across: number): Vec2 => alongKnife(at)(outOf(at.depth) + far, across - OVER);

function bodyOf(at: AtStrip): readonly Mark[] {
  const on = onBody(at);
  const box = (from: number, to: number, near: number, off: number): readonly Vec2[] => [on(from, near), on(from, off), on(to, off), on(to, near)];
  const middle = KNIFE.body / 2;
  return [area('ink', box(0, KNIFE.long, 0, KNIFE.body)), area('white', box(SLIDE.from, SLIDE.from + SLIDE.long, middle - SLIDE.wide / 2, middle + SLIDE.wide / 2))];
}

const strip = (ring: readonly Vec2[]): readonly Mark[] => [area('panel', ring), outline(pens.cut, ring)];

/** The knife laid on one strip: it leans the way it is pulled, its sharp edge ahead, its body on the strip's edge, the blade alone beside the strip. */
export function knifeOnStrip(at: AtStrip): readonly Mark[] {
  const [blade, along] = [bladeRing(at), alongKnife(at)];
  return [...strip(stripRing(at)), area('white', blade), outline(pens.cut, blade), line(pens.edge, along(KNIFE.bevel * 0.45, KNIFE.bevel), along(outOf(at.depth), KNIFE.bevel)), ...bodyOf(at)];
}

/** The knife on its two strips, tape round both ends of them: the blade's edges are dashed in the strip in front of it. */
export function boundKnife(at: AtStrip): readonly Mark[] {
  const blade = bladeRing(at);
  const [tip, heel, back, edge] = blade;
  const [middle, face] = at.foot;
  const top = face - STRIP.high * at.scale;
  const level = (low: Vec2, high: Vec2, y: number): Vec2 => [low[0] + ((high[0] - low[0]) * (low[1] - y)) / (low[1] - high[1]), y];
  const taped = (from: number): Mark => area('ink', cornersOf({ x: middle + from * at.scale, y: top - BEHIND, width: (TAPED.to - TAPED.from) * at.scale, height: face - top + BEHIND + 0.6 }));
  return [
    ...strip(stripRing({ ...at, foot: [middle + BEHIND, face - BEHIND] })), area('white', blade), outline(pens.cut, blade), ...strip(stripRing(at)), ...bodyOf(at),
    line(pens.hidden, level(tip, edge, face), level(tip, edge, top)), line(pens.hidden, level(tip, heel, face), heel, level(heel, back, top)),
    taped(-TAPED.to), taped(TAPED.from),
  ];
}

/** Tape across knife and strips: how far from the middle of the strips it begins, how far up the body it goes over its far edge, its width, mm. */
const ACROSS = { along: 34, up: 24, wide: 15 } as const;

/** Tape from either end of the strips up across the knife's body, one over the other; where each begins on the strips. */
export function tapeAcross(at: AtStrip): { readonly marks: readonly Mark[]; readonly ends: readonly [Vec2, Vec2] } {
  const { foot: [middle, face], scale } = at;
  const level = face - (STRIP.high / 2) * scale;
  const ends: readonly [Vec2, Vec2] = [[middle - ACROSS.along * scale, level], [middle + ACROSS.along * scale, level]];
  const over: readonly [Vec2, Vec2] = [onBody(at)(ACROSS.up, 0), onBody(at)(ACROSS.up, KNIFE.body)];
  return { ends, marks: ends.flatMap((from, index) => tapeBand(from, over[index] ?? from, ACROSS.wide * scale)) };
}

/** A strip of tape from place to place, so wide, mm of paper; white at its edges, so that it is seen on what is black. */
function tapeBand([x, y]: Vec2, [toX, toY]: Vec2, wide: number): readonly Mark[] {
  const far = Math.hypot(toX - x, toY - y);
  const [across, up]: Vec2 = [(-(toY - y) / far) * (wide / 2), ((toX - x) / far) * (wide / 2)];
  const ring: readonly Vec2[] = [[x + across, y + up], [toX + across, toY + up], [toX - across, toY - up], [x - across, y - up]];
  return [area('ink', ring), outline({ ...pens.edge, width: 0.6, colour: 'white' }, ring)];
}
