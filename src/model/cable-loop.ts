import { jointPorts } from './joint-ports.ts';
import type { Model } from './types.ts';

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
