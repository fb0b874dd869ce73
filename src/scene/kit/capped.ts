import { capFor, chained, hasCaps, moved, openPlaces, turned, type Model, type Part, type Solids } from '../../model/index.ts';
import type { Scene, SceneBody } from '../types.ts';

type Tube = Extract<Part['shape'], { form: 'tube' }>;

/** A scene with the caps on all ends that stay open: they are on before anything is put together, and go where their tubes go. */
export function withCaps<Of extends Scene>(model: Model, solids: Solids, scene: Of): Of {
  if (!hasCaps(model)) return scene;
  const tubes = new Map(model.parts.flatMap(({ id, shape }): [string, Tube][] => (shape.form === 'tube' ? [[id, shape]] : [])));
  const open = openPlaces(model);
  const capsOf = (body: SceneBody): readonly SceneBody[] => {
    const shape = tubes.get(body.partId ?? '');
    if (shape === undefined || body.kind === 'tool') return [];
    return open.filter(({ tube }) => tube === body.partId).map(({ end }) => capOn(model, solids, body, shape, end));
  };
  return { ...scene, bodies: scene.bodies.flatMap((body) => [body, ...capsOf(body)]) };
}

/** The cap on one end of a tube. A plug goes up its own +z into the tube. */
function capOn({ kit }: Model, solids: Solids, body: SceneBody, { length, outside, inside }: Tube, end: -1 | 1): SceneBody {
  const mesh = solids.mesh({ form: 'fitting', fitting: capFor(kit, { outside, inside }), outside, inside });
  const inwards = turned([0, 1, 0], (-end * Math.PI) / 2);
  return { id: `${body.id}#cap${end}`, partId: body.partId, kind: 'tool', mesh, pose: chained(body.pose, moved([(end * length) / 2, 0, 0]), inwards), look: body.look };
}
