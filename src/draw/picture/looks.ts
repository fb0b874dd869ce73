import type { SceneBody } from '../../scene/index.ts';

/** How a body's visible region is painted and its lines are drawn. */
export type Paint = 'white' | 'tint' | 'pale' | 'floor';
export type Paints = ReadonlyMap<string, Paint>;

export function paintsOf(bodies: readonly SceneBody[]): Paints {
  return new Map(bodies.map((body) => [body.id, paintOf(body)]));
}

function paintOf(body: SceneBody): Paint {
  if (body.kind === 'floor') return 'floor';
  if (body.look === 'new') return 'tint';
  return body.look === 'pale' ? 'pale' : 'white';
}
