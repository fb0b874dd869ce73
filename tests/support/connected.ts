import { joinedBy, type Model } from '../../src/model/index.ts';

/** The ids of all parts that hang together with the first one. */
export function hangingTogether({ parts, connections }: Model): ReadonlySet<string> {
  const reached = new Set([parts[0]?.id ?? '']);
  for (let before = 0; before < reached.size;) {
    before = reached.size;
    for (const joined of connections.map(joinedBy)) if (joined.some((id) => reached.has(id))) joined.forEach((id) => reached.add(id));
  }
  return reached;
}
