import type { PanelHole, Vec2 } from '../../model/index.ts';
import { SIGN_INSET } from '../../scene/index.ts';
import { onPaper, type Fit } from '../kit/fit.ts';
import type { Mark } from '../kit/marks.ts';
import { faceSign, pennant, type SignSeen } from './marked-face.ts';

/** How far inside the lines the sign stands at least, mm of paper, and the least that it is drawn at. */
const clear = 3.5;
const least = 0.7;

/** From the middle of a hole to the sign, mm of paper, and how far the sign goes inwards at a time until it is clear of all. */
const fromHole = 2.5;
const step = 1;

/**
 * The sign on the middle part of a panel, towards its lower left corner, where nothing is cut off and no hole is punched flat:
 * `half` are half its sides, mm. On the far face it is near the lower right one.
 */
export function signOnPattern([x, y]: Vec2, view: Fit, seen: SignSeen, holes: readonly Pick<PanelHole, 'at' | 'punched'>[]): readonly Mark[] {
  const way = seen === 'behind' ? 1 : -1;
  const size = Math.max(least, Math.min(1, (2 * y * view.scale - 2 * clear) / pennant.mast));
  const [cornerX, cornerY] = onPaper(view, [way * x, -y]);
  const taken = holes.filter(({ punched }) => punched === 'flat').map(({ at }) => onPaper(view, at));
  const off: Vec2 = [Math.max(clear, SIGN_INSET * x * view.scale), Math.max(clear * size, SIGN_INSET * y * view.scale)];
  const footAt = (inwards: number): Vec2 => [cornerX - way * (off[0] + inwards), cornerY - off[1] - inwards];
  const isClear = ([footX, footY]: Vec2): boolean => taken.every(([holeX, holeY]) => {
    const [left, right] = [footX, footX - way * pennant.out * size].toSorted((a, b) => a - b) as [number, number];
    return Math.max(left - holeX, holeX - right, footY - pennant.mast * size - holeY, holeY - footY) > fromHole;
  });
  const most = Math.max(0, Math.min(x, y) * view.scale - clear - pennant.mast * size);
  const tries = Array.from({ length: Math.floor(most / step) + 1 }, (_, index) => footAt(index * step));
  return faceSign(tries.find(isClear) ?? footAt(0), seen, size);
}
