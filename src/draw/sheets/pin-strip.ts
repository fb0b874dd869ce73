import type { Flap, Vec2 } from '../../model/index.ts';
import { linearDimension } from '../kit/dimension.ts';
import { capHeights } from '../kit/lettering.ts';
import { line } from '../kit/marks.ts';
import type { Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import type { Fit } from '../kit/fit.ts';
import { onStrip, stripHole, throughHole } from './strip-marks.ts';
import { stripWidth, type Strip } from './strip.ts';
import { tell } from '../../scene/index.ts';

const figureLane = 8.5;
/** From a pin to the middle of its figure above it, mm. */
const pinFigureOver = 7.5;
/** From a dimension line to the middle of its figure, mm. */
const figureOver = 2.9;
/** From the first pin to the dimension that says how far in the pins stand, mm. */
const dimensionUnder = 9;

/** What of a flap its gauge tells. */
export type PinnedFlap = Pick<Flap, 'from' | 'to' | 'pins' | 'edge' | 'pinLine' | 'corner'>;

/** One strip for each length of flap: its right edge lies on the tab's edge, its ends on the tab's ends. */
export function pinStrips(flaps: readonly PinnedFlap[], diameter: number): readonly Strip[] {
  return flaps.filter((flap, index, all) => all.findIndex((other) => alike(flap, other)) === index).map((flap) => pinStrip(flap, diameter));
}

const alike = (one: PinnedFlap, other: PinnedFlap): boolean => one.to - one.from === other.to - other.from && String(one.pins) === String(other.pins);

function pinStrip(flap: PinnedFlap, diameter: number): Strip {
  const length = flap.to - flap.from;
  const pins = [...flap.pins].sort((a, b) => a - b).map((pin) => pin - flap.from);
  const inFromEdge = flap.edge - flap.pinLine;
  const across = stripWidth - inFromEdge;
  return {
    kind: 'pins',
    length,
    figures: [
      ...pins.map((at) => ({ at: at - pinFigureOver, across: figureLane, told: tell.mm(at) })),
      { at: (pins[0] ?? 0) + dimensionUnder - figureOver, across: stripWidth - inFromEdge / 2, told: tell.mm(inFromEdge) },
    ],
    places: [0, length, ...pins, (pins[0] ?? 0) + dimensionUnder],
    draw: (view) => [
      ...pins.flatMap((at) => stripHole(view, at, across, throughHole(diameter))),
      ...tabOutline(view, flap, length),
      ...inDimension(view, pins[0] ?? 0, inFromEdge),
    ],
  };
}

/** The tab's ends, its edge and its snipped corners. */
function tabOutline(view: Fit, { corner }: PinnedFlap, length: number): readonly Mark[] {
  const spot = (at: number, across: number): Vec2 => onStrip(view, at, across);
  const snip = Math.min(corner, length / 2);
  return [line(pens.cut, spot(0, 0), spot(0, stripWidth - snip), spot(snip, stripWidth), spot(length - snip, stripWidth), spot(length, stripWidth - snip), spot(length, 0))];
}

/** Its figure is among the strip's own, which survive the cutting into segments. */
function inDimension(view: Fit, at: number, inFromEdge: number): readonly Mark[] {
  const [left, y] = onStrip(view, at + dimensionUnder, stripWidth - inFromEdge);
  const [right] = onStrip(view, at, stripWidth);
  return linearDimension({ axis: 'x', told: tell.mm(inFromEdge), ends: [left, right], line: y, feature: y - dimensionUnder, cap: capHeights.pattern });
}
