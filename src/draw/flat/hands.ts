import type { Vec2 } from '../../model/index.ts';
import { area, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';

const pen = { ...pens.cut, width: 0.5, round: true } as const;

/** A finger's width, how far it reaches over what the hand is on, and the white between two; the palm behind the fingers and the arm; the thumb of a hand that pushes, mm of paper. */
const FINGER = { wide: 2.7, down: 3.4, gap: 0.3 } as const;
const PALM = 3.4;
const ARM = { half: 3, up: 5.4 } as const;
const THUMB = { wide: 2.6, out: 4 } as const;

/** How far a hand with its arm reaches back from what it is on, and how far its fingers reach to either side, mm of paper. */
export const HAND_HIGH = PALM + ARM.up;
export const HAND_HALF = 2 * FINGER.wide + 1.5 * FINGER.gap;

/** Places of a hand: so far across its fingers, so far forwards over what it is on; back towards its arm is less than nought. */
type OnHand = (across: number, on: number) => Vec2;

/** A hand that presses down from above: the middle of the upper face that it lies on; its fingers reach over that. Drawn at a size against its own. */
export const handDown = (at: Vec2, size = 1): readonly Mark[] => handOnto(at, [0, 1], size);

/** The same whose fingers reach along a way of length 1 from the edge at a place; the sleeve of the second person has stripes, as the second figure among the people has. */
export const handOnto = ([x, y]: Vec2, [dx, dy]: Vec2, size = 1, person: 1 | 2 = 1): readonly Mark[] => {
  const at: OnHand = (across, on) => [x + size * (across * dy + on * dx), y + size * (on * dy - across * dx)];
  return [...hand(at), ...(person === 2 ? stripes(at) : [])];
};

/** The same from below: the middle of the lower face that it holds. */
export const handUp = ([x, y]: Vec2): readonly Mark[] => hand((across, on) => [x + across, y - on]);

/** A hand that pushes to the right (1) or to the left (−1), at the middle of the edge that it pushes at: its fingers reach over that, its thumb is above. */
export function handPushing([x, y]: Vec2, way: number, person: 1 | 2 = 1): readonly Mark[] {
  const at: OnHand = (across, on) => [x + way * on, y + across];
  return [...thumb(at), ...hand(at), ...(person === 2 ? stripes(at) : [])];
}

/** The stripes of a sleeve, from its end on: how wide each is, and from one to the next, mm of paper. */
const STRIPE = { wide: 1.2, pitch: 2.3, count: 2 } as const;

const stripes = (at: OnHand): readonly Mark[] => stripesAcross(at, { from: -HAND_HIGH, to: -PALM }, { from: ARM.half, to: ARM.half + 0.6 });

/** Stripes across an arm from where its sleeve ends on paper to its wrist; half as wide there as told. */
export function stripesAcross(at: OnHand, along: Span, half: Span): readonly Mark[] {
  const way = Math.sign(along.to - along.from);
  const halfAt = (on: number): number => half.from + ((half.to - half.from) * (on - along.from)) / (along.to - along.from);
  return Array.from({ length: STRIPE.count }, (_, index): Mark => {
    const [low, high] = [along.from + way * index * STRIPE.pitch, along.from + way * (index * STRIPE.pitch + STRIPE.wide)];
    return area('ink', [at(-halfAt(low), low), at(halfAt(low), low), at(halfAt(high), high), at(-halfAt(high), high)]);
  });
}

interface Span {
  readonly from: number;
  readonly to: number;
}

function hand(at: OnHand): readonly Mark[] {
  const fingers = [-1.5, -0.5, 0.5, 1.5].map((place) => place * (FINGER.wide + FINGER.gap));
  const open: readonly Vec2[] = [at(-ARM.half, -HAND_HIGH), at(-ARM.half - 0.6, -PALM), at(-HAND_HALF, 0), at(HAND_HALF, 0), at(ARM.half + 0.6, -PALM), at(ARM.half, -HAND_HIGH)];
  return [
    area('white', open), line(pen, ...open.slice(0, 3)), line(pen, ...open.slice(3)),
    ...fingers.flatMap((middle): readonly Mark[] => {
      const radius = FINGER.wide / 2;
      const round = Array.from({ length: 9 }, (_, step): Vec2 => at(middle + radius * Math.cos((Math.PI * step) / 8), FINGER.down - radius + radius * Math.sin((Math.PI * step) / 8)));
      const ring: readonly Vec2[] = [at(middle + radius, -0.6), ...round, at(middle - radius, -0.6)];
      return [area('white', ring), outline(pen, ring)];
    }),
  ];
}

/** The thumb, out past the first finger, from behind the palm. */
function thumb(at: OnHand): readonly Mark[] {
  const radius = THUMB.wide / 2;
  const [from, to]: readonly [Vec2, Vec2] = [[-ARM.half, -PALM - 1.6], [-HAND_HALF - THUMB.out + radius, -0.4]];
  const far = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [dx, dy]: Vec2 = [(to[0] - from[0]) / far, (to[1] - from[1]) / far];
  const angle = Math.atan2(dy, dx);
  const tip = Array.from({ length: 9 }, (_, step): Vec2 => {
    const turned = angle - Math.PI / 2 + (Math.PI * step) / 8;
    return [to[0] + radius * Math.cos(turned), to[1] + radius * Math.sin(turned)];
  });
  const ring = [[from[0] + radius * dy, from[1] - radius * dx] as const, ...tip, [from[0] - radius * dy, from[1] + radius * dx] as const].map(([across, on]) => at(across, on));
  return [area('white', ring), outline(pen, ring)];
}

/** How high a pushing hand reaches over the place that it pushes at, with its thumb, mm of paper. */
export const PALM_HIGH = HAND_HALF + THUMB.out;
