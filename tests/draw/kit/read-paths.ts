import type { Vec2 } from '../../../src/model/index.ts';

/** A line of a picture as it stands in the file, its corners in mm. */
export interface ReadPath {
  readonly points: readonly Vec2[];
  readonly closed: boolean;
  readonly element: string;
}

/** Every line of a picture, read by another way than it was written: `M x y l dx dy …`, one or more in a path. */
export function readPaths(svg: string): readonly ReadPath[] {
  return [...svg.matchAll(/<path [^>]*?\bd="([^"]*)"[^>]*>/g)].flatMap(([element, d = '']) =>
    [...d.matchAll(/M([^Mz]*)(z?)/g)].map(([, numbers = '', end]) => ({ element, closed: end === 'z', points: corners(numbers) })));
}

function corners(text: string): readonly Vec2[] {
  const numbers = [...text.matchAll(/-?\d*\.?\d+/g)].map(([number]) => Number(number));
  let [x, y] = [0, 0];
  return Array.from({ length: numbers.length / 2 }, (_, i): Vec2 => {
    [x, y] = [x + (numbers[2 * i] ?? 0), y + (numbers[2 * i + 1] ?? 0)];
    return [x, y];
  });
}
