/** The most this room accepts. Ours: far above any real item, low enough that a hostile file cannot stall the reader. */
export const limits = {
  /** Characters of one file. */
  fileLength: 100_000,
  /** Sections inside sections of one file. */
  fileDepth: 12,
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
