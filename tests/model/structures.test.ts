import { describe, expect, it } from 'vitest';
import { buildModel, type Model, type Part } from '../../src/model/index.ts';
import { hangingTogether } from '../support/connected.ts';
import { solids } from '../support/rack.ts';
import { structureItem, structureNames, type StructureName } from '../support/structures.ts';

/** Shared volume under this is rounding, mm³. */
const TOUCH = 1;

const sharing = ({ parts }: Model): string[] => parts.flatMap((one, index) => parts.slice(index + 1).flatMap((other) => {
  const volume = solids.overlap(one, other);
  return volume > TOUCH ? [`${one.id} and ${other.id}: ${volume.toFixed(1)} mm³`] : [];
}));

const counted = (model: Model, kind: Part['kind']): number => model.parts.filter((part) => part.kind === kind).length;

/** Names of the joints' kinds with their numbers. */
function jointKinds({ parts }: Model): Readonly<Record<string, number>> {
  const names = parts.flatMap(({ shape }) => (shape.form === 'joint' ? ['corner'] : shape.form === 'ported-joint' ? [shape.joint.name] : []));
  return Object.fromEntries([...new Set(names)].sort().map((name) => [name, names.filter((other) => other === name).length]));
}

/**
 * Worked by hand from the measures of the standard sizes and the kit: a socket stops 20 mm from the joint's middle, a wrapped
 * panel's top is 23.5 mm over its bars, a sleeve ends 22 mm over them, a foot plate is 6 mm, a castor 80 mm high.
 */
const byHand: Readonly<Record<StructureName, { readonly tubes: Readonly<Record<number, number>>; readonly joints: Readonly<Record<string, number>>; readonly panels: number }>> = {
  // 4 long and 2 lower tubes 610 − 40; 3 + 3 across 350 − 40; posts from 6 to 450 − 23.5 + 22 + 2.
  bench: { tubes: { 570: 6, 444.5: 6, 310: 6 }, joints: { corner: 8, cross: 3, tee: 1 }, panels: 1 },
  // Posts from 19 to 1000, less a stop at each end.
  screen: { tubes: { 911: 2, 900: 2, 550: 2 }, joints: { elbow: 2, tee: 4 }, panels: 1 },
  // Posts from 6 to 360 + 22 + 1.
  chest: { tubes: { 540: 4, 377: 4, 300: 4 }, joints: { corner: 8 }, panels: 2 },
  // Front posts from 6 to 440 − 23.5 + 22 + 2; rear ones from 6 to 440 + 90 − 20; uprights 335 − 20; all else 485 − 40.
  'leaning-chair': { tubes: { 504: 2, 445: 9, 434.5: 2, 315: 2 }, joints: { corner: 6, knee: 2, tee: 6 }, panels: 2 },
  // Rear posts from 80 to 750 + 150 − 20; front ones from 80 to 750 − 23.5 + 22 + 2; the handle as the short tubes.
  trolley: { tubes: { 800: 2, 670.5: 2, 600: 4, 450: 5 }, joints: { corner: 8, elbow: 2 }, panels: 1 },
  'two-bay': { tubes: { 1300: 6, 650: 12, 360: 9 }, joints: { corner: 12, cross: 6 }, panels: 1 },
};

describe.each(structureNames)('%s', (name) => {
  const item = structureItem(name);
  const models = item.sizes.map((size) => buildModel(item, size.name));
  const [, standard] = models;
  if (standard === undefined) throw new Error('three sizes each');

  it('has three sizes, each one connected whole with every part named once and of a mass', () => {
    expect(models).toHaveLength(3);
    for (const model of models) {
      const ids = model.parts.map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
      expect([...hangingTogether(model)].sort()).toEqual([...ids].sort());
      for (const part of model.parts) expect([part.id, part.mass > 0]).toEqual([part.id, true]);
    }
  });

  it('has no two parts in the same room', () => {
    expect(sharing(standard)).toEqual([]);
  });

  it('stands on the floor with nothing below', () => {
    expect(Math.min(...standard.parts.map((part) => solids.box(part).min[2]))).toBeCloseTo(0, 3);
  });

  it('is cut to lengths worked by hand, of joints that a builder would take', () => {
    expect(Object.fromEntries(standard.tubes.map(({ length, count }) => [length, count]))).toEqual(byHand[name].tubes);
    expect(jointKinds(standard)).toEqual(byHand[name].joints);
    expect(standard.patterns).toHaveLength(byHand[name].panels);
  });

  it('gives each panel to one pattern, and each pin of a sleeve its nut', () => {
    const panels = standard.parts.filter(({ kind }) => kind === 'panel' || kind === 'flat-panel').map(({ id }) => id);
    expect(standard.patterns.flatMap(({ partIds }) => partIds).sort()).toEqual([...panels].sort());
    expect(counted(standard, 'joint-pin')).toBe(counted(standard, 'wing-nut'));
  });

  it('tells what its panels are for by parts that are there', () => {
    const ids = standard.parts.map(({ id }) => id);
    expect(standard.places.length).toBeGreaterThan(0);
    for (const { panels } of standard.places) for (const panel of panels) expect(ids).toContain(panel);
  });

  it('is the same when built again', () => {
    expect(JSON.stringify(buildModel(item, standard.size))).toBe(JSON.stringify(standard));
  });
});

describe('what only one of them has', () => {
  const model = (name: StructureName): Model => buildModel(structureItem(name), 'standard');

  it('the bench\'s two seats meet over the tube they share, an inside gap apart', () => {
    const [left, right] = ['seat.0', 'seat.1'].map((id) => {
      const part = model('bench').parts.find((each) => each.id === id);
      if (part === undefined) throw new Error(`no ${id}`);
      return solids.box(part);
    });
    expect((right?.min[0] ?? 0) - (left?.max[0] ?? 0)).toBeCloseTo(3, 3);
  });

  it('the chest\'s lid turns on the back tube, held by three clips, and clears the rims', () => {
    const { connections, parts } = model('chest');
    const hinges = connections.filter((each) => each.is === 'hinge');
    expect(hinges.map(({ leaves }) => leaves)).toEqual([['lid', 'long.1'], ['lid', 'long.1'], ['lid', 'long.1']]);
    const [lid, tray] = ['lid', 'tray'].map((id) => parts.find((part) => part.id === id));
    if (lid === undefined || tray === undefined) throw new Error('no lid or tray');
    expect(solids.box(lid).min[2] - solids.box(tray).max[2]).toBeGreaterThan(0);
  });

  it('the chair\'s back leans by the 15° of the kit\'s knee', () => {
    const { shape, pose } = model('leaning-chair').parts.find(({ id }) => id === 'upright.0') ?? {};
    expect(shape?.form).toBe('tube');
    expect((Math.atan2(pose?.[1] ?? 0, pose?.[2] ?? 1) * 180) / Math.PI).toBeCloseTo(15, 9);
  });

  it('the trolley has a brake on two of its four castors', () => {
    const castors = model('trolley').parts.flatMap(({ shape }) => (shape.form === 'fitting' && shape.fitting.is === 'castor' ? [shape.fitting.brake] : []));
    expect(castors.sort()).toEqual([false, false, true, true]);
  });
});
