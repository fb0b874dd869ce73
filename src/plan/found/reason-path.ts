import type { OrderReason } from '../types.ts';

/** One link of an order as a plain sentence. */
export function explained(link: OrderReason): string {
  const because = link.parts.length > 0 ? `, or ${link.parts.join(', ')} would be in the way` : ` (${link.rule})`;
  return `"${link.first}" comes before "${link.then}"${because}`;
}

/** The links that lead from one step to another, or null. */
export function pathOf(links: readonly OrderReason[], from: string, to: string): readonly OrderReason[] | null {
  const cameBy = new Map<string, OrderReason | null>([[from, null]]);
  const waiting = [from];
  for (let key = waiting.shift(); key !== undefined; key = waiting.shift()) {
    if (key === to) return traced(cameBy, to);
    for (const link of links) {
      if (link.first === key && !cameBy.has(link.then)) {
        cameBy.set(link.then, link);
        waiting.push(link.then);
      }
    }
  }
  return null;
}

function traced(cameBy: ReadonlyMap<string, OrderReason | null>, to: string): readonly OrderReason[] {
  const link = cameBy.get(to) ?? null;
  return link === null ? [] : [...traced(cameBy, link.first), link];
}
