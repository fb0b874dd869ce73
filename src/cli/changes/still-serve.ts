import type { Pieces, StillServing } from '../../booklet/index.ts';

/** What was cut, and what is needed now; lengths in mm. */
export interface Sawn {
  readonly pieces: readonly Pieces[];
  readonly offCuts: readonly number[];
  readonly kerf: number;
}

/** Lengths that are told alike are alike, mm. */
const ALIKE = 0.05;

type Piece = Omit<Pieces, 'count'>;

/**
 * Each piece that is needed comes from one cut before: of its length, else from the shortest longer one of its kind from
 * which a saw can take something, else from an off-cut. The longest are found first.
 */
export function stillServing(before: Sawn, needed: readonly Pieces[]): StillServing {
  const cut = singly(before.pieces);
  const offCuts = [...before.offCuts];
  const asTheyAre: Piece[] = [];
  const left = singly(needed).filter((need) => !moved(cut.findIndex((piece) => piece.kind === need.kind && Math.abs(piece.length - need.length) <= ALIKE), cut, asTheyAre));
  const shortened: (Piece & { readonly to: number })[] = [];
  const lacking = left.filter(({ kind, length: to }) => {
    const at = shortest(cut.map((piece) => (piece.kind === kind ? piece.length : 0)), to + before.kerf);
    const [piece] = at < 0 ? [] : cut.splice(at, 1);
    if (piece !== undefined) shortened.push({ ...piece, to });
    return piece === undefined;
  });
  const fromOffCuts = lacking.filter(({ length }) => {
    const at = shortest(offCuts, length);
    if (at >= 0) offCuts[at] = (offCuts[at] ?? 0) - length - before.kerf;
    return at >= 0;
  });
  return { asTheyAre: counted(asTheyAre), shortened: counted(shortened), fromOffCuts: counted(fromOffCuts) };
}

/** Moves the piece at a place from one list to another, if there is one. */
function moved(at: number, from: Piece[], to: Piece[]): boolean {
  const [piece] = at < 0 ? [] : from.splice(at, 1);
  if (piece !== undefined) to.push(piece);
  return piece !== undefined;
}

/** The place of the shortest of these that is no shorter than `least`, or -1. */
const shortest = (lengths: readonly number[], least: number): number =>
  lengths.reduce((found, length, at) => (length >= least && (found < 0 || length < (lengths[found] ?? 0)) ? at : found), -1);

const singly = (pieces: readonly Pieces[]): Piece[] =>
  pieces.flatMap(({ kind, length, count }) => Array.from({ length: count }, () => ({ kind, length }))).sort((one, other) => other.length - one.length || (one.kind < other.kind ? -1 : Number(one.kind > other.kind)));

/** Those that are alike together. */
function counted<One extends Piece>(pieces: readonly One[]): readonly (One & { readonly count: number })[] {
  const together = new Map<string, One & { readonly count: number }>();
  for (const piece of pieces) {
    const key = JSON.stringify(piece);
    together.set(key, { ...piece, count: (together.get(key)?.count ?? 0) + 1 });
  }
  return [...together.values()];
}
