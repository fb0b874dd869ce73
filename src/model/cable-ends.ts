import { jointPorts } from './joint-ports.ts';
import type { Model } from './types.ts';

/** What a cable is cut longer for and where its second loop is tied, mm: lengths of a thin cord, common practice, no source. */
const ENDS = {
  /** Doubled for the loop at its end, with the knot. */
  loop: 205,
  /** Doubled for the loop in its middle, with the knot. */
  second: 195,
  /** From that loop to the stud. */
  before: 150,
  /** From that loop round the stud and back through it, two hitches and a hand's hold. */
  tail: 600,
} as const;

/** How a cable is cut and tied. Lengths in mm. */
export interface CableEnds {
  /** Of the piece that is cut. */
  readonly cut: number;
  /** From stud to stud: the two stretches that follow. */
  readonly length: number;
  /** From the inside of the loop at its end to that of the second one. */
  readonly between: number;
  /** From the second loop to the stud. */
  readonly before: number;
  /** What of the cut length goes into the loop at the end with its knot, and into the second one. */
  readonly loops: readonly [end: number, second: number];
}

/** A cable that is to be taut between two studs, `length` mm from stud to stud. */
export function cableEnds(length: number): CableEnds {
  const told = Math.round(length);
  const between = told - ENDS.before;
  return { cut: Math.ceil((between + ENDS.loop + ENDS.second + ENDS.tail) / 10) * 10, length: told, between, before: ENDS.before, loops: [ENDS.loop, ENDS.second] };
}

/** How a loop is made of a cord's end, mm. */
export interface CableLoop {
  readonly cord: number;
  /** Of the peg's head that it goes over. */
  readonly head: number;
  /** From the knot drawn home to the inside of the loop's tip. */
  readonly inside: number;
  /** Of the end that stands out from the knot. */
  readonly tail: number;
  /** Of the end that is laid back along the cord: loop, knot and tail. */
  readonly doubled: number;
  /** What the knot takes of each of its two cords. */
  readonly knot: number;
}

/** What an overhand knot in a doubled cord takes of each cord, and what stands out from it, by the cord's diameter: common practice, no source. */
const KNOT = { takes: 15, tail: 8 } as const;

/** The loops of a model's cables: laid flat so long that they go over the widest head of a peg with a cord's width to spare, rounded up to 5 mm. */
export function cableLoop({ parts, kit }: Pick<Model, 'parts' | 'kit'>): CableLoop {
  const cord = kit.cable.diameter;
  const studs = parts.flatMap(({ shape }) => (jointPorts(shape)?.ports ?? []).flatMap((port) => (port.is === 'stud' ? [port.headDiameter] : [])));
  const head = Math.max(0, ...studs);
  const [inside, tail, knot] = [Math.ceil(((Math.PI / 2) * head + cord) / 5) * 5, KNOT.tail * cord, KNOT.takes * cord];
  return { cord, head, inside, tail, knot, doubled: Math.ceil((inside + knot + tail) / 10) * 10 };
}

/** kg hung on the middle of a taut cable, and N that it then pulls with at the least: our default, all knots drawn home. */
const PULL = { hung: 1, taut: 100 } as const;

/** How far a cable of that length gives way under the test's mass at the most, mm, rounded down to 5: a string's statics (C), `m g L / 4 T`. */
export const cableTest = (length: number): { readonly mass: number; readonly most: number } =>
  ({ mass: PULL.hung, most: Math.max(5, Math.floor((PULL.hung * 9.80665 * length) / (4 * PULL.taut) / 5) * 5) });
