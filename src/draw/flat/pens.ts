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

export const ink = '#000';
/** Lines of earlier steps: plain on a mono printer, on the panel too (luminance contrast 71 %), but behind the new ones. */
export const faded = '#848484';
export const white = '#fff';
/** Cut faces and the panel's own face: light enough for 2.5 mm figures to stand on, each 20 grey levels and more from white and from the other, which a 300 dpi mono printer keeps apart. */
export const coreTint = '#d2d2d2';
export const panelTint = '#e9e9e9';

/** How a line is drawn. The name is written into the picture, so that tests and readers of the file find it. */
export interface Pen {
  readonly name: string;
  readonly type: LineType;
  /** mm of paper. */
  readonly width: number;
  readonly colour: string;
}

const pen = (name: string, type: LineType, width: number): Pen => ({ name, type, width, colour: ink });

/** What each line on the panel means. The half-cut's thick dashes are our own choice: the standard has no line for it. */
/** The inside line is dotted: nobody shall cut along it. */
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
} as const;

/** The same line as left by an earlier step: thin and grey, its type kept. */
export function earlier(of: Pen): Pen {
  return { ...of, width: thin, colour: faded };
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
