/** What a figure on a drawing tells: a number with its unit or meaning. It becomes a text where it is drawn, by `toldText`. */
export type Told =
  /** A length; its unit is understood, or printed beside it. */
  | { readonly as: 'length' | 'measure' | 'diameter' | 'radius' | 'at-most'; readonly mm: number }
  | { readonly as: 'angle'; readonly degrees: number }
  | { readonly as: 'mass'; readonly kg: number }
  | { readonly as: 'volume'; readonly litres: number }
  | { readonly as: 'sides'; readonly mm: readonly number[] }
  | { readonly as: 'times' | 'number'; readonly value: number }
  | { readonly as: 'out-of'; readonly value: number; readonly all: number }
  /** Names of pieces and tiles, marks of a print: the same in every language. */
  | { readonly as: 'letters'; readonly text: string };

export const tell = {
  mm: (mm: number): Told => ({ as: 'length', mm }),
  measure: (mm: number): Told => ({ as: 'measure', mm }),
  diameter: (mm: number): Told => ({ as: 'diameter', mm }),
  radius: (mm: number): Told => ({ as: 'radius', mm }),
  /** A limit, beside a place. */
  atMost: (mm: number): Told => ({ as: 'at-most', mm }),
  angle: (rad: number): Told => ({ as: 'angle', degrees: Math.round((rad * 180) / Math.PI) }),
  mass: (kg: number): Told => ({ as: 'mass', kg }),
  volume: (litres: number): Told => ({ as: 'volume', litres }),
  sides: (...mm: readonly number[]): Told => ({ as: 'sides', mm }),
  times: (value: number): Told => ({ as: 'times', value }),
  number: (value: number): Told => ({ as: 'number', value }),
  outOf: (value: number, all: number): Told => ({ as: 'out-of', value, all }),
  letters: (text: string): Told => ({ as: 'letters', text }),
} as const;
