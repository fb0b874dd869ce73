import { describe, expect, it } from 'vitest';
import { area, circle, figure, line, type Mark } from '../../../src/draw/kit/marks.ts';
import { pens } from '../../../src/draw/kit/pens.ts';
import { inkAcross } from '../../../src/draw/picture/ink-across.ts';
import { tell } from '../../../src/scene/index.ts';

const paper = { width: 100, height: 50 };
const ground: Mark = area('white', [[0, 0], [100, 0], [100, 50], [0, 50]]);

describe('how much of its paper a picture takes across', () => {
  it('is from the first to the last of its marks with white beside, the ground left out, what is placed where it is placed', () => {
    const { from, to } = inkAcross([ground, { mark: 'placed', at: [30, 0], marks: [circle([5, 20], 5, null, 'ink')] }, line(pens.edge, [40, 1], [60, 1])], paper);
    expect([from, to]).toEqual([28, expect.closeTo(62 + pens.edge.width / 2, 9)]);
  });

  it('has room for its figures', () => {
    const { from, to } = inkAcross([ground, circle([50, 20], 5, null, 'ink'), figure(tell.mm(12345), [60, 20], 4)], paper);
    expect(from).toBe(43);
    expect(to).toBeGreaterThan(66);
  });

  it('is all of it where hardly any is free, or nothing is drawn', () => {
    expect(inkAcross([ground], paper)).toEqual({ from: 0, to: 100 });
    expect(inkAcross([line(pens.edge, [3, 1], [98, 1])], paper)).toEqual({ from: 0, to: 100 });
  });
});
