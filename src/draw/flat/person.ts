import type { Vec2 } from '../../model/index.ts';
import { area, circle, line, type Mark } from '../kit/marks.ts';
import { band } from '../kit/pens.ts';

/** One of the two people, as among the pictograms: how high, mm of paper, and what parts of that the head, the trunk with its arms and the legs are. */
export const PERSON_HIGH = 9.5;
const HEAD = { middle: 0.88, radius: 0.115 } as const;
const TRUNK = { top: 0.72, low: 0.36, half: [0.155, 0.105] } as const;
const ARM = { at: [0.155, 0.215], low: 0.4, wide: 0.08 } as const;
const LEG = { at: [0.06, 0.08], wide: 0.095 } as const;
/** The stripes of the second one's shirt: how high the lower sides are, and how wide. */
const STRIPES = { low: [0.44, 0.57], wide: 0.05, half: 0.27 } as const;

/** The one who works, black, or the second one, whose shirt is striped as the sleeves of the hands that hold; where the feet stand. */
export function personMarks([x, foot]: Vec2, person: 1 | 2): readonly Mark[] {
  const at = (across: number, up: number): Vec2 => [x + across * PERSON_HIGH, foot - up * PERSON_HIGH];
  const [above, below] = TRUNK.half;
  return [
    circle(at(0, HEAD.middle), HEAD.radius * PERSON_HIGH, null, 'ink'),
    area('ink', [at(-above, TRUNK.top), at(above, TRUNK.top), at(below, TRUNK.low), at(-below, TRUNK.low)]),
    ...[-1, 1].flatMap((side): readonly Mark[] => [
      line(band(ARM.wide * PERSON_HIGH), at(side * ARM.at[0], TRUNK.top - ARM.wide / 2), at(side * ARM.at[1], ARM.low)),
      line(band(LEG.wide * PERSON_HIGH), at(side * LEG.at[0], TRUNK.low + 0.02), at(side * LEG.at[1], 0)),
    ]),
    ...(person === 1 ? [] : STRIPES.low.map((low): Mark => area('white', [at(-STRIPES.half, low), at(STRIPES.half, low), at(STRIPES.half, low + STRIPES.wide), at(-STRIPES.half, low + STRIPES.wide)]))),
  ];
}
