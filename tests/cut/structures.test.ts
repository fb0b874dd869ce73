import { beforeAll, describe, expect, it } from 'vitest';
import { loadSolver, planOrder, planTubes, type Solver } from '../../src/cut/index.ts';
import { buildModel } from '../../src/model/index.ts';
import { markingSheets } from '../../src/draw/index.ts';
import { varietiesOf } from '../../src/parts/varieties.ts';
import { structureItem, structureNames } from '../support/structures.ts';

let solver: Solver;
beforeAll(async () => { solver = await loadSolver(); });

const models = structureNames.map((name) => ({ name, model: buildModel(structureItem(name), 'standard') }));
const modelOf = (name: string) => {
  const found = models.find((each) => each.name === name);
  if (found === undefined) throw new Error(`no ${name}`);
  return found.model;
};

describe.each(models)('the parts of $name', ({ model }) => {
  it('are all cut from the stock: every panel by its own pattern, every tube', async () => {
    const order = planOrder([{ model, count: 2 }], null, [model], solver);
    const pieces = order.panels.flatMap(({ times, pieces: cut }) => cut.map(({ letter, width, height }) => ({ letter, times, sides: [width, height].sort((a, b) => b - a) })));
    for (const { min, max, partIds } of model.patterns) {
      const sides = [max[0] - min[0], max[1] - min[1]].sort((a, b) => b - a);
      const cut = pieces.filter((piece) => piece.sides.every((side, index) => Math.abs(side - (sides[index] ?? 0)) < 0.02)).reduce((sum, { times }) => sum + times, 0);
      expect(cut).toBe(2 * partIds.length);
    }
    expect(order.panelPieces.reduce((sum, { count }) => sum + count, 0)).toBe(2 * model.parts.filter(({ kind }) => kind === 'panel' || kind === 'flat-panel').length);
    const tubes = await planTubes(model);
    expect(tubes.patterns.reduce((sum, { count, pieces: each }) => sum + count * each.length, 0)).toBe(model.parts.filter(({ shape }) => shape.form === 'tube').length);
    expect(tubes.shortest).toBeLessThanOrEqual(model.kit.joint.endPlay);
  });

  it('come on marking sheets, each pattern as a template of its own', () => {
    const sheets = markingSheets(model, { width: 210, height: 297 }, '1');
    expect(sheets.length).toBeGreaterThan(model.patterns.length);
    const rings = [...(sheets[0]?.svg ?? '').matchAll(/<circle/g)].length;
    expect(rings).toBeGreaterThanOrEqual(model.patterns.length);
  });
});

describe('varieties of parts', () => {
  const told = (name: string, kind: 'fitting' | 'joint' | 'panel') => varietiesOf(modelOf(name), kind).map(({ parts }) => parts.length);

  it('are told apart by what the kit calls them: hinges from stays and feet, castors with and without a brake', () => {
    expect(told('chest', 'fitting')).toEqual([2, 1, 4]);
    expect(told('trolley', 'fitting')).toEqual([2, 2]);
    expect(told('leaning-chair', 'joint')).toEqual([6, 6, 2]);
    expect(told('bench', 'panel')).toEqual([2]);
  });
});
