import { black, placed, solid, straight, stroke, together, type Ink } from './ink.ts';

/** Shaft and head of an arrow, in units. */
export interface ArrowSize {
  readonly shaft: number;
  readonly head: number;
  readonly colour?: string;
}

const usual: ArrowSize = { shaft: 3, head: 9 };

/** A head whose tip is at (x, y), pointing along `angle`. */
const arrowHead = (x: number, y: number, angle: number, { head, colour = black }: ArrowSize): Ink =>
  placed(x, y, angle, solid(`M0 0L${-head} ${-head * 0.56}V${head * 0.56}z`, colour));

/** A straight arrow whose tip is at the second point. */
export function arrow(x1: number, y1: number, x2: number, y2: number, size: ArrowSize = usual): Ink {
  const length = Math.hypot(x2 - x1, y2 - y1);
  const back = (length - size.head * 0.8) / length;
  return together(
    stroke(straight(x1, y1, x1 + (x2 - x1) * back, y1 + (y2 - y1) * back), size.shaft, size.colour ?? black),
    arrowHead(x2, y2, (Math.atan2(y2 - y1, x2 - x1) * 180) / Math.PI, size),
  );
}

/** An arrow on a circle from angle `from` to angle `to`, in degrees clockwise from the right. */
export function arcArrow(x: number, y: number, radius: number, from: number, to: number, size: ArrowSize = usual): Ink {
  const turn = Math.sign(to - from);
  const headAngle = (size.head / radius) * (180 / Math.PI);
  const at = (degrees: number): readonly [number, number] => {
    const angle = (degrees * Math.PI) / 180;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  };
  const round = (value: number): number => Math.round(value * 100) / 100;
  const [x1, y1] = at(from);
  const [x2, y2] = at(to - turn * headAngle * 0.8);
  const [tipX, tipY] = at(to);
  const large = Math.abs(to - from) > 180 + headAngle ? 1 : 0;
  // The head lies on the chord of its own arc, so that it does not stick out of the curve.
  const heading = to + turn * 90 - (turn * headAngle) / 2;
  return together(
    stroke(`M${round(x1)} ${round(y1)}A${radius} ${radius} 0 ${large} ${turn > 0 ? 1 : 0} ${round(x2)} ${round(y2)}`, size.shaft, size.colour ?? black),
    arrowHead(tipX, tipY, heading, size),
  );
}
