import { describe, expect, it } from 'vitest';
import { planTubes } from '../../../src/cut/index.ts';
import { buildModel, type Vec2 } from '../../../src/model/index.ts';
import { cutBars } from '../../../src/draw/index.ts';
import { cutBarsMarks, cutBarsPaper, partsTold } from '../../../src/draw/flat/cut-bars.ts';
import { stringMarks, stringPicture } from '../../../src/draw/flat/halved-string.ts';
import { FORMATS } from '../../../src/draw/formats.ts';
import { rackModel } from '../../support/rack.ts';
import { structureItem, structureNames } from '../../support/structures.ts';
import { outside, overlaps, pointsOutside, struckFigures, texts, viewOf } from './inspect.ts';

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

describe('a string laid on a tube', () => {
  const tube = (...lengths: readonly number[]) => ({ stock: 2000, kerf: 0, patterns: [{ count: 1, pieces: lengths.map((length) => ({ kind: 'post', length })) }] });

  it('shows the parts of which shares are told, and no others', () => {
    expect(partsTold(tube(1500, 500))).toEqual([4]);
    expect(partsTold(tube(1000, 1000))).toEqual([2]);
    expect(partsTold({ ...tube(), patterns: [...tube(1000).patterns, ...tube(500, 666.67).patterns] })).toEqual([2, 3, 4]);
    expect(partsTold(tube(2000))).toEqual([]);
    expect(partsTold(tube(900, 900))).toEqual([]);
  });

  it('lies to and fro as often as the tube has parts, each time as long as one, and is no longer than the tube', () => {
    const strings = stringMarks(2000, [2, 4]).flatMap((mark) => (mark.mark === 'line' && !mark.closed && mark.pen.name === 'motion' && mark.points.length % 2 === 0 && mark.points[0]?.[1] === mark.points[1]?.[1] ? [mark.points] : []));
    const level = strings.filter((points) => points[0]?.[1] === strings[0]?.[0]?.[1]);
    const runs = (points: readonly Vec2[]): readonly number[] => points.flatMap(([x, y], index) => (index % 2 === 0 ? [Math.abs((points[index + 1]?.[0] ?? x) - x) + Math.abs((points[index + 1]?.[1] ?? y) - y)] : []));
    expect(level.map((points) => points.length / 2)).toEqual([1, 2, 4]);
    for (const points of level) expect(runs(points).reduce((sum, each) => sum + each, 0)).toBeCloseTo(runs(level[0] ?? [])[0] ?? NaN, 9);
  });

  it.each([FORMATS.page.bench, FORMATS.small.bench])('stays on its paper of $width', (paper) => {
    const picture = stringPicture(2000, [2, 3, 4], paper);
    expect([overlaps(picture.labels), outside(picture), pointsOutside(picture)]).toEqual([[], [], []]);
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
