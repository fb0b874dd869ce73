import type { Vec2 } from '../../model/index.ts';
import type { Mark } from './marks.ts';
import { arrowhead, circle, figure, line, toldWidth, upwards } from './marks.ts';
import { pens } from './pens.ts';
import { spread } from './spread.ts';
import { tell, type Told } from './told.ts';

/** Extension lines run this far past the dimension line, in mm of paper. */
const past = 1;
/** Clear space between a figure and the line below it. */
const clear = 1.1;
const headLength = 2.5;

/** `x` measures to the right, `y` measures up or down the paper. */
export type Axis = 'x' | 'y';

/** A point by its place along the measured direction and across it. */
function place(axis: Axis, along: number, across: number): Vec2 {
  return axis === 'x' ? [along, across] : [across, along];
}

/** One length between two places, by ISO 129-1 habits: figure above the line, read from below or from the right. */
export interface LinearDimension {
  readonly axis: Axis;
  readonly told: Told;
  /** Both ends along the measured direction, mm of paper. */
  readonly ends: Vec2;
  /** Where the dimension line lies across it. */
  readonly line: number;
  /** Where the extension lines begin across it: one place for both, or one for each end. */
  readonly feature: number | Vec2;
  readonly cap: number;
  /** A figure beside an upright dimension line that is read from below: for single numerals, where a 6 turned is a 9. */
  readonly upright?: boolean;
}

/** Marks of a single dimension. Where the figure does not fit between the ends it stands beyond the second end. */
export function linearDimension({ axis, told, ends, line: across, feature, cap, upright = false }: LinearDimension): readonly Mark[] {
  const [from, to] = ends;
  const way = Math.sign(to - from) || 1;
  const length = Math.abs(to - from);
  const width = toldWidth(told, cap, 400);
  const extent = upright ? cap : width;
  const fits = length >= extent + 1;
  const headsInside = length >= 2 * headLength + 1;
  const middle = fits ? (from + to) / 2 : to + way * (extent / 2 + (headsInside ? 1 : headLength + 1.5));
  const beyond = fits ? to : middle + (way * extent) / 2;
  const begin = headsInside ? from : from - way * (headLength + 1.5);
  const end = headsInside || !fits ? beyond : to + way * (headLength + 1.5);
  const features = typeof feature === 'number' ? [feature, feature] : feature;
  return [
    ...ends.map((at, index) => {
      const start = features[index] ?? across;
      return line(pens.dimension, place(axis, at, start), place(axis, at, across + Math.sign(across - start) * past));
    }),
    line(pens.dimension, place(axis, begin, across), place(axis, end, across)),
    arrowhead(place(axis, from, across), place(axis, headsInside ? -way : way, 0), headLength),
    arrowhead(place(axis, to, across), place(axis, headsInside ? way : -way, 0), headLength),
    figure(told, place(axis, middle, across - clear - (upright ? width : cap) / 2), cap, 400, axis === 'y' && !upright ? upwards : 0),
  ];
}

export interface Station {
  /** Along the measured direction, mm of paper. */
  readonly at: number;
  readonly told: Told;
  /** Where its extension line begins across the measured direction, when not at the common feature line. */
  readonly feature?: number;
}

/** Distances that all count from one datum, so that errors do not add up (ISO 129-1: superimposed running dimensioning). */
export interface RunningDimension {
  readonly axis: Axis;
  /** Along the measured direction: drawn as the origin circle with a 0. */
  readonly datum: number;
  readonly stations: readonly Station[];
  /** Where the dimension line lies across the measured direction. */
  readonly line: number;
  readonly feature: number;
  readonly cap: number;
  /** Figures may not leave this stretch of the measured direction. */
  readonly bounds?: Vec2;
}

/** Figures stand in line with their extension lines, upright where that is wide enough, else read from the right. */
export function runningDimension(dimension: RunningDimension): readonly Mark[] {
  const { axis, datum, stations, line: across, feature, cap } = dimension;
  const outwards = Math.sign(across - feature) || 1;
  const all = [{ at: datum, told: tell.mm(0) }, ...stations].sort((a, b) => a.at - b.at);
  const turned = axis === 'x' && !fitUpright(all, cap);
  const sizes = all.map(({ told }) => (axis === 'x' && !turned ? toldWidth(told, cap, 400) : cap));
  const between = axis === 'x' && !turned ? 1.5 : 1.3;
  const gaps = sizes.map((size, index) => (size + (sizes[index - 1] ?? size)) / 2 + between);
  const [least, most] = dimension.bounds ?? [-Infinity, Infinity];
  const figures = spread(all.map(({ at }) => at), gaps, least + (sizes[0] ?? 0) / 2, most - (sizes.at(-1) ?? 0) / 2);
  const jogs = figures.some((at, index) => Math.abs(at - (all[index]?.at ?? at)) > 0.05);
  const start = across + outwards * past;
  const knee = start + outwards * (jogs ? 3 : 0);
  const last = furthest(datum, stations);

  return [
    line(pens.dimension, place(axis, datum, across), place(axis, last, across)),
    ...all.flatMap((station, index) => extension(axis, station, figures[index] ?? station.at, [feature, start, knee])),
    ...heads(axis, datum, stations, across),
    circle(place(axis, datum, across), 0.9, pens.dimension, 'white'),
    ...all.map(({ told }, index) => {
      const reach = axis === 'y' || turned ? toldWidth(told, cap, 400) : cap;
      return figure(told, place(axis, figures[index] ?? 0, knee + outwards * (clear + reach / 2)), cap, 400, turned ? upwards : 0);
    }),
  ];
}

/** How far a running dimension reaches past its dimension line, in mm of paper: room to leave for its figures. */
export function runningReach(figures: readonly Told[], cap: number): number {
  return past + 3 + clear + Math.max(...figures.map((told) => toldWidth(told, cap, 400)), cap);
}

function fitUpright(stations: readonly Station[], cap: number): boolean {
  return stations.slice(1).every(({ at, told }, index) => {
    const before = stations[index];
    return !before || at - before.at >= (toldWidth(told, cap, 400) + toldWidth(before.told, cap, 400)) / 2 + 1.5;
  });
}

function extension(axis: Axis, station: Station, figureAt: number, [feature, start, knee]: readonly [number, number, number]): readonly Mark[] {
  const points = [
    place(axis, station.at, station.feature ?? feature),
    place(axis, station.at, start),
    ...(knee === start ? [] : [place(axis, figureAt, knee)]),
  ];
  return [line(pens.dimension, ...points)];
}

/** Arrowheads look away from the datum; where stations are too close for arrowheads, dots mark them. */
function heads(axis: Axis, datum: number, stations: readonly Station[], across: number): readonly Mark[] {
  const places = [datum, ...stations.map(({ at }) => at)].sort((a, b) => a - b);
  const closest = Math.min(...places.slice(1).map((at, index) => at - (places[index] ?? at)));
  return stations.map(({ at }) => closest < headLength + 0.3
    ? circle(place(axis, at, across), 0.5, null, pens.dimension.colour)
    : arrowhead(place(axis, at, across), place(axis, Math.sign(at - datum), 0), headLength));
}

function furthest(datum: number, stations: readonly Station[]): number {
  return stations.reduce((far, { at }) => (Math.abs(at - datum) > Math.abs(far - datum) ? at : far), datum);
}
