import type { Colour } from './colours.ts';

/**
 * Line types by ISO 128-20. Element lengths are told in line widths d: dash 12, gap 3, long dash 24,
 * dot at most 0.5; thick and thin stand 2 : 1.
 */
export type LineType = 'continuous' | 'dotted' | 'dashed' | 'long-dash-dot' | 'long-dash-double-dot';

const dash = 12;
const gap = 3;
const longDash = 24;
const dot = 0.5;

const elements: Readonly<Record<LineType, readonly number[]>> = {
  continuous: [],
  dotted: [dot, gap],
  dashed: [dash, gap],
  'long-dash-dot': [longDash, gap, dot, gap],
  'long-dash-double-dot': [longDash, gap, dot, gap, dot, gap],
};

/** Widths of the 0.5 group of ISO 128-20, in mm of paper. */
export const thick = 0.5;
export const thin = 0.25;

/** How a line is drawn. The name is written into the picture, so that tests and readers of the file find it. */
export interface Pen {
  readonly name: string;
  readonly type: LineType;
  /** mm of paper. */
  readonly width: number;
  readonly colour: Colour;
  /** Round ends; straight ones unless told: dashes and cuts end where they end. */
  readonly round?: true;
}

const pen = (name: string, type: LineType, width: number): Pen => ({ name, type, width, colour: 'ink' });

/**
 * Every line of the drawings. On the panel: the half-cut's thick dashes are our own choice, the standard has no line
 * for it; the inside line is dotted, so that nobody cuts along it.
 */
export const pens = {
  cut: pen('cut', 'continuous', thick),
  crease: pen('crease', 'long-dash-double-dot', thin),
  halfCut: pen('half-cut', 'dashed', thick),
  inside: pen('inside', 'dotted', thick),
  newInside: pen('inside', 'dotted', thick * 1.4),
  hole: pen('hole', 'continuous', thin),
  centre: pen('centre', 'long-dash-dot', thin),
  dimension: pen('dimension', 'continuous', thin),
  edge: pen('edge', 'continuous', thin),
  ring: pen('ring', 'continuous', thin),
  motion: pen('motion', 'continuous', thick),
  /** On marking sheets, of the paper and not of the panel: where it is cut before it is laid over the next sheet, where a strip is folded, a strip's edge. */
  trim: { ...pen('trim', 'continuous', thin), colour: 'faded' },
  register: pen('register', 'continuous', thin),
  paperFold: pen('paper-fold', 'dashed', thin),
  strip: pen('strip', 'continuous', thin),
  bar: pen('bar', 'continuous', thick),
  tick: pen('tick', 'continuous', thin),
  map: pen('map', 'continuous', thin),
  cell: { ...pen('map', 'continuous', thin * 0.6), colour: 'faded' },
  damage: pen('damage', 'continuous', 0.18),
  /** Over the drawing of a scene: leaders, dimension lines, the rings of details and numerals. */
  leader: { ...pen('leader', 'continuous', thin), round: true },
  detail: { ...pen('detail', 'continuous', 0.35), round: true },
  enlarged: { ...pen('enlarged', 'continuous', thick), round: true },
  numeral: pen('numeral', 'continuous', 0.35),
  /** Edges of what stands behind other bodies. */
  hidden: pen('hidden', 'dashed', 0.18),
  sign: { ...pen('motion', 'continuous', thick), round: true },
} as const satisfies Readonly<Record<string, Pen>>;

/** The lines of bodies: those that bound a body or a step in depth, edges in one, bodies that are but a reminder, the floor. */
export type BodyPens = Readonly<Record<'outline' | 'edge' | 'pale' | 'floor', Pen>>;

const bodyPens = (wide: number, narrow: number): BodyPens => ({
  outline: { ...pen('outline', 'continuous', wide), round: true },
  edge: { ...pen('edge', 'continuous', narrow), round: true },
  pale: { ...pen('pale', 'continuous', narrow), colour: 'faded', round: true },
  floor: { ...pen('floor', 'continuous', narrow), round: true },
});

/** ISO 128-20 (R): thick to thin 2 : 1; the groups are 0.5/0.25 and 0.35/0.18. */
export const plainPens = bodyPens(thick, thin);
export const finePens = bodyPens(0.35, 0.18);

/** White on both sides of a leader or thin arrow, so that it reads across other lines, mm. */
export const haloWidth = 0.25;

/** The white under a line. */
export const haloOf = (width: number): Pen => ({ ...pen('halo', 'continuous', width + 2 * haloWidth), colour: 'white' });

/** A band as wide as an arrow's shaft. */
export const band = (width: number, colour: Colour = 'ink'): Pen => ({ ...pen('motion', 'continuous', width), colour });

/** The same line as left by an earlier step: thin and grey, its type kept. */
export function earlier(of: Pen): Pen {
  return { ...of, width: thin, colour: 'faded' };
}

/** Dash lengths of a line type in mm of paper; empty for a continuous line. */
export function dashLengths(type: LineType, width: number): readonly number[] {
  return elements[type].map((length) => length * width);
}

/**
 * Where in the pattern a line begins so that both of its ends are alike and lie in a dash: of the two
 * symmetric ways (a dash or a gap in the middle of the line) the one with the longer end dash. In mm.
 */
export function dashStart(type: LineType, width: number, lineLength: number): number {
  const lengths = dashLengths(type, width);
  const first = lengths[0];
  if (first === undefined) return 0;
  const period = lengths.reduce((sum, length) => sum + length, 0);
  const starts = [first / 2, (first + period) / 2].map((middle) => wrap(middle - lineLength / 2, period));
  const endDash = (start: number) => (start < first ? first - start : 0);
  const [a = 0, b = 0] = starts;
  return endDash(a) >= endDash(b) ? a : b;
}

function wrap(value: number, period: number): number {
  return ((value % period) + period) % period;
}
