import type { Vec2 } from '../../model/index.ts';
import { area, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { toPicture } from '../kit/svg.ts';
import { threadMarks } from './thread.ts';
import type { DrawnPicture } from '../types.ts';

/** A wood screw, mm. */
export interface Screw {
  readonly diameter: number;
  readonly length: number;
  readonly headDiameter: number;
}

/** White round the screw, least thickness of its shank, mm of paper, and the threaded share of its length. */
const RIM = 1;
const LEAST = 1.8;
const THREADED = 0.65;

/** A wood screw upright, its head above and its point below, `scale` mm of paper for one mm. */
export function screwPicture(screw: Screw, scale: number): DrawnPicture {
  const wide = Math.max(screw.headDiameter * scale, 2 * LEAST);
  return toPicture({ width: wide + 2 * RIM, height: screw.length * scale + 2 * RIM }, screwMarks(screw, scale, [RIM + wide / 2, RIM]));
}

/** The marks of the picture, from the middle of the head's upper face. */
function screwMarks({ diameter, length, headDiameter }: Screw, scale: number, [x, y]: Vec2): readonly Mark[] {
  const [half, head, tip] = [Math.max(diameter * scale, LEAST) / 2, Math.max(headDiameter * scale, 2 * LEAST) / 2, y + length * scale];
  const neck = y + head - half * 0.4;
  const thread = tip - THREADED * length * scale;
  const body: readonly Vec2[] = [[x - head, y], [x + head, y], [x + half, neck], [x + half, tip - 2.2 * half], [x, tip], [x - half, tip - 2.2 * half], [x - half, neck]];
  return [area('white', body), outline(pens.cut, body), ...threadMarks([x, thread], [x, tip - 2.2 * half], half)];
}
