import type { Measured } from './units.ts';

/**
 * The least size but nought, and the most, of a number that stands in a file or comes of an expression, in base units;
 * plain numbers too. Ours: a hundredth of a hair to ten times any hall, and so on; nothing real is outside.
 */
export const ranges: Readonly<Record<Measured | 'ratio', readonly [least: number, most: number]>> = {
  length: [1e-3, 1e6],
  angle: [1e-6, 1e3],
  force: [1e-6, 1e9],
  mass: [1e-9, 1e6],
  area: [1e-6, 1e12],
  stress: [1e-6, 1e7],
  density: [1e-12, 1e-3],
  ratio: [1e-9, 1e9],
};

/** The most this room accepts. Ours: far above any real item, low enough that a hostile file cannot stall the reader. */
export const limits = {
  /** Characters of one file. */
  fileLength: 100_000,
  /** Sections inside sections of one file. */
  fileDepth: 12,
  /** Characters of a name of anything. */
  nameLength: 60,
  /** Characters of a figure with its unit. */
  figureLength: 60,
  /** Characters by which something is called from elsewhere: a name with its indexes, a kind of work with its side. */
  callLength: 120,
  /** Characters of a sentence. */
  sentenceLength: 500,
  /** Characters of one range. */
  rangeLength: 100,
  /** Characters of one expression. */
  expressionLength: 200,
  /** Brackets and operators inside one another in one expression. */
  expressionDepth: 20,
  /** Characters of a found value shown in a message. */
  foundLength: 60,
  /** Lines of one section or list. */
  entries: 200,
  /** Pieces of one kind in one item. */
  pieceCount: 50,
  /** Kinds of one sort in a kit. */
  kinds: 50,
  /** Ports of one joint. */
  ports: 12,
  /** Points, or parts of the other kinds, of one item: all repeats together. */
  parts: 2000,
  /** Indexes of one repeat. */
  indexes: 3,
} as const;
