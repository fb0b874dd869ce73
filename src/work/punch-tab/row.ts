import type { TabRow } from '../../draw/work-kit/index.ts';
import { lengthOf, minus, placed, type Model } from '../../model/index.ts';
import type { Step } from '../../plan/index.ts';

/** The row of holes that a step punches along a side; null where it punches the corners of a box. */
export function rowOf({ parts, kit: { practice: { pinEnd } } }: Model, { drillsFor, detail }: Step): TabRow | null {
  const [first, ...more] = parts.filter(({ id }) => drillsFor.includes(id)).map(({ pose }) => placed(pose, [0, 0, 0]));
  if (detail.on !== 'side' || first === undefined) return null;
  const at = [0, ...more.map((point) => lengthOf(minus(point, first)))].sort((a, b) => a - b).map((far) => Math.round(2 * (pinEnd + far)) / 2);
  return { at, length: (at.at(-1) ?? 0) + pinEnd };
}
