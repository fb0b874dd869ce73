import type { Vec2 } from '../../model/index.ts';
import { onPaper, type Fit } from '../kit/fit.ts';
import type { Mark } from '../kit/marks.ts';
import { faceSign, pennant, type SignSeen } from './marked-face.ts';

/** From the inside lines to the sign, mm of paper, and the least that it is drawn at. */
const clear = 3.5;
const least = 0.7;

/** The sign on the middle part of a panel, near its lower left corner, where nothing is cut off: `half` are half its sides, mm. On the far face it is near the lower right one. */
export function signOnPattern([x, y]: Vec2, view: Fit, seen: SignSeen): readonly Mark[] {
  const way = seen === 'behind' ? 1 : -1;
  const size = Math.max(least, Math.min(1, (2 * y * view.scale - 2 * clear) / pennant.mast));
  const [cornerX, cornerY] = onPaper(view, [way * x, -y]);
  return faceSign([cornerX - way * clear, cornerY - clear * size], seen, size);
}
