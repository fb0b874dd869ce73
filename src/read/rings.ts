/**
 * Sorts names so that each comes after those it needs; equal ones keep their order.
 * Names that need one another in a ring are told as rings, each beginning and ending with its first name in `needs`.
 */
export function inOrderOfNeed(needs: ReadonlyMap<string, readonly string[]>): { readonly order: readonly string[]; readonly rings: readonly (readonly string[])[] } {
  const order: string[] = [];
  const rings: string[][] = [];
  const state = new Map<string, 'open' | 'done'>();
  const visit = (name: string, way: readonly string[]): void => {
    if (state.get(name) === 'done') return;
    if (state.get(name) === 'open') {
      rings.push([...way.slice(way.indexOf(name)), name]);
      return;
    }
    state.set(name, 'open');
    for (const other of needs.get(name) ?? []) if (needs.has(other)) visit(other, [...way, name]);
    state.set(name, 'done');
    order.push(name);
  };
  for (const name of needs.keys()) visit(name, []);
  return { order, rings };
}
