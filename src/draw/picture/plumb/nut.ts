import type { HeldBy } from '../../../scene/index.ts';
import type { Vec2 } from '../../../model/index.ts';
import { discWindow } from '../../kit/clip.ts';
import type { Fit } from '../../kit/fit.ts';
import { arrowhead, circle, line, type Mark } from '../../kit/marks.ts';
import { band, pens } from '../../kit/pens.ts';
import type { LineDrawer } from '../line-drawer.ts';
import { clippedTo, elevationMarks, elevationOf, onPlane } from '../elevation.ts';

/** What is shown round a nut, mm, and the radius of its ring, mm of paper. */
const SHOWN = 44;
const RING = 12.5;
/** The arrow round it, and the bends of its line. */
const ARROW = 15.2;
const BENDS = 12;

/** A nut on its pin in a ring, and that it is turned a quarter: loosened (against the clock) or tightened. */
export function nutTurned({ closeUp: { bodies, at, view } }: Extract<HeldBy, { by: 'nuts' }>, way: 'loosened' | 'tightened', [x, y]: Vec2, draw: LineDrawer): readonly Mark[] {
  const whole = elevationOf(bodies, view, draw);
  const centre = onPlane(whole, at);
  const scale = RING / SHOWN;
  const fit: Fit = { scale, origin: [x - centre[0] * scale, y + centre[1] * scale] };
  const [from, to] = way === 'loosened' ? [-0.25, -0.75] : [-0.75, -0.25];
  const on = (turn: number): Vec2 => [x + ARROW * Math.cos(turn * Math.PI), y + ARROW * Math.sin(turn * Math.PI)];
  const ends = to - Math.sign(to - from) * 0.09;
  const head: Vec2 = [Math.sin(to * Math.PI) * Math.sign(from - to), Math.cos(to * Math.PI) * Math.sign(to - from)];
  return [
    ...elevationMarks(clippedTo(whole, discWindow(centre, SHOWN)), fit), circle([x, y], RING, pens.enlarged),
    line(band(1.6), ...Array.from({ length: BENDS + 1 }, (_, step) => on(from + ((ends - from) * step) / BENDS))), arrowhead(on(to), head, 5.2, 4.6),
  ];
}
