import type { LengthPiece, SawRules } from '../../src/cut/lengths/index.ts';

/**
 * Stock tubes that first fit decreasing takes: longest first, each piece into the first tube with room (D. S. Johnson
 * 1973, from memory). Pieces give up their share of the cuts that find no room beside them, within the play.
 */
export function firstFit(pieces: readonly LengthPiece[], stock: number, { kerf, play }: SawRules): number {
  const lengths = pieces.flatMap(({ length, count }) => Array.from({ length: count }, () => length)).sort((a, b) => b - a);
  const tubes: number[][] = [];
  for (const length of lengths) {
    const open = tubes.find((cut) => {
      const filled = cut.reduce((sum, each) => sum + each, length);
      return filled <= stock + 1e-9 && filled + kerf * cut.length - stock <= play * (cut.length + 1);
    });
    if (open === undefined) tubes.push([length]);
    else open.push(length);
  }
  return tubes.length;
}
