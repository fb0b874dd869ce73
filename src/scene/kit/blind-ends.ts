import { chained, columnOf, cross, facing, jointPorts, squareTo, undone, type JointPorts, type Model, type Part, type Pose, type Shape, type Solids, type Vec2, type Vec3 } from '../../model/index.ts';
import type { Scene, SceneBody } from '../types.ts';

type Socket = Extract<JointPorts['ports'][number], { is: 'socket' }>;

/** How far inside its mouth an opening is closed for the eye, and how thick that is, mm. */
const CLOSED = { inside: 1.5, thick: 0.5 } as const;

/** A scene with every socket dark in its mouth in which no bar stands: there a bar ends, while through a sleeve, which stays white, it runs on. */
export function withBlindEnds<Of extends Scene>(model: Model, solids: Solids, scene: Of): Of {
  const parts = new Map(model.parts.map((part) => [part.id, part]));
  const shown = new Map(scene.bodies.filter(({ kind }) => kind !== 'tool').map((body) => [body.id, body]));
  const closing = (body: SceneBody): readonly SceneBody[] => {
    const part = parts.get(body.partId ?? '');
    if (part === undefined || body.kind === 'tool' || body.look === 'pale') return [];
    return blindEnds(solids, body, part, takenSockets(model, shown, parts, body));
  };
  return { ...scene, bodies: scene.bodies.flatMap((body) => [body, ...closing(body)]) };
}

/** A joint's sockets, dark in their mouths, but for those along these directions of its own axes. */
export function blindEnds(solids: Solids, body: SceneBody, { shape }: Pick<Part, 'shape'>, taken: readonly Vec3[] = []): readonly SceneBody[] {
  const joint = jointPorts(shape);
  if (joint === null) return [];
  const mesh = solids.mesh(closure(shape, joint.bore));
  const sockets = joint.ports.filter((port): port is Socket => port.is === 'socket' && !taken.some((way) => isAlong(way, port.axis)));
  return sockets.map((port, index) => ({ id: `${body.id}#blind${index + 1}`, partId: body.partId, kind: 'tool', mesh, pose: chained(body.pose, mouthOf(port)), look: 'present', closesBlind: true }));
}

/** Own x and y across the mouth, z out of it. */
function mouthOf({ axis, stop, depth }: Socket): Pose {
  const out: Vec3 = [...axis];
  const far = stop + depth - CLOSED.inside - CLOSED.thick;
  const side = squareTo([0, 0, 1], out) ?? squareTo([1, 0, 0], out) ?? [1, 0, 0];
  return facing([out[0] * far, out[1] * far, out[2] * far], side, cross(out, side), out);
}

/** As many corners as make a round mouth round on paper. */
const CORNERS = 32;

function closure(shape: Shape, bore: number): Shape {
  const half = bore / 2 - 0.05;
  const square: readonly Vec2[] = [[-half, -half], [half, -half], [half, half], [-half, half]];
  const isSquare = shape.form === 'ported-joint' && shape.joint.profile === 'square';
  const round = Array.from({ length: CORNERS }, (_, corner): Vec2 => [half * Math.cos((2 * Math.PI * corner) / CORNERS), half * Math.sin((2 * Math.PI * corner) / CORNERS)]);
  return { form: 'patch', outline: isSquare ? square : round, height: CLOSED.thick };
}

/** Directions, in a joint's own axes, of the sockets in which the scene has a bar where it belongs. */
function takenSockets({ connections }: Model, shown: ReadonlyMap<string, SceneBody>, parts: ReadonlyMap<string, Part>, joint: SceneBody): readonly Vec3[] {
  const own = parts.get(joint.partId ?? '');
  return connections.flatMap((each): readonly Vec3[] => {
    if (own === undefined || each.is !== 'socket' || each.joint !== own.id) return [];
    const [bar, part] = [shown.get(each.bar), parts.get(each.bar)];
    if (bar === undefined || part === undefined || !isHome(chained(undone(joint.pose), bar.pose), chained(undone(own.pose), part.pose))) return [];
    return [columnOf(chained(undone(own.pose), part.pose), 3)];
  });
}

/** Poses alike to a hundredth of a millimetre. */
const isHome = (one: Pose, other: Pose): boolean => one.every((value, place) => Math.abs(value - (other[place] ?? 0)) < 0.01);

/** Whether a place, in own axes, lies out along a port's axis. */
function isAlong(place: Vec3, axis: readonly number[]): boolean {
  const far = Math.hypot(...place);
  return far > 0 && (place[0] * (axis[0] ?? 0) + place[1] * (axis[1] ?? 0) + place[2] * (axis[2] ?? 0)) / far > 0.99;
}
