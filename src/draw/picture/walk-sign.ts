import type { Vec2 } from '../../model/index.ts';
import type { Stand, Walk } from '../../scene/index.ts';
import { area, arrowhead, circle, line, outline, type Mark } from '../kit/marks.ts';
import { band, pens } from '../kit/pens.ts';

/** The sign's size, mm of paper. */
export const walkSign = { width: 24, height: 36 } as const;

/** The work seen from above, its front towards the reader, and its middle. */
const WORK = { wide: 11, high: 8 } as const;
const MIDDLE: Vec2 = [11.5, walkSign.height / 2];

/** Where one stands, as an angle round the work from before it, rad to the right, and how far from its middle, mm. */
const STANDS: Readonly<Record<Stand, { readonly angle: number; readonly far: number }>> = {
  front: { angle: 0, far: 12 },
  left: { angle: -Math.PI / 2, far: 9.4 },
  behind: { angle: Math.PI, far: 12 },
};

/** How far the way is from the middle, beside and before the work, and how much of it is clear of who stands at its ends, mm. */
const WAY = { beside: 10, before: 11, clear: 5.6 } as const;
const HEAD = { length: 3.6, width: 3 } as const;

/**
 * Who works walks round the work, which stays where it is: the work from above, the worker pale where he was and black
 * where he is now, looking at it, an arrow from one to the other. mm of paper from the upper left corner.
 */
export function walkMarks({ was, is }: Walk): readonly Mark[] {
  const { wide, high } = WORK;
  const work = [[-wide / 2, -high / 2], [wide / 2, -high / 2], [wide / 2, high / 2], [-wide / 2, high / 2]].map(([x = 0, y = 0]): Vec2 => [MIDDLE[0] + x, MIDDLE[1] + y]);
  return [
    area('panel', work), outline(pens.motion, work),
    ...worker(is, true),
    ...(was === is ? [] : [...worker(was, false), ...way(was, is)]),
  ];
}

/** Head and shoulders from above, the nose towards the work. */
function worker(stand: Stand, isNow: boolean): readonly Mark[] {
  const { angle, far } = STANDS[stand];
  const at = (out: number, along: number): Vec2 => [MIDDLE[0] + out * Math.sin(angle) + along * Math.cos(angle), MIDDLE[1] + out * Math.cos(angle) - along * Math.sin(angle)];
  const shoulders = Array.from({ length: 17 }, (_, step): Vec2 => at(far + 2 * Math.sin((2 * Math.PI * step) / 16), 4.4 * Math.cos((2 * Math.PI * step) / 16)));
  const colour = isNow ? 'ink' : 'faded';
  return [
    ...(isNow ? [area('ink', shoulders)] : [area('white', shoulders), outline({ ...pens.edge, colour }, shoulders)]),
    circle(at(far - 0.6, 0), 2, { ...pens.edge, colour }, 'white'),
    line({ ...pens.motion, colour }, at(far - 2.6, 0), at(far - 4.2, 0)),
  ];
}

/** Round the work from one stand to the other: to what is behind it on the right, but on the left where one of them is there. */
function way(was: Stand, is: Stand): readonly Mark[] {
  const isOnLeft = was === 'left' || is === 'left';
  const angleOf = (stand: Stand): number => (isOnLeft && stand === 'behind' ? -Math.PI : STANDS[stand].angle);
  const [from, to] = [angleOf(was), angleOf(is)];
  const onWay = (mm: number): Vec2 => {
    const angle = from + Math.sign(to - from) * (mm / WAY.beside);
    return [MIDDLE[0] + WAY.beside * Math.sin(angle), MIDDLE[1] + WAY.before * Math.cos(angle)];
  };
  const whole = Math.abs(to - from) * WAY.beside;
  const tip = onWay(whole - WAY.clear + 1);
  const neck = onWay(whole - WAY.clear + 1 - HEAD.length);
  const path = Array.from({ length: 17 }, (_, step) => onWay(WAY.clear - 1 + ((whole - 2 * WAY.clear + 2 - HEAD.length) * step) / 16));
  return [line(band(1), ...path, neck), arrowhead(tip, [tip[0] - neck[0], tip[1] - neck[1]], HEAD.length, HEAD.width)];
}
