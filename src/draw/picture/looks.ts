import type { SceneBody } from '../../scene/index.ts';

/** How a body's visible region is painted and its lines are drawn. */
export type Paint = 'white' | 'tint' | 'pale' | 'floor' | 'ink' | 'dark';
export type Paints = ReadonlyMap<string, Paint>;

export function paintsOf(bodies: readonly SceneBody[]): Paints {
  return new Map(bodies.map((body) => [body.id, paintOf(body)]));
}

function paintOf(body: SceneBody): Paint {
  if (body.kind === 'floor') return 'floor';
  if (body.closesBlind) return 'dark';
  switch (body.look) {
    case 'new': return 'tint';
    case 'pale': return 'pale';
    case 'drawn': return 'ink';
    case 'present': return 'white';
  }
}
