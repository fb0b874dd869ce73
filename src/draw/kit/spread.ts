/**
 * Moves places on a line apart until each stands at least `gaps[i]` after the one before it (gaps[0] is not
 * used), each as near to its own place as the others allow: least squares, by pooling neighbours that touch.
 * Keeps the order, and stays within the bounds where they leave room. All mm of paper.
 */
export function spread(places: readonly number[], gaps: readonly number[], least = -Infinity, most = Infinity): readonly number[] {
  const offsets = running(gaps.map((gap, index) => (index === 0 ? 0 : gap)));
  const room = offsets.at(-1) ?? 0;
  const rising = isotonic(places.map((place, index) => place - (offsets[index] ?? 0)));
  const highest = Math.max(least, most - room);
  return rising.map((place, index) => Math.max(least, Math.min(highest, place)) + (offsets[index] ?? 0));
}

/** The nearest sequence, by least squares, that never falls (pool adjacent violators). */
function isotonic(values: readonly number[]): readonly number[] {
  const groups: { readonly count: number; readonly mean: number }[] = [];
  for (const value of values) {
    let group = { count: 1, mean: value };
    for (let before = groups.at(-1); before && before.mean > group.mean; before = groups.at(-1)) {
      groups.pop();
      const count = before.count + group.count;
      group = { count, mean: (before.mean * before.count + group.mean * group.count) / count };
    }
    groups.push(group);
  }
  return groups.flatMap(({ count, mean }) => Array.from({ length: count }, () => mean));
}

function running(values: readonly number[]): readonly number[] {
  return values.map((_, index) => values.slice(0, index + 1).reduce((sum, value) => sum + value, 0));
}
