import { chained, placed, turned, type Model, type Vec3 } from '../model/index.ts';
import { isTurn, type Step } from '../plan/index.ts';
import { partsShown } from './kit/parts-shown.ts';

/** How work is tipped: about a level axis, by an angle, rad. */
export interface Tip {
  readonly axis: Vec3;
  readonly angle: number;
}

const TIPS: readonly Vec3[] = [[1, 0, 0], [-1, 0, 0], [0, 1, 0], [0, -1, 0]];

/** How work that somebody has held is laid down after a step, where the next puts other work together and nobody holds it any more: so that its mass lies lowest. Null where it stays in hand, stood by itself, or the bench is next. */
export function laidAside({ parts }: Model, step: Step, next: Step | undefined): Tip | null {
  if (next === undefined || next.standing.name === 'bench' || isTurn(step) || step.held.length === 0 || step.run !== null) return null;
  const there = new Set(partsShown(step));
  if (partsShown(next).some((id) => there.has(id))) return null;
  const own = parts.filter(({ id }) => there.has(id));
  const heightOf = (axis: Vec3): number => {
    const pose = chained(turned(axis, Math.PI / 2), step.standing.pose);
    const heights = own.map((part) => placed(chained(pose, part.pose), [0, 0, 0])[2]);
    const mass = own.reduce((sum, part) => sum + part.mass, 0);
    return own.reduce((sum, part, index) => sum + (part.mass * (heights[index] ?? 0)) / mass, 0) - Math.min(...heights);
  };
  const [axis = [1, 0, 0]] = TIPS.toSorted((one, other) => heightOf(one) - heightOf(other));
  return { axis, angle: Math.PI / 2 };
}
