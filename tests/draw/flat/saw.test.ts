import { describe, expect, it } from 'vitest';
import { planTubes } from '../../../src/cut/index.ts';
import { buildModel } from '../../../src/model/index.ts';
import { cutBars } from '../../../src/draw/index.ts';
import { cutBarsMarks, cutBarsPaper } from '../../../src/draw/flat/cut-bars.ts';
import { rackModel } from '../../support/rack.ts';
import { structureItem, structureNames } from '../../support/structures.ts';
import { outside, overlaps, struckFigures, texts, viewOf } from './inspect.ts';

// Common practice, no source: a blade led along the middle of a mark takes half its width off the piece on either side.
describe('the saw on its mark', () => {
  const saw = { kerf: 1, pieces: [{ letter: 'A', length: 1500 }, { letter: 'B', length: 500 }] };
  const cuts = { stock: 2000, kerf: 0, patterns: [{ count: 4, pieces: saw.pieces.map((piece) => ({ kind: 'post', ...piece })) }], saw };
  const marks = cutBarsMarks(cuts, cutBarsPaper(cuts));

  it('stands with its middle on the mark, enlarged, as wide as the kit tells', () => {
    const { scale, marks: detail } = viewOf(marks, 'saw');
    const bladeAt = detail.flatMap((mark) => (mark.mark === 'area' && mark.fill === 'white' ? mark.rings.flat().map(([x]) => x) : []));
    expect((Math.max(...bladeAt) - Math.min(...bladeAt)) / scale).toBeCloseTo(1, 9);
    const markAt = detail.flatMap((mark) => (mark.mark === 'line' && !mark.closed ? mark.points.map(([x]) => x) : []));
    expect(new Set(markAt)).toEqual(new Set([(Math.max(...bladeAt) + Math.min(...bladeAt)) / 2]));
  });

  it('tells what each piece measures afterwards, by its letter: at most a blade\'s width less', () => {
    const told = texts({ ...cutBars({ stock: 2000, kerf: 1, tubesUsed: 4, fewest: 4, shortest: 0.5, patterns: cuts.patterns.map((pattern) => ({ ...pattern, offCut: 0, pieces: saw.pieces.map((piece) => ({ kind: 'post' as const, ...piece })) })) }) });
    expect(told.slice(-6)).toEqual(['A', '1499', '1500', 'B', '499', '500']);
  });
});

describe.each(['rack', ...structureNames] as const)('the tubes of the %s', (name) => {
  it('have a letter for each length; figures stand apart and on the paper', async () => {
    const model = name === 'rack' ? rackModel('standard') : buildModel(structureItem(name), 'standard');
    const plan = await planTubes(model);
    const letters = new Map(plan.patterns.flatMap(({ pieces }) => pieces.map(({ letter, length }) => [letter, length] as const)));
    expect(letters.size).toBe(new Set(model.tubes.map(({ length }) => Math.round(100 * length))).size);
    expect([...letters].sort(([, a], [, b]) => b - a).map(([letter]) => letter)).toEqual([...letters.keys()].sort());
    const picture = cutBars(plan);
    expect(overlaps(picture.labels)).toEqual([]);
    expect(outside(picture)).toEqual([]);
    const cuts = { stock: plan.stock, kerf: 0, patterns: plan.patterns };
    expect(struckFigures(cutBarsMarks(cuts, cutBarsPaper(cuts)))).toEqual([]);
    // What the joints forgive is more than a blade takes.
    expect(plan.kerf).toBeLessThanOrEqual(model.kit.joint.endPlay);
  });
});
