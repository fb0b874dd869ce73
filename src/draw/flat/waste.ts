import type { Pattern, Vec2 } from '../../model/index.ts';
import { cornersOf } from '../kit/geometry.ts';
import { hatching } from '../kit/hatching.ts';
import { area, line, outline, type Mark } from '../kit/marks.ts';
import { earlier, pens } from '../kit/pens.ts';
import type { Box } from '../types.ts';

/** A panel that is cut out of its blank: what is left over is waste. Any unit of length. */
export type CutOut = Pick<Pattern, 'outline' | 'min' | 'max'>;

/** From line to line of the hatching of small pictures, mm of paper. */
const PITCH = 2.2;

/** A piece of waste: hatched, as where it is cut off. */
export const wasteMarks = (ring: readonly Vec2[]): readonly Mark[] =>
  [area('white', ring), ...hatching(ring, PITCH).map(([from, to]) => line(earlier(pens.edge), from, to)), outline(pens.cut, ring)];

/** The panel small in the middle of a box, mm of paper, in what is cut off it where that is told. */
export function cutOutMarks({ outline: ring, min, max }: CutOut, box: Box, isWasteShown: boolean): readonly Mark[] {
  const scale = Math.min(box.width / (max[0] - min[0]), box.height / (max[1] - min[1]));
  const middle: Vec2 = [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2];
  const at = ([x, y]: Vec2): Vec2 => [box.x + box.width / 2 + (x - middle[0]) * scale, box.y + box.height / 2 - (y - middle[1]) * scale];
  const [width, height] = [(max[0] - min[0]) * scale, (max[1] - min[1]) * scale];
  const blank = cornersOf({ x: box.x + (box.width - width) / 2, y: box.y + (box.height - height) / 2, width, height });
  return [...(isWasteShown ? wasteMarks(blank) : []), area('panel', ring.map(at)), outline(pens.cut, ring.map(at))];
}
