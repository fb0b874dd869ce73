import { tell } from '../../scene/index.ts';
import { cutFace } from '../kit/cut-face.ts';
import { linearDimension } from '../kit/dimension.ts';
import { cornersOf } from '../kit/geometry.ts';
import { capHeights } from '../kit/lettering.ts';
import { arrowhead, line, type Mark } from '../kit/marks.ts';
import { band, pens } from '../kit/pens.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import type { DrawnPicture } from '../types.ts';
import { fistRound } from './fist.ts';
import { boundKnife, tapeAcross, tipOf, type AtStrip } from './leaning-knife.ts';
import { paddedKnife, STRIP } from './padded-knife.ts';
import { plate } from './punched-section.ts';
import { numbered, onwards, pressedDown, type Firmness } from './trial.ts';

/** A knife between its strips is pulled along a line until it is so deep in a panel, mm. */
export interface Pulled {
  readonly depth: number;
  readonly thickness: number;
  readonly skin: number;
}

const HIGH = 58;
const cap = capHeights.step;
/** mm of paper for one mm from the side. */
const SCALE = 0.42;
/** From the side, mm of paper: the middle of the strip, the face that it stands on, the panel beyond the strip. */
const SIDE = { middle: 40, face: HIGH - 9, beyond: 6 } as const;
/** Half of a section, and the panel's thickness in it, mm of paper. */
const HALF = 8.6;
const THICK = 9;
/** A strip in section, and the middle of the arrow beside it from the blade, mm of paper. */
const PAD = 5.2;
const PRESS = 9.6;
/** Shares of the depth that the pulls reach, one after the other, and the arrow of each: firmer from pull to pull. */
const PULLS: readonly { readonly share: number; readonly pressed: Firmness }[] = [
  { share: 1 / 3, pressed: { shaft: 0.4, long: 2.8, wide: 1.8 } }, { share: 2 / 3, pressed: { shaft: 1.1, long: 3.6, wide: 3 } }, { share: 1, pressed: { shaft: 1.9, long: 4.6, wide: 4.4 } },
];

/**
 * From the side the knife between its strips on the panel: it leans the way it is pulled, its sharp edge ahead, the strips along the cut;
 * a hand round its body; and across the cut how it goes deeper with each pull, a light one, then harder ones, until the strips stand on the face.
 */
export const pullPicture = (pulled: Pulled, number: number, { width }: Pick<Paper, 'width'>): DrawnPicture => toPicture({ width, height: HIGH }, pullMarks(pulled, number, width));

/** The marks of the picture, for the tests. */
export const pullMarks = (pulled: Pulled, number: number, width: number): readonly Mark[] => [...numbered([[4.5, 4.6]], number), ...besideStrip(pulled), ...deeper(pulled, width)];

/** The knife between its strips, which stand on the panel, its tip as deep as told. */
function besideStrip({ depth, thickness }: Pulled): readonly Mark[] {
  const { middle, face } = SIDE;
  const at: AtStrip = { foot: [middle, face], depth, scale: SCALE };
  const [left, right] = [middle - (STRIP.long * SCALE) / 2, middle + (STRIP.long * SCALE) / 2];
  const [tipAt, level] = [tipOf(at), face - (STRIP.high * SCALE) / 2];
  const panel = cornersOf({ x: left - SIDE.beyond, y: face, width: right - left + 2 * SIDE.beyond, height: thickness * SCALE });
  return [
    ...cutFace(panel), ...boundKnife(at), ...tapeAcross(at).marks, ...fistRound(at),
    ...linearDimension({ axis: 'y', told: tell.mm(depth), ends: [tipAt[1], face], line: left - SIDE.beyond - 6, feature: left - SIDE.beyond, cap, upright: true }),
    line(pens.dimension, [left - SIDE.beyond - 7, tipAt[1]], tipAt),
    line(band(1), [right + 5, level], [right + 10, level]), arrowhead([right + 14, level], [1, 0], 5, 3.6),
  ];
}

/** Across the cut, pull after pull. */
function deeper({ depth, thickness, skin }: Pulled, width: number): readonly Mark[] {
  const scale = THICK / thickness;
  const from = 99;
  const each = (width - from - HALF - 1) / (PULLS.length - 1);
  const face = SIDE.face - THICK / 2;
  return PULLS.flatMap(({ share, pressed }, index): readonly Mark[] => {
    const x = from + index * each;
    const deep = depth * share * scale;
    const off = (depth * scale) - deep;
    return [
      ...(index === 0 ? [] : onwards([x - each / 2 - 3.5, face + THICK / 2])),
      ...plate({ x: x - HALF, y: face, width: 2 * HALF, height: THICK }, skin * scale), ...paddedKnife([x, face - off], depth * scale, { up: 20, wide: PAD }),
      ...pressedDown([x - PRESS, face - off - 13], face - off - 3.5, pressed),
    ];
  });
}
