import { BufferAttribute, BufferGeometry, LineBasicMaterial, LineSegments } from 'three';
import type { Vec3 } from '../../../model/index.ts';
import type { Mark } from '../../../scene/index.ts';
import type { PlacedLabel } from './labels.ts';

const plus = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
const between = (a: Vec3, b: Vec3): Vec3 => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2];

/** Marks of a scene as line segments, end by end: lengths with their two witness lines, and the ways of arrows. */
export function segmentsOf(marks: readonly Mark[]): readonly Vec3[] {
  return marks.flatMap((mark): readonly Vec3[] => {
    if (mark.mark === 'length') {
      const [from, to] = [plus(mark.from, mark.away), plus(mark.to, mark.away)];
      return [mark.from, from, from, to, to, mark.to];
    }
    return mark.mark === 'arrow' ? mark.path.slice(1).flatMap((point, index) => [mark.path[index] ?? point, point]) : [];
  });
}

/** The letters of the lengths with their figures, in the middle of their lines. */
export const lettersOf = (marks: readonly Mark[], figures: ReadonlyMap<string, string>): readonly PlacedLabel[] => marks.flatMap((mark): readonly PlacedLabel[] =>
  (mark.mark === 'length' && mark.told.as === 'letters'
    ? [{ key: mark.told.text, at: plus(between(mark.from, mark.to), mark.away), text: `${mark.told.text} ${figures.get(mark.told.text) ?? ''}`.trim(), look: 'letter' }] : []));

export const newLines = (color: number): LineSegments<BufferGeometry, LineBasicMaterial> =>
  new LineSegments(new BufferGeometry(), new LineBasicMaterial({ color }));

export function setLines(lines: LineSegments<BufferGeometry, LineBasicMaterial>, points: readonly Vec3[], color: number): void {
  lines.geometry.dispose();
  lines.geometry = new BufferGeometry().setAttribute('position', new BufferAttribute(new Float32Array(points.flat()), 3));
  lines.material.color.set(color);
}
