/** The known name most like `name` (fewest letters changed, added, lost or swapped), or null when none is near. */
export function nearestName(name: string, known: readonly string[]): string | null {
  const ranked = known
    .map((other) => ({ other, distance: letterDistance(name.toLowerCase(), other.toLowerCase()) }))
    .sort((a, b) => a.distance - b.distance || (a.other < b.other ? -1 : 1));
  const best = ranked[0];
  return best !== undefined && best.distance <= Math.max(1, Math.floor(best.other.length / 2)) ? best.other : null;
}

/** Edit distance with swaps of neighbours (optimal string alignment). Long names are cut: only likeness matters. */
function letterDistance(a: string, b: string): number {
  const from = [...a].slice(0, 40);
  const to = [...b].slice(0, 40);
  let before: number[] = [];
  let above = to.map((_, j) => j).concat(to.length);
  from.forEach((letter, i) => {
    const row = [i + 1];
    to.forEach((other, j) => {
      const change = (above[j] ?? 0) + (letter === other ? 0 : 1);
      const swapped = i > 0 && j > 0 && letter === to[j - 1] && from[i - 1] === other;
      const swap = swapped ? (before[j - 1] ?? Infinity) + 1 : Infinity;
      row.push(Math.min(change, swap, (row[j] ?? 0) + 1, (above[j + 1] ?? 0) + 1));
    });
    before = above;
    above = row;
  });
  return above[to.length] ?? 0;
}
