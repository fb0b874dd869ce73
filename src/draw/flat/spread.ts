/**
 * Moves places on a line apart until neighbours stand at least `pitch` apart, each as near to its own place
 * as the others allow (least squares: neighbours that touch move as one group). Keeps the order and stays
 * within the bounds where they leave room. All mm of paper.
 */
export function spread(places: readonly number[], pitch: number, least = -Infinity, most = Infinity): readonly number[] {
  const groups: { readonly count: number; readonly sum: number }[] = [];
  const start = (group: { count: number; sum: number }) => group.sum / group.count - ((group.count - 1) * pitch) / 2;
  const bound = (value: number, count: number) => Math.max(least, Math.min(most - (count - 1) * pitch, value));
  const placed = (group: { count: number; sum: number }) => bound(start(group), group.count);

  for (const place of places) {
    let group = { count: 1, sum: place };
    for (let before = groups.at(-1); before && placed(before) + before.count * pitch > placed(group) + 1e-9; before = groups.at(-1)) {
      groups.pop();
      group = { count: before.count + group.count, sum: before.sum + group.sum };
    }
    groups.push(group);
  }
  return groups.flatMap((group) => Array.from({ length: group.count }, (_, index) => placed(group) + index * pitch));
}
