import type { Item } from '../read/index.ts';
import type { NamedLength, Part, Vec2, Vec3 } from './types.ts';

/** Lettered lengths for the drawing and the table, from the outermost ends of the finished item. */
export function dimensionsOf(item: Item, axes: Vec2, tops: readonly number[], parts: readonly Part[]): readonly NamedLength[] {
  const x = axes[0] + item.kit.joint.studReach;
  const y = axes[1] + item.kit.joint.studReach;
  const [low = 0, next] = tops;
  const height = heightOf(parts);
  const upright = (name: string, from: number, to: number): Omit<NamedLength, 'letter'> =>
    ({ name, value: Math.abs(to - from), from: [x, -y, from], to: [x, -y, to] });
  const wide: readonly Omit<NamedLength, 'letter'>[] = [
    { name: 'width', value: 2 * x, from: [-x, -y, 0], to: [x, -y, 0] },
    { name: 'depth', value: 2 * y, from: [x, -y, 0] as Vec3, to: [x, y, 0] as Vec3 },
    { name: 'height', value: height, from: [-x, -y, 0], to: [-x, -y, height] },
  ];
  const tall = next === undefined ? [upright('deck-top', 0, low)] : [upright('lowest-deck', 0, low), upright('deck-spacing', low, next)];
  return [...wide, ...tall].map((length, index) => ({ letter: 'PQRSTUVW'[index] ?? '', ...length }));
}

/** Top of the longest post, mm. */
const heightOf = (parts: readonly Part[]): number =>
  Math.max(0, ...parts.flatMap((part) => (part.kind === 'post' && part.shape.form === 'tube' ? [part.shape.length] : [])));
