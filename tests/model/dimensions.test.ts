import { describe, expect, it } from 'vitest';
import { boxRound } from '../../src/scene/kit/extent.ts';
import { finishedScene, withEnds } from '../../src/scene/index.ts';
import { allSizes } from '../support/all-items.ts';
import { sharedSolids } from '../support/kernel.ts';

const solids = await sharedSolids();

/** A round body's corners lie on its circle, so that its sides may lie within it by so much, mm. */
const FACETS = 0.2;

describe.each(allSizes)('$name', ({ model }) => {
  it('is told as wide, deep and high as all its bodies are together, with the caps on its tubes', () => {
    const built = model();
    const { min, max } = boxRound(withEnds(built, solids, finishedScene(built, solids)).bodies);
    const told = (name: string): number => built.dimensions.find((each) => each.name === name)?.value ?? NaN;
    ['width', 'depth', 'height'].forEach((name, axis) => {
      expect(Math.abs(told(name) - ((max[axis] ?? NaN) - (min[axis] ?? NaN))), name).toBeLessThan(FACETS);
    });
  });
});
