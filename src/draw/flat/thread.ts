import type { Vec2 } from '../../model/index.ts';
import { apart, minus, plus, unit } from '../kit/geometry.ts';
import { line, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';

/** Turns of a thread: from one to the next, how much each rises across the shank, how far it stands out on either side, and its line, mm of paper; on a thin shank they are no smaller than this share of that. */
const TURN = { pitch: 1.3, rise: 0.8, out: 0.45, wide: 0.4, least: 0.65 } as const;
/** Half of a shank on which they are as large as told, mm of paper. */
const STOUT = 0.9;

/** The thread of a shank from one place of its axis to another, half of whose width is told, mm of paper: slanted lines across it. */
export function threadMarks(from: Vec2, to: Vec2, half: number): readonly Mark[] {
  const way = unit(minus(to, from));
  if (way === null) return [];
  const size = Math.max(TURN.least, Math.min(1, half / STOUT));
  const across: Vec2 = [-way[1], way[0]];
  const pen = { ...pens.motion, width: size * TURN.wide };
  const count = Math.floor(apart(from, to) / (size * TURN.pitch));
  return Array.from({ length: count }, (_, index): Mark => {
    const at = plus(from, way, index * size * TURN.pitch);
    const out = half + size * TURN.out;
    return line(pen, plus(plus(at, way, size * TURN.rise), across, out), plus(at, across, -out));
  });
}
