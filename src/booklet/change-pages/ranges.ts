/** `1, 4–6` */
export function ranges(pages: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const page of [...pages].sort((one, other) => one - other)) {
    const last = runs.at(-1);
    if (last !== undefined && page === last[1] + 1) last[1] = page;
    else runs.push([page, page]);
  }
  return runs.map(([from, to]) => (from === to ? String(from) : `${from}–${to}`)).join(', ');
}
