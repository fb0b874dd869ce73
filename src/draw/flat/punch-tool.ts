import type { Vec2 } from '../../model/index.ts';
import { cornersOf } from '../kit/geometry.ts';
import { area, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';

/** Over its shaft a punch has a black body and a cap that is hit: how high they are, and how far each reaches past what is under it, mm of paper. */
const BODY = { high: 5.2, out: 1.6 } as const;
const CAP = { high: 2, out: 1.4 } as const;
/** From the face to the body, at least, mm of paper: tape has room there. */
const SHAFT = 3.4;

/** Height of a punch over the face that it is in, mm of paper. */
export const PUNCH_HIGH = SHAFT + BODY.high + CAP.high;

/** A punch as among the tools, upright, its tip at a place, half as wide as told, its body over a face; mm of paper. */
export function punchTool([x, tip]: Vec2, half: number, face: number): readonly Mark[] {
  const foot = face - SHAFT;
  const [body, cap] = [half + BODY.out, half + BODY.out + CAP.out];
  const shaft = cornersOf({ x: x - half, y: foot - 0.5, width: 2 * half, height: tip - foot + 0.5 });
  const top = cornersOf({ x: x - cap, y: foot - BODY.high - CAP.high, width: 2 * cap, height: CAP.high });
  return [
    area('white', shaft), outline(pens.cut, shaft),
    area('ink', [[x - half - 0.4, foot], [x - body, foot - 1.6], [x - body, foot - BODY.high], [x + body, foot - BODY.high], [x + body, foot - 1.6], [x + half + 0.4, foot]]),
    area('white', top), outline(pens.cut, top),
  ];
}
